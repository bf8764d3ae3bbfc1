import { createMemo, createSignal, For, Show } from 'solid-js';
import { learnedFrom, type Learned } from '../../core/record/index.ts';
import type { Fact } from '../../core/run/index.ts';
import { Action } from '../parts/action.tsx';
import { lengthInWords } from '../words/time.ts';

/** "Steel kettle: boils in 8 min 40 s (planned 8 min 20 s)". */
function sentence(one: Learned): string {
  const { mean } = one.estimate;
  if (one.what === 'pour') return `Your pour: ${mean.toFixed(1)} L a minute (planned 2.0)`;
  const planned = one.plannedS ?? 0;
  const verb = one.what === 'boil' ? 'boils in' : 'glows after';
  return `${one.name}: ${verb} ${lengthInWords(mean * planned)} (planned ${lengthInWords(planned)})`;
}

function grounds({ estimate, what }: Learned): string {
  const word = { boil: 'boil', glow: 'glow', pour: 'pour' }[what];
  const from = `from ${estimate.n} ${word}${estimate.n === 1 ? '' : 's'}, ±${Math.round(estimate.spread * 100)} %`;
  const apart = estimate.outliers.length;
  return apart > 0 ? `${from}; ${apart} set apart as too far off` : from;
}

/** What the reports of this run say about the household's hardware; the last report of each can be left out. */
export function LearnedList(props: { facts: readonly Fact[] }) {
  const [leftOut, setLeftOut] = createSignal<Readonly<Record<string, readonly number[]>>>({});
  const all = createMemo(() => learnedFrom(props.facts));
  const learned = createMemo(() => learnedFrom(props.facts, leftOut()));
  const reportsOf = (id: string) =>
    all().find((one) => one.id === id)?.estimate.observations.length ?? 0;
  const toggle = (id: string) =>
    setLeftOut((now) => {
      const { [id]: had, ...others } = now;
      return had ? others : { ...others, [id]: [reportsOf(id) - 1] };
    });
  return (
    <Show when={learned().length > 0}>
      <section aria-label="What this run taught">
        <h2>What this run taught</h2>
        <p class="quiet">By your reports. The next plan does not use it yet.</p>
        <ul class="learned">
          <For each={learned()}>
            {(one) => (
              <li>
                <span>
                  <strong>{sentence(one)}</strong>
                  <span class="quiet learned-grounds">{grounds(one)}</span>
                </span>
                <Action class="button button--plain" onPress={() => toggle(one.id)}>
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
