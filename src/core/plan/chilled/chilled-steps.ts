import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { asWritten, message } from '../../messages/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import { estimateTimer, stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import type { Step } from '../model/index.ts';
import { cleanId, switchOnId, thawId, unplugId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units/index.ts';

/**
 * How soon the next hand is on it while its food stands in a cool box, s: common practice, no
 * published source. The timetable keeps it where the hours of work allow it.
 */
const WASHED_WITHIN_S = 30 * SECONDS_PER_MINUTE;
const THAWED_WITHIN_S = 2 * SECONDS_PER_HOUR;
const ON_WITHIN_S = 3 * SECONDS_PER_HOUR;

/** Is it kept cold by electricity, with food in it? */
function isChilled({ kind }: Fixture): boolean {
  return kind === 'fridge' || kind === 'freezer';
}

/** Food out and the plug pulled, before any water. */
function unplugStep(fixture: Fixture, before: string): StepDraft {
  const name = asWritten(fixture.name);
  const title = message('steps.unplug.title', { name });
  const freezes = fixture.kind === 'freezer';
  return stepDraft(
    {
      id: unplugId(fixture.id),
      kind: 'unplug',
      phase: 'clean',
      work: { on: 'fixture', method: 'clean' },
      title,
      reason: message('steps.unplug.reason'),
      stages: [
        stage('do', title, {
          detail: [
            message('steps.unplug.food'),
            message('steps.unplug.plug'),
            ...(freezes ? [message('steps.unplug.towels')] : []),
          ],
          say: message('steps.unplug.say'),
        }),
      ],
      durationS: handworkS('unplug'),
    },
    { fixture: fixture.id, sources: [citation('makers-manuals')], needs: [{ step: before }] },
    { fixture },
  );
}

/** The ice goes by itself; how long is a guess, a person says that it is off. */
function thawStep(fixture: Fixture): StepDraft {
  const name = asWritten(fixture.name);
  const title = message('steps.thaw.title', { name });
  const durationS = handworkS('thaw');
  return stepDraft(
    {
      id: thawId(fixture.id),
      kind: 'thaw',
      phase: 'clean',
      work: { on: 'fixture', method: 'clean' },
      title,
      reason: message('steps.thaw.reason'),
      stages: [
        stage('do', title, {
          detail: [message('steps.thaw.open'), message('steps.thaw.no-tools')],
          say: message('steps.thaw.say'),
          timers: [estimateTimer('thaw', durationS.typical, message('steps.thaw.timer', { name }))],
        }),
      ],
      durationS,
    },
    {
      fixture: fixture.id,
      sources: [citation('makers-manuals')],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: unplugId(fixture.id) }],
    },
    { fixture },
  );
}

/** Plugged in again once it is clean and lined. */
function switchOnStep(fixture: Fixture, own: readonly Step[]): StepDraft {
  const name = asWritten(fixture.name);
  const title = message('steps.switch-on.title', { name });
  const needed = new Set(own.flatMap(({ needs }) => needs.map(({ step }) => step)));
  const rests = own.some(({ kind }) => kind === 'rest');
  return stepDraft(
    {
      id: switchOnId(fixture.id),
      kind: 'switch-on',
      phase: 'clean',
      work: { on: 'fixture', method: 'clean' },
      title,
      reason: message('steps.switch-on.reason'),
      stages: [
        stage('start', title, {
          detail: [
            message('steps.switch-on.dry'),
            message(
              fixture.kind === 'freezer' ? 'steps.switch-on.frozen' : 'steps.switch-on.chilled',
            ),
          ],
          say: message('steps.switch-on.say'),
        }),
      ],
      durationS: handworkS('switch-on'),
    },
    {
      fixture: fixture.id,
      sources: [citation('trade-practice')],
      needs: own.filter(({ id }) => !needed.has(id)).map(({ id }) => ({ step: id })),
    },
    { fixture },
    [],
    rests ? [] : [{ step: cleanId(fixture.id), to: 'end', mostS: ON_WITHIN_S }],
  );
}

/** What is done with a fridge or freezer before it is washed; none for other fixtures. */
export function beforeWashing(fixture: Fixture, before: string): readonly StepDraft[] {
  if (!isChilled(fixture)) return [];
  const unplug = unplugStep(fixture, before);
  return fixture.kind === 'freezer' ? [unplug, thawStep(fixture)] : [unplug];
}

/** The cleaning of a fixture, after what comes before it where it is a fridge or freezer. */
export function washedUnplugged(draft: StepDraft, before: readonly StepDraft[]): StepDraft {
  const last = before.at(-1)?.step;
  if (!last) return draft;
  const mostS = last.kind === 'thaw' ? THAWED_WITHIN_S : WASHED_WITHIN_S;
  return {
    ...draft,
    step: { ...draft.step, needs: [...draft.step.needs, { step: last.id }] },
    ties: [...draft.ties, { step: last.id, to: 'end', mostS }],
  };
}

/** Every fridge and freezer that was switched off is switched on again, after all that is done to it. */
export function switchOnSteps(
  { kitchen }: PlanContext,
  drafts: readonly StepDraft[],
): readonly StepDraft[] {
  const steps = drafts.map(({ step }) => step);
  return kitchen.fixtures.filter(isChilled).map((fixture) =>
    switchOnStep(
      fixture,
      steps.filter((step) => step.fixture === fixture.id),
    ),
  );
}
