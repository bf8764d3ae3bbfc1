import { answerAs } from '../../custom/index.ts';
import {
  methodsForFixture,
  type Kitchen,
  type MethodId,
  type Override,
} from '../../kitchen/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { Change } from './change.ts';

/** Nobody said it yet: it is only tried. */
const TRIED = { saidBy: '?', saidOn: '2000-01-01' } as const;

const PURGES: ReadonlySet<MethodId> = new Set<MethodId>([
  'glow',
  'light-heat',
  'self-clean',
  'pour',
  'immerse',
  'steam',
  'boil-over',
]);

/** Every known answer to every question that is open. */
export function answerChanges({ questions }: Plan): readonly Change[] {
  return questions.flatMap((question) =>
    (question.answers ?? []).map((answer) => ({
      kind: 'answer' as const,
      question: question.id,
      answer,
      override: answerAs(question, answer, TRIED),
    })),
  );
}

/** Fixtures that the plan purges, in its order. */
export function purgedFixtures({ methods }: Pick<Plan, 'methods'>): readonly string[] {
  return methods.filter(({ method }) => PURGES.has(method)).map(({ fixture }) => fixture);
}

/** A fixture covered in place of being purged; closed up where there is nothing to cover. */
export function closedUpAs(kitchen: Kitchen, fixture: string): Override | undefined {
  const found = kitchen.fixtures.find(({ id }) => id === fixture);
  if (!found) return undefined;
  const method = methodsForFixture(found).includes('cover') ? 'cover' : 'not-purged';
  return { fixture, method, cover: true, ...TRIED };
}

/** Each fixture that is purged, covered or closed up instead. */
export function coverChanges(kitchen: Kitchen, plan: Plan): readonly Change[] {
  return purgedFixtures(plan).flatMap((fixture): readonly Change[] => {
    const override = closedUpAs(kitchen, fixture);
    return override ? [{ kind: 'cover', override }] : [];
  });
}
