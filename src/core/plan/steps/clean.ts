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
import type { Work } from '../model/index.ts';
import { partsKept, takenOut } from './parts.ts';
import { lastPreparation } from './prepare.ts';

function sandLine(fixture: Fixture, choice: Choice): readonly Message[] {
  const wooden =
    'material' in fixture && (fixture.material === 'wood' || fixture.material === 'raw-wood');
  return wooden && choice.method.method === 'pour' ? [message('steps.clean.sand')] : [];
}

/** Cleans one fixture; levels above it come first in the timetable. */
function cleanStep(context: PlanContext, fixture: Fixture, above: readonly string[]): StepDraft {
  const choice = choiceOf(context, fixture.id);
  const kept = partsKept(choice);
  const { checklist, source } = cleaningOf(fixture, kept);
  const rests = restsFirst(choice.method);
  const fuel = fuelOf(fixture);
  const title = message('steps.clean.title', { name: asWritten(fixture.name) });
  return stepDraft(
    {
      id: cleanId(fixture.id),
      kind: 'clean',
      phase: 'clean',
      work: { on: 'fixture', method: choice.method.method },
      title,
      reason: message(rests ? 'steps.clean.reason-before-rest' : 'steps.clean.reason'),
      stages: [
        stage('clean', title, {
          detail: [
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
    above,
  );
}

/** All cleaning, level by level from the top. */
export function cleanSteps(context: PlanContext): readonly StepDraft[] {
  const levels = new Map<number, Fixture[]>();
  for (const fixture of context.kitchen.fixtures) {
    const { level } = cleaningOf(fixture);
    levels.set(level, [...(levels.get(level) ?? []), fixture]);
  }
  const drafts: StepDraft[] = [];
  let above: readonly string[] = [];
  for (const [, fixtures] of [...levels].toSorted(([a], [b]) => a - b)) {
    drafts.push(...fixtures.map((fixture) => cleanStep(context, fixture, above)));
    above = fixtures.map(({ id }) => cleanId(id));
  }
  return drafts;
}

type Rested = {
  /** Of a fixture or of a vessel. */
  readonly id: string;
  readonly name: Message;
  readonly work: Work;
  readonly fixture?: Fixture;
};

/** The rest of one thing: by a timer that begins when it is clean. */
export function restStep(
  { custom: { restHours, restSource } }: PlanContext,
  { id, name, work, fixture }: Rested,
): StepDraft {
  const lengthS = restHours * SECONDS_PER_HOUR;
  const title = message(
    fixture?.kind === 'sink' ? 'steps.rest.title-sink' : 'steps.rest.title-nothing-hot',
    {
      name,
    },
  );
  return stepDraft(
    {
      id: restId(id),
      kind: 'rest',
      phase: 'rest',
      work,
      title,
      reason: message('steps.rest.reason', { restHours }),
      stages: [
        stage('rest', title, {
          detail: [message('steps.rest.label'), message('steps.rest.detail')],
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
      durationS: exactly(lengthS),
    },
    {
      ...(fixture && { fixture: fixture.id }),
      sources: [citation(restSource)],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: cleanId(id) }],
    },
    fixture ? { fixture } : {},
  );
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
            name: asWritten(fixture.name),
            work: { on: 'fixture', method },
            fixture,
          }),
        ]
      : [];
  });
}
