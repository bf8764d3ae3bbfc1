import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { stepDraft, stage, type StepDraft, type PlanContext } from '../context/step-draft.ts';
import type { Step } from '../model/types.ts';
import { handworkS, surfaceM2 } from '../context/work-times.ts';
import { cleanId } from './clean.ts';

/** What is laid on flat and taped; an insert, a basin or a rack is only put in. */
const SHEETS = /sheet|paper|liner|lining|film|plastic|cloth|foil/i;

export function coverId(fixture: string): string {
  return `cover-${fixture}`;
}

/** Steps that must be over before a fixture is covered: its last purge and every cool-down. */
function lastOf(fixture: Fixture, drafts: readonly StepDraft[]): readonly string[] {
  const own = drafts.map(({ step }) => step).filter((step) => step.fixture === fixture.id);
  const hot = own.filter(({ phase }) => phase === 'purge' || phase === 'cool');
  const needed = new Set(hot.flatMap(({ needs }) => needs.map(({ step }) => step)));
  const last = hot.filter(({ id }) => !needed.has(id)).map(({ id }) => id);
  return last.length > 0 ? last : [cleanId(fixture.id)];
}

/** Liner or cover of one fixture; none where the method asks for none. */
export function coverSteps(
  site: PlanContext,
  fixture: Fixture,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const choice = site.choices.get(fixture.id);
  if (!choice?.method.cover) return [];
  const shelves = 'shelves' in fixture && fixture.shelves.length > 0;
  const area = surfaceM2(fixture);
  const title = `${choice.method.method === 'line' ? 'Line' : 'Cover'}: ${fixture.name}.`;
  const size = area > 0 ? ` About ${Number(area.toFixed(1))} m².` : '';
  return [
    stepDraft(
      {
        id: coverId(fixture.id),
        kind: 'cover',
        phase: 'cover',
        title: unkeyed(title),
        reason: unkeyed(choice.method.reason),
        stages: [
          stage('cover', title, {
            detail: [
              unkeyed(`With ${choice.coverWith}.${size}`),
              unkeyed(
                SHEETS.test(choice.coverWith)
                  ? 'Clean, dry and cold first; tape the edges so that nothing slips under.'
                  : 'Clean, dry and cold first.',
              ),
            ],
            say: unkeyed('It is covered'),
          }),
        ],
        durationS: handworkS(shelves ? 'line' : 'cover', fixture),
      },
      {
        fixture: fixture.id,
        sources: [choice.method.source],
        needs: lastOf(fixture, drafts).map((step) => ({ step })),
      },
      { fixture },
    ),
  ];
}

const BELONGS: Readonly<Record<Fixture['designation'], string>> = {
  meat: 'meat',
  dairy: 'dairy',
  pareve: 'pareve (neutral)',
  undecided: 'not decided yet: decide now, and write it down',
};

/** One step at the end: what belongs to what. */
export function markStep(site: PlanContext, drafts: readonly StepDraft[]): StepDraft {
  const needed = new Set(drafts.flatMap(({ step }) => step.needs.map(({ step: id }) => id)));
  const ends: readonly Step[] = drafts.map(({ step }) => step).filter(({ id }) => !needed.has(id));
  const title = 'Mark the meat, dairy and neutral places.';
  return stepDraft(
    {
      id: 'mark-kitchen',
      kind: 'mark',
      phase: 'mark',
      title: unkeyed(title),
      reason: unkeyed('So that nobody undoes the work by mistake.'),
      stages: [
        stage('mark', title, {
          detail: site.kitchen.fixtures.map((fixture) => {
            const out = site.choices.get(fixture.id)?.method.method === 'not-purged';
            return unkeyed(
              `${fixture.name}: ${out ? 'keep out of use until it has been asked about' : BELONGS[fixture.designation]}`,
            );
          }),
          say: unkeyed('All is marked'),
        }),
      ],
      durationS: handworkS('mark'),
    },
    { sources: [citation('trade-practice')], needs: ends.map(({ id }) => ({ step: id })) },
  );
}
