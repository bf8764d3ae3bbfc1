import { createMemo, For, Show } from 'solid-js';
import { daysOfPlan, type DayOfPlan, type Plan } from '../../../../core/plan/index.ts';
import type { WallClock } from '../../../pictures/course/frame.ts';
import { t, written } from '../../../context/language.ts';

type Fact = {
  readonly name: string;
  readonly value: string;
  /** What of it falls on a day; absent: it is not told by days. */
  readonly of?: (day: DayOfPlan) => number;
  readonly said?: (amount: number) => string;
};

const BAR_PX = 22;

function factsOf({ timetable, totals, boilingC }: Plan): readonly Fact[] {
  const { kettles, hotL, electricityKWh, gasKWh } = totals;
  return [
    {
      name: t('plan-page.facts.whole'),
      value: t('plan-page.duration', { lengthS: timetable.finishS }),
    },
    {
      name: t('plan-page.facts.hands'),
      value: t('plan-page.duration', { lengthS: totals.handsOnS }),
      of: ({ handsS }) => handsS,
      said: (lengthS) => t('plan-page.duration', { lengthS }),
    },
    {
      name: t('plan-page.facts.kettles'),
      value: t('plan-page.count', { low: kettles.low, high: kettles.high }),
      of: ({ kettles: many }) => many,
      said: (many) => t('plan-page.count', { low: many, high: many }),
    },
    {
      name: t('plan-page.facts.hot-water'),
      value: t('plan-page.litres', { lowL: hotL.low, highL: hotL.high }),
      of: ({ litres }) => litres,
      said: (litres) => t('plan-page.litres', { lowL: litres, highL: litres }),
    },
    gasKWh > 0
      ? {
          name: t('plan-page.facts.electricity-and-gas'),
          value: t('plan-page.energies', { electricityKWh, gasKWh }),
        }
      : {
          name: t('plan-page.facts.electricity'),
          value: t('plan-page.energy', { kWh: electricityKWh }),
        },
    {
      name: t('plan-page.facts.boils-at'),
      value: t('plan-page.temperature', { tempC: boilingC }),
    },
  ];
}

/** The figures of the plan, each with what of it falls on which day, drawn alike. */
export function Facts(props: { plan: Plan; clock: WallClock }) {
  const days = createMemo(() => daysOfPlan(props.plan, props.clock.startWallMs, props.clock.zone));
  return (
    <dl class="plan-facts">
      <For each={factsOf(props.plan)}>
        {(fact) => (
          <div>
            <dt>{written(fact.name)}</dt>
            <dd>{fact.value}</dd>
            <Show when={days().length > 1 && fact.of}>
              {(of) => (
                <Days days={days()} of={of()} said={fact.said ?? String} zone={props.clock.zone} />
              )}
            </Show>
          </div>
        )}
      </For>
    </dl>
  );
}

function Days(props: {
  days: readonly DayOfPlan[];
  of: (day: DayOfPlan) => number;
  said: (amount: number) => string;
  zone: string;
}) {
  const most = () => Math.max(...props.days.map(props.of), 1e-9);
  return (
    <dd class="fact-days">
      <For each={props.days}>
        {(day) => (
          <span
            title={t('plan-page.facts.day', {
              wallMs: day.noonWallMs,
              zone: props.zone,
              amount: props.said(props.of(day)),
            })}
          >
            <i aria-hidden="true" style={{ height: `${(props.of(day) / most()) * BAR_PX}px` }} />
            <small>
              {t('plan-page.course.short-weekday', { wallMs: day.noonWallMs, zone: props.zone })}
            </small>
            <span class="visually-hidden">{props.said(props.of(day))}</span>
          </span>
        )}
      </For>
    </dd>
  );
}
