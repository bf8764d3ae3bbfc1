import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { exactly, SECONDS_PER_HOUR } from '../../units/index.ts';
import { standingOn } from '../context/places.ts';
import { choiceOf, readyId, type PlanContext } from '../context/plan-context.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { airDryId, dryId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';

/** A wiped surface is dry to its joints after this, s: common practice, no published source. */
const AIR_DRY_S = SECONDS_PER_HOUR;

/** Where what stands on a fixture goes while it is poured: a place that is not poured itself, or out of the room. */
function clearLines(context: PlanContext, fixture: Fixture): readonly Message[] {
  const names = standingOn(context.kitchen, fixture).map(({ name }) => name);
  if (names.length === 0) return [];
  const free = context.kitchen.fixtures.find(
    (one) =>
      (one.kind === 'table' || one.kind === 'counter') &&
      one.id !== fixture.id &&
      choiceOf(context, one.id).method.method !== 'pour',
  );
  return [
    free
      ? message('steps.dry.clear-to', { names: names.map(asWritten), to: free.name })
      : message('steps.dry.clear', { names: names.map(asWritten) }),
  ];
}

/** Before its first kettle a fixture is dry: water left on it cools the stream before it lands. */
export function dryStep(context: PlanContext, fixture: Fixture): StepDraft {
  const title = message('steps.dry.title', { fixture: fixture.name });
  return stepDraft(
    {
      id: dryId(fixture.id),
      kind: 'dry',
      phase: 'purge',
      work: { on: 'fixture', method: choiceOf(context, fixture.id).method.method },
      title,
      reason: message('steps.dry.reason'),
      stages: [
        stage('dry', title, {
          detail: [
            ...clearLines(context, fixture),
            message('steps.dry.seams'),
            message('steps.dry.kettle-away'),
            ...(fixture.kind === 'sink' ? [message('steps.dry.drain')] : []),
          ],
          say: message('steps.dry.say'),
        }),
      ],
      durationS: handworkS('dry', fixture),
    },
    {
      fixture: fixture.id,
      sources: [citation('trade-practice')],
      needs: [{ step: readyId(context, fixture.id) }],
    },
    { fixture },
  );
}

/** Nothing is laid on a surface that is still wet from the last cold water. */
export function airDryStep(
  context: PlanContext,
  fixture: Fixture,
  after: readonly string[],
): StepDraft {
  const title = message('steps.air-dry.title', { fixture: fixture.name });
  const name = asWritten(fixture.name);
  return stepDraft(
    {
      id: airDryId(fixture.id),
      kind: 'dry',
      phase: 'cover',
      work: { on: 'fixture', method: choiceOf(context, fixture.id).method.method },
      title,
      reason: message('steps.air-dry.reason'),
      stages: [
        stage('dry', title, {
          timers: [
            {
              id: 'dry',
              role: 'hold',
              purpose: 'at-least',
              lengthS: AIR_DRY_S,
              label: message('steps.air-dry.timer', { name }),
              of: { label: message('steps.air-dry.timer-short'), name },
            },
          ],
        }),
      ],
      durationS: exactly(AIR_DRY_S),
    },
    {
      fixture: fixture.id,
      sources: [citation('trade-practice')],
      attention: 'none',
      startsBy: 'chain',
      needs: after.map((step) => ({ step })),
    },
    { fixture },
  );
}
