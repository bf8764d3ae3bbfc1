import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  calibrationFrom,
  type CalibrationRow,
  type LeftOutMeasurements,
} from '../../../core/report/index.ts';
import type { Fact } from '../../../core/run/index.ts';
import { Action } from '../../parts/action.tsx';
import { lengthInWords } from '../../labels/time.ts';

const VERBS = {
  boil: 'boils in',
  glow: 'glows after',
  'heat-up': 'is at its highest after',
  cool: 'may be touched after',
} as const;

/** "Steel kettle: boils in 8 min 40 s (planned 8 min 20 s)". */
function sentence({ what, name, estimate, plannedS = 0, reckonedS = 0 }: CalibrationRow): string {
  const { mean } = estimate;
  if (what === 'pour') return `Your pour: ${mean.toFixed(1)} L a minute`;
  if (what === 'reach') return `One kettle reaches ${Math.round(mean * 100)} % as far as reckoned`;
  return `${name}: ${VERBS[what]} ${lengthInWords(mean * reckonedS)} (planned ${lengthInWords(plannedS)})`;
}

const REPORTS = {
  boil: ['boil', 'boils'],
  glow: ['glow', 'glows'],
  'heat-up': ['heating', 'heatings'],
  cool: ['cool-down', 'cool-downs'],
  pour: ['pour', 'pours'],
  reach: ['kettle', 'kettles'],
} as const;

function grounds({ estimate, what }: CalibrationRow): string {
  const [one, many] = REPORTS[what];
  const counted = `from ${estimate.n} ${estimate.n === 1 ? one : many}`;
  const from =
    what === 'cool'
      ? `${counted}; the longest counts`
      : `${counted}, ±${Math.round(estimate.spread * 100)} %`;
  const apart = estimate.outliers.length;
  return apart > 0 ? `${from}; ${apart} set apart as too far off` : from;
}

/** What the reports of this run say about the household's hardware; the last report of each can be left out. */
export function CalibrationList(props: {
  facts: readonly Fact[];
  /** Reports not to be counted, where they are kept; else only this page knows. */
  leftOut?: LeftOutMeasurements | undefined;
  onLeftOut?: ((next: LeftOutMeasurements) => void) | undefined;
}) {
  const [own, setOwn] = createSignal<LeftOutMeasurements>({});
  const leftOut = () => props.leftOut ?? own();
  const learned = createMemo(() => calibrationFrom(props.facts, leftOut()));
  const toggle = ({ id, reports }: CalibrationRow) => {
    const { [id]: had, ...others } = leftOut();
    const next = had ? others : { ...others, [id]: [reports - 1] };
    setOwn(next);
    props.onLeftOut?.(next);
  };
  return (
    <Show when={learned().length > 0}>
      <section aria-label="What this run taught">
        <h2>What this run taught</h2>
        <p class="quiet">
          By your reports.{' '}
          {props.onLeftOut ? 'The next plan expects it' : 'The next plan does not use it yet'};
          rests, holds and limits stay as they are.
        </p>
        <ul class="learned">
          <For each={learned()}>
            {(one) => (
              <li>
                <span>
                  <strong>{sentence(one)}</strong>
                  <span class="quiet learned-grounds">{grounds(one)}</span>
                </span>
                <Action class="button button--plain" onPress={() => toggle(one)}>
                  {leftOut()[one.id] ? 'Count the last report' : 'Leave out the last report'}
                </Action>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  );
}
