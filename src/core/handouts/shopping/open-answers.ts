import { chooseMethod, type CoverMaterial } from '../../custom/index.ts';
import type { PartId } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Plan, Question, ShoppingItem } from '../../plan/index.ts';

/** What a cover item of a plan is made of, from the key of its name. */
export function coverWithOf({ name }: ShoppingItem): CoverMaterial | undefined {
  const material = name.params['material'] as Message | undefined;
  return material?.key.slice('custom.cover.'.length) as CoverMaterial | undefined;
}

/** Questions about a whole fixture, not about one of its parts. */
function aboutWhole({ questions }: Plan): readonly Question[] {
  return questions.filter(({ part }) => part === undefined);
}

/** Fixtures that are covered until an open question is answered: one of its answers leaves them bare. */
export function waitsFor(plan: Plan): ReadonlySet<string> {
  const covered = new Set(plan.methods.filter(({ cover }) => cover).map(({ fixture }) => fixture));
  return new Set(
    aboutWhole(plan)
      .filter(
        ({ fixture, answers = [] }) => covered.has(fixture) && answers.some((one) => !one.cover),
      )
      .map(({ fixture }) => fixture),
  );
}

type OnlyIfSaid = {
  readonly id: string;
  readonly group: 'water' | 'covers' | 'parts';
  readonly name: Message;
  /** Names of what it would be for. */
  readonly fixtures: readonly string[];
};

type Wish = Omit<OnlyIfSaid, 'fixtures'>;

/** A cover or a hot stone that an answer about a whole fixture asks for, and the plan does not. */
function wishesOfWhole({ fixture: id, answers = [] }: Question, plan: Plan): readonly Wish[] {
  const fixture = plan.kitchen.fixtures.find((one) => one.id === id);
  const method = plan.methods.find((one) => one.fixture === id);
  if (!fixture || !method) return [];
  const wishes: Wish[] = [];
  if (!method.cover && answers.some(({ cover }) => cover)) {
    const { coverWith } = chooseMethod(fixture, plan.kitchen);
    const name = message('plan.buy.cover', { material: message(`custom.cover.${coverWith}`) });
    wishes.push({ id: `if-cover-${coverWith}`, group: 'covers', name });
  }
  const stoneNow = plan.methods.some(({ stone }) => stone);
  if (!stoneNow && answers.some(({ stone }) => stone))
    wishes.push({ id: 'stone', group: 'water', name: message('plan.buy.stone') });
  return wishes;
}

/** A new part that an answer asks for, where the plan keeps the old one. */
function wishesOfPart(part: PartId, question: Question, { methods }: Plan): readonly Wish[] {
  const now = methods
    .find(({ fixture }) => fixture === question.fixture)
    ?.parts?.find((one) => one.part === part);
  const asksNew = question.answers?.some(({ method }) => method === 'replace') ?? false;
  if (!now || now.method === 'replace' || !asksNew) return [];
  const name = message('plan.buy.parts', { parts: [message(`steps.part.${part}`)] });
  return [{ id: `if-part-${part}`, group: 'parts', name }];
}

/** What the plan does without and an answer to an open question would ask for, with what it is for. */
export function onlyIfSaid(plan: Plan): readonly OnlyIfSaid[] {
  const found = new Map<string, OnlyIfSaid>();
  for (const question of plan.questions) {
    const { part, fixture } = question;
    const name = plan.kitchen.fixtures.find(({ id }) => id === fixture)?.name ?? fixture;
    const wishes =
      part === undefined ? wishesOfWhole(question, plan) : wishesOfPart(part, question, plan);
    for (const wish of wishes) {
      const names = found.get(wish.id)?.fixtures ?? [];
      found.set(wish.id, { ...wish, fixtures: [...new Set([...names, name])] });
    }
  }
  return [...found.values()];
}
