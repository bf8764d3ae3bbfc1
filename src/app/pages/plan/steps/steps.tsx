import { createMemo, For, Show } from 'solid-js';
import {
  titleUntil,
  type Course,
  type Plan,
  type Step,
  type StepGroup,
} from '../../../../core/plan/index.ts';
import type { WallClock } from '../../../pictures/course/frame.ts';
import { say, t } from '../../../context/language.ts';
import { dayParts } from './day-parts.ts';
import { StepBody } from './step-body.tsx';
import { groupTitle, groupUntil, startOf, wallAt, whoText } from './step-words.ts';

type Told = { readonly plan: Plan; readonly course: Course; readonly clock: WallClock };

/** Every step in the order of the timetable, by evening and morning; what belongs together is one row that opens. */
export function Steps(props: Told) {
  const parts = createMemo(() => dayParts(props.plan, props.clock));
  return (
    <div class="steps">
      <For each={parts()}>
        {({ heading, groups }) => (
          <section class="steps-part">
            <h3>{heading}</h3>
            <ol>
              <For each={groups}>{(group) => <GroupRow {...props} group={group} />}</For>
            </ol>
          </section>
        )}
      </For>
    </div>
  );
}

function GroupRow(props: Told & { group: StepGroup }) {
  const about = () => {
    const { group, plan, clock, course } = props;
    const who = whoText(
      plan,
      course,
      group.steps.map(({ id }) => id),
    );
    const isNear = group.steps.some(({ attention }) => attention === 'watch');
    return [
      who === '' && isNear ? t('plan-page.steps.near') : who,
      group.handsToS > group.fromS
        ? t('plan-page.steps.about', { lengthS: group.handsToS - group.fromS })
        : '',
      groupUntil(plan, group, clock) ?? '',
    ].filter((one) => one !== '');
  };
  const clockOf = (atS: number) => t('plan-page.course.hour', wallAt(props.clock, atS));
  const only = (): Step | undefined =>
    props.group.steps.length === 1 ? props.group.steps[0] : undefined;
  return (
    <li class="step-row">
      <span class="step-when">{clockOf(props.group.fromS)}</span>
      <details class="step-what">
        <summary>
          <span class="step-title">{say(groupTitle(props.plan, props.group))}</span>{' '}
          <span class="quiet">{about().join(' · ')}</span>
        </summary>
        <Show
          when={only()}
          fallback={
            <ol class="step-inner">
              <For each={props.group.steps}>
                {(step) => (
                  <li>
                    <details>
                      <summary>
                        <span class="step-when">{clockOf(startOf(props.plan, step))}</span>{' '}
                        {say(titleUntil(props.plan, step))}
                      </summary>
                      <StepBody plan={props.plan} step={step} />
                    </details>
                  </li>
                )}
              </For>
            </ol>
          }
        >
          {(step) => <StepBody plan={props.plan} step={step()} />}
        </Show>
      </details>
    </li>
  );
}
