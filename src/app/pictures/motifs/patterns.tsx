import { For, Match, Switch } from 'solid-js';
import type { Motif } from './motifs.ts';

const SIZE: Readonly<Record<Motif, readonly [widthPx: number, heightPx: number]>> = {
  plain: [10, 10],
  dots: [9, 9],
  waves: [16, 8],
  clear: [10, 10],
  water: [8, 8],
  heat: [9, 9],
  done: [10, 10],
  sheet: [8, 8],
  bars: [7, 7],
  crosses: [22, 22],
  dashes: [16, 10],
};

/** Patterns under `${prefix}-${name}`, for each name of a picture. */
export function Patterns(props: { prefix: string; motifs: Readonly<Record<string, Motif>> }) {
  return (
    <defs>
      <For each={Object.entries(props.motifs)}>
        {([name, motif]) => (
          <pattern
            id={`${props.prefix}-${name}`}
            width={SIZE[motif][0]}
            height={SIZE[motif][1]}
            patternUnits="userSpaceOnUse"
            patternTransform={motif === 'water' ? 'rotate(45)' : undefined}
          >
            <Ink motif={motif} />
          </pattern>
        )}
      </For>
    </defs>
  );
}

function Ink(props: { motif: Motif }) {
  return (
    <Switch>
      <Match when={props.motif === 'dots'}>
        <circle cx="4.5" cy="4.5" r="1.5" class="pt-ink" />
      </Match>
      <Match when={props.motif === 'waves'}>
        <rect width="16" height="8" class="pt-rest" />
        <path d="M0 4q4-3 8 0t8 0" class="pt-line" />
      </Match>
      <Match when={props.motif === 'clear'}>
        <rect width="10" height="10" class="pt-ready" />
      </Match>
      <Match when={props.motif === 'water'}>
        <rect width="8" height="8" class="pt-water" />
        <rect width="3" height="8" class="pt-water-deep" />
      </Match>
      <Match when={props.motif === 'heat'}>
        <rect width="9" height="9" class="pt-glow" />
        <path d="M0 0 9 9M9 0 0 9" class="pt-ember" />
      </Match>
      <Match when={props.motif === 'done'}>
        <rect width="10" height="10" class="pt-done" />
      </Match>
      <Match when={props.motif === 'sheet'}>
        <rect width="8" height="8" class="pt-done" />
        <path d="M0 0H8M0 0V8" class="pt-line" />
      </Match>
      <Match when={props.motif === 'bars'}>
        <path d="M3.5 0V7" class="pt-line" />
      </Match>
      <Match when={props.motif === 'crosses'}>
        <path d="M4 4 18 18M18 4 4 18" class="pt-cross" />
      </Match>
      <Match when={props.motif === 'dashes'}>
        <path d="M2 5H10" class="pt-cross" />
      </Match>
    </Switch>
  );
}
