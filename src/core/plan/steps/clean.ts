import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import type { Choice } from '../../custom/index.ts';
import { exactly, SECONDS_PER_HOUR } from '../../units/index.ts';
import { choiceOf, type PlanContext } from '../context/plan-context.ts';
import { fuelOf, restsFirst } from '../context/purging.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { cleanId, restId } from '../context/step-ids.ts';
import { cleaningOf, cleaningS } from '../context/work-times.ts';
import { beforeWashing, washedUnplugged } from '../chilled/chilled-steps.ts';
import { restCounts } from '../context/last-hot.ts';
import type { Work } from '../model/index.ts';
import { partsKept, takenOut } from './parts.ts';
import { lastPreparation } from './prepare.ts';

function sandLine(fixture: Fixture, choice: Choice): readonly Message[] {
  const wooden =
    'material' in fixture && (fixture.material === 'wood' || fixture.material === 'raw-wood');
  return wooden && choice.method.method === 'pour' ? [message('steps.clean.sand')] : [];
}

/** Hot water would begin a rest anew that runs already. */
export function coldOnly(counted: boolean): readonly Message[] {
  return counted ? [message('steps.clean.cold-only')] : [];
}

/** Why before the rest, or that it rests already. */
function cleanReason(rests: boolean, counted: boolean): Message {
  if (!rests) return message('steps.clean.reason');
  return message(counted ? 'steps.clean.reason-resting' : 'steps.clean.reason-before-rest');
}

/** Cleans one fixture. */
function cleanStep(context: PlanContext, fixture: Fixture): StepDraft {
  const choice = choiceOf(context, fixture.id);
  const kept = partsKept(choice);
  const { checklist, source } = cleaningOf(fixture, kept);
  const rests = restsFirst(choice.method);
  const counted = rests && restCounts(context, fixture.id);
  const fuel = fuelOf(fixture);
  const title = message('steps.clean.title', { name: asWritten(fixture.name) });
  return stepDraft(
    {
      id: cleanId(fixture.id),
      kind: 'clean',
      phase: 'clean',
      work: { on: 'fixture', method: choice.method.method },
      title,
      reason: cleanReason(rests, counted),
      stages: [
        stage('clean', title, {
          detail: [
            ...coldOnly(counted),
            ...checklist,
            ...takenOut(choice),
            ...sandLine(fixture, choice),
            ...(rests ? [message('steps.rest.label')] : []),
          ],
          say: message('steps.clean.say'),
        }),
      ],
      durationS: cleaningS(fixture),
    },
    {
      fixture: fixture.id,
      sources: [citation(source)],
      needs: [{ step: lastPreparation(context) }],
    },
    { fixture, rests, ...(fuel && { fuel }) },
  );
}

/** All cleaning, in the order of the kitchen file; the timetable orders it by what must rest. */
export function cleanSteps(context: PlanContext): readonly StepDraft[] {
  return context.kitchen.fixtures.flatMap((fixture) => {
    const before = beforeWashing(fixture, lastPreparation(context));
    return [...before, washedUnplugged(cleanStep(context, fixture), before)];
  });
}

type Rested = {
  /** Of a fixture or of one vessel of those alike. */
  readonly id: string;
  /** Of the fixture or of the vessel as the kitchen tells it. */
  readonly toldAs: string;
  readonly name: Message;
  readonly work: Work;
  readonly fixture?: Fixture;
};

/**
 * The rest of one thing: by a timer that begins when it is clean. From a last hot use that was told
 * the timetable counts less; the clock of the run is dated back when a person has confirmed it.
 */
export function restStep(
  context: PlanContext,
  { id, toldAs, name, work, fixture }: Rested,
): StepDraft {
  const { restHours, restSource } = context.custom;
  const lengthS = restHours * SECONDS_PER_HOUR;
  const since = context.lastHots.get(toldAs);
  const zone = context.kitchen.place?.zone;
  const title = message(
    fixture?.kind === 'sink' ? 'steps.rest.title-sink' : 'steps.rest.title-nothing-hot',
    {
      name,
    },
  );
  const counted = since?.wallMs !== undefined && zone !== undefined;
  const draft = stepDraft(
    {
      id: restId(id),
      kind: 'rest',
      phase: 'rest',
      work,
      title,
      reason: message('steps.rest.reason', { restHours }),
      stages: [
        stage('rest', title, {
          detail: [
            message('steps.rest.label'),
            message('steps.rest.detail'),
            ...(counted
              ? [message('steps.rest.from-last-hot', { wallMs: since.wallMs, zone })]
              : []),
          ],
          timers: [
            {
              id: 'rest',
              role: 'hold',
              purpose: 'at-least',
              lengthS,
              label: message('steps.rest.timer', { name }),
              of: { label: message('steps.rest.timer-short'), name },
            },
          ],
        }),
      ],
      durationS: exactly(counted ? 0 : lengthS),
    },
    {
      ...(fixture && { fixture: fixture.id }),
      sources: [citation(restSource)],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: cleanId(id) }],
      ...(counted && { lastHotWallMs: since.wallMs }),
    },
    fixture ? { fixture } : {},
  );
  return counted ? { ...draft, overS: lengthS - since.restedS } : draft;
}

/** The rest of every fixture that is purged. */
export function restSteps(context: PlanContext): readonly StepDraft[] {
  return context.kitchen.fixtures.flatMap((fixture) => {
    const { method: chosen } = choiceOf(context, fixture.id);
    const { method } = chosen;
    return restsFirst(chosen)
      ? [
          restStep(context, {
            id: fixture.id,
            toldAs: fixture.id,
            name: asWritten(fixture.name),
            work: { on: 'fixture', method },
            fixture,
          }),
        ]
      : [];
  });
}
