import { unkeyed } from '../../messages/temporary.ts';
import { citation, type Choice } from '../../custom/index.ts';
import type { Fixture, MethodId } from '../../kitchen/index.ts';
import { exactly } from '../../units/index.ts';
import { stepDraft, stage, type StepDraft, type PlanContext } from '../context/step-draft.ts';
import { isGas } from '../estimates/index.ts';
import { cleaningOf, cleaningS } from '../context/work-times.ts';
import { lastPreparation } from './prepare.ts';

const S_H = 3600;

const RESTED: ReadonlySet<MethodId> = new Set<MethodId>([
  'glow',
  'light-heat',
  'self-clean',
  'pour',
  'immerse',
  'steam',
  'boil-over',
]);

/** Does this method purge, so that the fixture must rest before it? */
export function needsRest(method: MethodId): boolean {
  return RESTED.has(method);
}

export function cleanId(id: string): string {
  return `clean-${id}`;
}

export function restId(id: string): string {
  return `rest-${id}`;
}

export function fuelOf(fixture: Fixture): 'gas' | 'electric' | undefined {
  if (fixture.kind === 'oven') return fixture.heat;
  if (fixture.kind !== 'cooktop') return undefined;
  return fixture.burners.some(({ type }) => isGas(type)) ? 'gas' : 'electric';
}

function sandLine(fixture: Fixture, choice: Choice | undefined): readonly string[] {
  const wooden =
    'material' in fixture && (fixture.material === 'wood' || fixture.material === 'raw-wood');
  return wooden && choice?.method.method === 'pour' ? ['Sand out every cut and scratch.'] : [];
}

/** Cleans one fixture; levels above it come first in the timetable. */
export function cleanStep(
  site: PlanContext,
  fixture: Fixture,
  above: readonly string[],
): StepDraft {
  const choice = site.choices.get(fixture.id);
  const { checklist, source } = cleaningOf(fixture.kind);
  const rests = choice !== undefined && needsRest(choice.method.method);
  const fuel = fuelOf(fixture);
  const title = `Clean: ${fixture.name}.`;
  return stepDraft(
    {
      id: cleanId(fixture.id),
      kind: 'clean',
      phase: 'clean',
      title: unkeyed(title),
      reason: unkeyed(
        rests
          ? 'What clings to it would shield it from the purge, and hot cleaning counts as use: it comes before the rest.'
          : 'Cleaning is what this fixture needs.',
      ),
      stages: [
        stage('clean', title, {
          detail: [...checklist, ...sandLine(fixture, choice)].map(unkeyed),
          say: unkeyed('It is clean'),
        }),
      ],
      durationS: cleaningS(fixture),
    },
    {
      fixture: fixture.id,
      sources: [citation(source)],
      needs: [{ step: lastPreparation(site) }],
    },
    { fixture, rests, ...(fuel && { fuel }) },
    above,
  );
}

/** All cleaning, level by level from the top. */
export function cleanSteps(site: PlanContext): readonly StepDraft[] {
  const levels = new Map<number, Fixture[]>();
  for (const fixture of site.kitchen.fixtures) {
    const { level } = cleaningOf(fixture.kind);
    levels.set(level, [...(levels.get(level) ?? []), fixture]);
  }
  const drafts: StepDraft[] = [];
  let above: readonly string[] = [];
  for (const [, fixtures] of [...levels].toSorted(([a], [b]) => a - b)) {
    drafts.push(...fixtures.map((fixture) => cleanStep(site, fixture, above)));
    above = fixtures.map(({ id }) => cleanId(id));
  }
  return drafts;
}

/** The rest of one thing: by a clock that begins when it is clean. */
export function restStep(
  site: PlanContext,
  id: string,
  name: string,
  fixture?: Fixture,
): StepDraft {
  const lengthS = site.custom.restHours * S_H;
  const title = `Leave it unused: ${name}.`;
  return stepDraft(
    {
      id: restId(id),
      kind: 'rest',
      phase: 'rest',
      title: unkeyed(title),
      reason: unkeyed(
        `It must not have been used hot within ${site.custom.restHours} hours of its purge (eino ben yomo).`,
      ),
      stages: [
        stage('rest', title, {
          detail: [
            unkeyed('No hot use and no hot cleaning. If in doubt, say so: the rest begins again.'),
          ],
          timers: [
            {
              id: 'rest',
              role: 'hold',
              purpose: 'at-least',
              lengthS,
              label: unkeyed(`Rest: ${name}`),
            },
          ],
        }),
      ],
      durationS: exactly(lengthS),
    },
    {
      ...(fixture && { fixture: fixture.id }),
      sources: [citation(site.custom.restSource)],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: cleanId(id) }],
    },
    fixture ? { fixture } : {},
  );
}
