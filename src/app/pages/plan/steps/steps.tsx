import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  titleUntil,
  type Course,
  type Plan,
  type Step,
  type StepGroup,
} from '../../../../core/plan/index.ts';
import type { WallClock } from '../../../pictures/course/frame.ts';
import { say, t } from '../../../context/language.ts';
import { dayParts, type DayPart } from './day-parts.ts';
import { hasScrolled, Later } from '../../../parts/later.tsx';
import { StepBody } from './step-body.tsx';
import { groupTitle, groupUntil, startOf, wallAt, whoText } from './step-words.ts';

type Told = { readonly plan: Plan; readonly course: Course; readonly clock: WallClock };

/** Every step in the order of the timetable, by evening and morning; what belongs together is one row that opens. */
export function Steps(props: Told) {
  const parts = createMemo(() => dayParts(props.plan, props.clock));
  // From the top of the page no more than the first part is near; who has scrolled loses no place.
  const isNear = (at: number) => at === 0 || hasScrolled();
  return (
    <div class="steps">
      <For each={parts()}>
        {(part, at) => (
          <Later of={part} now={isNear(at())}>
            <DayPartRows {...props} part={part} />
          </Later>
        )}
      </For>
    </div>
  );
}

function DayPartRows(props: Told & { part: DayPart }) {
  return (
    <section class="steps-part">
      <h3>{props.part.heading}</h3>
      <ol>
        <For each={props.part.groups}>{(group) => <GroupRow {...props} group={group} />}</For>
      </ol>
    </section>
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
  const [isOpen, setOpen] = createSignal(false);
  const clockOf = (atS: number) => t('plan-page.course.hour', wallAt(props.clock, atS));
  const only = (): Step | undefined =>
    props.group.steps.length === 1 ? props.group.steps[0] : undefined;
  return (
    <li class="step-row">
      <span class="step-when">{clockOf(props.group.fromS)}</span>
      <details class="step-what" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>
          <span class="step-title">{say(groupTitle(props.plan, props.group))}</span>{' '}
          <span class="quiet">{about().join(' · ')}</span>
        </summary>
        <Later of={props.plan} now={isOpen()}>
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
        </Later>
      </details>
    </li>
  );
}
