import { say, t } from '../../context/language.ts';
import { createMemo, For, Show } from 'solid-js';
import { titleUntil, type Plan, type Step } from '../../../core/plan/index.ts';
import {
  HOURS_PER_DAY,
  MINUTES_PER_HOUR,
  MS_PER_SECOND,
  SECONDS_PER_MINUTE,
} from '../../../core/units/index.ts';
import { Lanes } from '../../pictures/lanes.tsx';

/** The open questions that make a step what it is: it purges or covers the stricter way. */
function openFor(plan: Plan, step: Step): Plan['questions'] {
  if (step.phase !== 'purge' && step.phase !== 'cover') return [];
  return plan.questions.filter((one) => one.fixture === step.fixture);
}

/** Whole minutes after the start of the job, in days, hours and minutes. */
function offsetText(offsetS: number): string {
  const whole = Math.round(offsetS / SECONDS_PER_MINUTE);
  const minutes = whole % MINUTES_PER_HOUR;
  const hours = Math.floor(whole / MINUTES_PER_HOUR) % HOURS_PER_DAY;
  const day = Math.floor(whole / (MINUTES_PER_HOUR * HOURS_PER_DAY)) + 1;
  return t('plan-page.steps.offset', { day, hours, minutes });
}

/** On the wall of the kitchen where the plan knows its days, else counted from the start. */
function whenText({ days, kitchen, timetable }: Plan, { id }: Step): string {
  const startS = timetable.startS[id] ?? 0;
  const zone = kitchen.place?.zone;
  return days && zone !== undefined
    ? t('plan-page.steps.at', { wallMs: days.startWallMs + startS * MS_PER_SECOND, zone })
    : offsetText(startS);
}

/** Every step in the order of the timetable. */
export function Steps(props: { plan: Plan }) {
  const ordered = createMemo(() =>
    props.plan.steps.toSorted(
      (a, b) => (props.plan.timetable.startS[a.id] ?? 0) - (props.plan.timetable.startS[b.id] ?? 0),
    ),
  );
  const fixture = (step: Step) =>
    props.plan.kitchen.fixtures.find((f) => f.id === step.fixture)?.name ??
    t('plan-page.steps.whole-kitchen');
  return (
    <ol class="steps">
      <For each={ordered()}>
        {(step) => (
          <li class="step-row">
            <span class="step-when">{whenText(props.plan, step)}</span>
            <div class="step-what">
              <details>
                <summary>
                  <span class="step-title">{say(titleUntil(props.plan, step))}</span>
                  <span class="quiet">
                    {t('plan-page.steps.about', {
                      where: fixture(step),
                      phase: t(`common.phase.${step.phase}`),
                      lengthS: step.durationS.typical,
                    })}
                  </span>
                </summary>
                <p class="quiet">{say(step.reason)}</p>
                <For each={openFor(props.plan, step)}>
                  {(question) => (
                    <p class="method-ask">
                      <strong>{t('plan-page.not-answered')}</strong> {say(question.ask)}{' '}
                      <span class="quiet">
                        {t('plan-page.until-then', { untilThen: say(question.untilThen) })}
                      </span>
                    </p>
                  )}
                </For>
                <ol class="step-stages">
                  <For each={step.stages}>
                    {(stage) => (
                      <li>
                        {say(stage.title)}
                        <Show when={stage.detail.length > 0}>
                          <ul class="step-detail quiet">
                            <For each={stage.detail}>{(line) => <li>{say(line)}</li>}</For>
                          </ul>
                        </Show>
                      </li>
                    )}
                  </For>
                </ol>
                <Show when={step.picture?.kind === 'lanes' && step.picture}>
                  {(picture) => (
                    <div class="step-lanes">
                      <Lanes picture={picture() as Extract<Step['picture'], { kind: 'lanes' }>} />
                    </div>
                  )}
                </Show>
              </details>
            </div>
          </li>
        )}
      </For>
    </ol>
  );
}
