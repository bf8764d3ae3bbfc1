import { createMemo, For, Show } from 'solid-js';
import { emergencyNumber, personName } from '../../../../core/kitchen/index.ts';
import type { PersonLane, Plan, StepGroup } from '../../../../core/plan/index.ts';
import { say, t } from '../../../context/language.ts';
import { dayParts, type DayPart } from '../steps/day-parts.ts';
import { groupTitle, groupUntil, wallAt } from '../steps/step-words.ts';
import { HandoutFrame } from './frame/handout-frame.tsx';
import type { HandoutProps } from './frame/handout-props.ts';

/** What one person does, by evening and morning. */
type Sheet = { readonly name: string; readonly parts: readonly DayPart[] };

/** The plan with the steps of one lane alone. */
function ownPlan(plan: Plan, { hands, watches }: PersonLane): Plan {
  const own = new Set([...hands, ...watches].map(({ step }) => step));
  return { ...plan, steps: plan.steps.filter(({ id }) => own.has(id)) };
}

/** A sheet a person: what the plan gives them, to be ticked off. */
export function CrewHandout(props: HandoutProps) {
  const { household } = props.plan.kitchen;
  const sheets = createMemo((): readonly Sheet[] =>
    props.course.lanes.map((lane, person) => ({
      name: say(personName(household, person)),
      parts: dayParts(ownPlan(props.plan, lane), props.clock),
    })),
  );
  const told = (group: StepGroup) =>
    [
      t('plan-page.steps.about', { lengthS: group.handsToS - group.fromS }),
      groupUntil(props.plan, group, props.clock) ?? '',
    ].filter((one) => one !== '');
  const text = () =>
    sheets()
      .flatMap(({ name, parts }) => [
        t('handouts.crew.title', { name, kitchen: props.plan.kitchen.name }),
        ...parts.flatMap(({ heading, groups }) => [
          '',
          heading,
          ...groups.map(
            (group) =>
              `[ ] ${t('plan-page.course.hour', wallAt(props.clock, group.fromS))} ${say(groupTitle(props.plan, group))} (${told(group).join(', ')})`,
          ),
        ]),
        '',
      ])
      .join('\n');
  return (
    <HandoutFrame
      title={t('handouts.name.crew')}
      about={t('handouts.crew.about')}
      text={text}
      class="crew-sheets"
    >
      <For each={sheets()}>
        {({ name, parts }) => (
          <section class="crew-sheet">
            <h3 class="crew-sheet-name">
              {t('handouts.crew.title', { name, kitchen: props.plan.kitchen.name })}
            </h3>
            <p>
              {t('handouts.crew.first')}{' '}
              <Show when={emergencyNumber(props.plan.kitchen.country)}>
                {(number) => <strong>{t('handouts.door.call', { number: number() })}</strong>}
              </Show>
            </p>
            <For each={parts} fallback={<p>{t('handouts.crew.nothing')}</p>}>
              {({ heading, groups }) => (
                <section class="crew-sheet-part">
                  <h4>{heading}</h4>
                  <ul>
                    <For each={groups}>
                      {(group) => (
                        <li>
                          <span class="tick-box" aria-hidden="true" />
                          <b>{t('plan-page.course.hour', wallAt(props.clock, group.fromS))}</b>
                          <span>
                            {say(groupTitle(props.plan, group))}{' '}
                            <span class="quiet">{told(group).join(' · ')}</span>
                          </span>
                        </li>
                      )}
                    </For>
                  </ul>
                </section>
              )}
            </For>
          </section>
        )}
      </For>
    </HandoutFrame>
  );
}
