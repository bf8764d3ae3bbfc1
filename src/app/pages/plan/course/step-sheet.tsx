import { For, Show } from 'solid-js';
import { titleUntil, type Course, type Plan, type Step } from '../../../../core/plan/index.ts';
import type { Pressed } from '../../../pictures/course/bars.ts';
import type { WallClock } from '../../../pictures/course/frame.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { StepBody } from '../steps/step-body.tsx';
import { endOf, startOf, wallAt, whoText } from '../steps/step-words.ts';

/** What a bar of the course is: its steps, when, by whom, why, and what they warn of. */
export function StepSheet(props: {
  plan: Plan;
  course: Course;
  clock: WallClock;
  pressed: Pressed;
  onClose: () => void;
}) {
  const steps = () =>
    props.pressed.steps.flatMap((id) => props.plan.steps.find((one) => one.id === id) ?? []);
  const title = () => {
    const [first] = steps();
    return first ? say(titleUntil(props.plan, first)) : '';
  };
  return (
    <Sheet label={title()} onClose={props.onClose}>
      <Show
        when={steps().length > 1}
        fallback={
          <For each={steps()}>
            {(step) => (
              <>
                <h2>{title()}</h2>
                <When {...props} step={step} />
                <StepBody plan={props.plan} step={step} cautions />
              </>
            )}
          </For>
        }
      >
        <h2>{t('plan-page.course.steps', { many: steps().length })}</h2>
        <For each={steps()}>
          {(step, n) => (
            <details open={n() === 0} class="step-what">
              <summary>
                <span class="step-title">{say(titleUntil(props.plan, step))}</span>
                <When {...props} step={step} />
              </summary>
              <StepBody plan={props.plan} step={step} cautions />
            </details>
          )}
        </For>
      </Show>
      <div class="button-row">
        <Action class="button" name="close-step" onPress={props.onClose}>
          {t('plan-page.back')}
        </Action>
      </div>
    </Sheet>
  );
}

/** "Friday morning 09:15 to 10:15, You", and how much longer it may take. */
function When(props: { plan: Plan; course: Course; clock: WallClock; step: Step }) {
  const from = () => wallAt(props.clock, startOf(props.plan, props.step));
  const slackTo = () => {
    const bar = props.course.rows
      .flatMap(({ bars }) => bars)
      .find(({ steps }) => steps.includes(props.step.id));
    return bar?.waitedForS !== undefined && bar.waitedForS > bar.toS + 60
      ? wallAt(props.clock, bar.waitedForS)
      : undefined;
  };
  return (
    <span class="quiet step-at">
      {t('plan-page.course.at', {
        ...from(),
        toWallMs: wallAt(props.clock, endOf(props.plan, props.step)).wallMs,
        who: whoText(props.plan, props.course, [props.step.id]),
      })}
      <Show when={slackTo()}>{(at) => <> {t('plan-page.course.slack', at())}</>}</Show>
    </span>
  );
}
