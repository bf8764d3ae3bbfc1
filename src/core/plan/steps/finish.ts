import { citation, type CoverMaterial } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { BURNERS_LIT, vesselResource } from '../context/demands.ts';
import { choiceOf, type PlanContext } from '../context/plan-context.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { hotBeside } from '../context/places.ts';
import { airDryId, cleanId, coverId, MARK_ID } from '../context/step-ids.ts';
import { handworkS, surfaceM2 } from '../context/work-times.ts';
import type { Step } from '../model/index.ts';
import { airDryStep } from './dry.ts';

/** A rack, a basin or an insert is only put in; all others are laid on flat and taped. */
const PUT_IN: ReadonlySet<CoverMaterial> = new Set<CoverMaterial>([
  'rack-in-bowls',
  'basin-on-rack',
  'insert',
]);

/** Steps that must be over before a fixture is covered: its last purge and every cool-down. */
export function lastOf(fixture: Fixture, drafts: readonly StepDraft[]): readonly string[] {
  const own = drafts.map(({ step }) => step).filter((step) => step.fixture === fixture.id);
  const hot = own.filter(({ phase }) => phase === 'purge' || phase === 'cool');
  const needed = new Set(hot.flatMap(({ needs }) => needs.map(({ step }) => step)));
  const last = hot.filter(({ id }) => !needed.has(id)).map(({ id }) => id);
  return last.length > 0 ? last : [cleanId(fixture.id)];
}

/** Plastic and tape are laid when all that burns, glows or cleans itself beside them is over and cold. */
function heatBeside(
  context: PlanContext,
  fixture: Fixture,
  drafts: readonly StepDraft[],
): readonly string[] {
  if (fixture.kind !== 'counter' && fixture.kind !== 'table') return [];
  const { kitchen } = context;
  const hot = hotBeside(kitchen, fixture);
  const burners = new Set(
    hot.flatMap((one) => (one.kind === 'cooktop' ? one.burners : [])).map(({ id }) => id),
  );
  const boils = kitchen.vessels.some(({ burner }) => burner !== undefined && burners.has(burner));
  return [
    ...hot.flatMap((one) => lastOf(one, drafts)),
    ...(boils ? lastBoiled(context, drafts) : []),
  ];
}

/** The last kettle of each fixture, and of what goes on with utensils: after it no burner is lit. */
function lastBoiled({ utensils }: PlanContext, drafts: readonly StepDraft[]): readonly string[] {
  const pot = utensils?.pot && vesselResource(utensils.pot.kettle);
  const pours = drafts
    .map(({ step }) => step)
    .filter(
      ({ kind, work, demands }) =>
        kind === 'pour' ||
        (pot !== undefined && pot in demands) ||
        (work.on === 'utensils' && BURNERS_LIT in demands),
    );
  const needed = new Set(pours.flatMap(({ needs }) => needs.map(({ step }) => step)));
  return pours.map(({ id }) => id).filter((id) => !needed.has(id));
}

/** Liner or cover of one fixture; none where the method asks for none. */
export function coverSteps(
  context: PlanContext,
  fixture: Fixture,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const choice = choiceOf(context, fixture.id);
  if (!choice.method.cover) return [];
  const { method } = choice.method;
  const shelves = 'shelves' in fixture && fixture.shelves.length > 0;
  const areaM2 = surfaceM2(fixture);
  const title = message(method === 'line' ? 'steps.line.title' : 'steps.cover.title', {
    fixture: fixture.name,
  });
  const { coverWith } = choice;
  const last = lastOf(fixture, drafts);
  const wet = drafts.some(({ step }) => step.kind === 'pour' && step.fixture === fixture.id);
  const dried = wet ? [airDryStep(context, fixture, last)] : [];
  const material = message(`custom.cover.${coverWith}`);
  return [
    ...dried,
    stepDraft(
      {
        id: coverId(fixture.id),
        kind: 'cover',
        phase: 'cover',
        work: { on: 'fixture', method },
        title,
        reason: choice.method.reason,
        stages: [
          stage('cover', title, {
            detail: [
              areaM2 > 0
                ? message('steps.cover.with-area', { material, areaM2 })
                : message('steps.cover.with', { material }),
              message(PUT_IN.has(coverWith) ? 'steps.cover.put-in' : 'steps.cover.taped'),
            ],
            say: message('steps.cover.say'),
          }),
        ],
        durationS: handworkS(shelves ? 'line' : 'cover', fixture),
      },
      {
        fixture: fixture.id,
        sources: [choice.method.source],
        needs: [
          ...(wet ? [airDryId(fixture.id)] : last),
          ...heatBeside(context, fixture, drafts),
        ].map((step) => ({ step })),
      },
      { fixture },
    ),
  ];
}

/** What one fixture belongs to; what was not purged belongs to nothing yet. */
function markLine(context: PlanContext, { id, name: fixture, designation }: Fixture): Message {
  return choiceOf(context, id).method.method === 'not-purged'
    ? message('steps.mark.out-of-use', { fixture })
    : message(`steps.mark.${designation}`, { fixture });
}

/** One step at the end: what belongs to what. */
export function markStep(context: PlanContext, drafts: readonly StepDraft[]): StepDraft {
  const needed = new Set(drafts.flatMap(({ step }) => step.needs.map(({ step: id }) => id)));
  const ends: readonly Step[] = drafts.map(({ step }) => step).filter(({ id }) => !needed.has(id));
  const title = message('steps.mark.title');
  return stepDraft(
    {
      id: MARK_ID,
      kind: 'mark',
      phase: 'mark',
      work: { on: 'kitchen' },
      title,
      reason: message('steps.mark.reason'),
      stages: [
        stage('mark', title, {
          detail: context.kitchen.fixtures.map((fixture) => markLine(context, fixture)),
          say: message('steps.mark.say'),
        }),
      ],
      durationS: handworkS('mark'),
    },
    {
      sources: [citation('trade-practice')],
      needs: ends.map(({ id }) => ({ step: id })),
    },
  );
}
