import { createSignal } from 'solid-js';
import type { DrawnBar } from './bars.ts';
import { isMirrored } from './mirror.ts';

type Rows = readonly (readonly DrawnBar[])[];

const idOf = ({ steps, person }: DrawnBar): string => `${person ?? 'row'} ${steps[0]}`;

/** Where an arrow leads from a bar: on in its row, or to what lies nearest in the next one. */
function nextOf(rows: Rows, bar: DrawnBar, key: string): DrawnBar | undefined {
  const flat = rows.flat();
  const n = flat.indexOf(bar);
  const row = rows.findIndex((bars) => bars.includes(bar));
  const onwards = isMirrored() ? -1 : 1;
  const near = (bars: readonly DrawnBar[] | undefined) =>
    bars?.toSorted((a, b) => Math.abs(a.x - bar.x) - Math.abs(b.x - bar.x))[0];
  const ways: Readonly<Record<string, () => DrawnBar | undefined>> = {
    ArrowRight: () => flat[n + onwards],
    ArrowLeft: () => flat[n - onwards],
    ArrowDown: () => near(rows[row + 1]),
    ArrowUp: () => near(rows[row - 1]),
    Home: () => flat[0],
    End: () => flat.at(-1),
  };
  return ways[key]?.();
}

/** One stop of the tab key for all bars; arrows go from bar to bar, Enter and Space press. */
export function createBarKeys(all: () => Rows, onPress: (bar: DrawnBar) => void) {
  const [at, setAt] = createSignal<string>();
  const rows = () => all().filter((bars) => bars.length > 0);
  const isStop = (bar: DrawnBar): boolean => {
    const flat = rows().flat();
    const stop = flat.find((one) => idOf(one) === at()) ?? flat[0];
    return stop !== undefined && idOf(stop) === idOf(bar);
  };
  const onKey = (event: KeyboardEvent & { currentTarget: Element }, bar: DrawnBar): void => {
    const next = nextOf(rows(), bar, event.key);
    if (next) {
      setAt(idOf(next));
      event.currentTarget
        .closest('svg')
        ?.querySelector<SVGElement>('.course-bar[tabindex="0"]')
        ?.focus();
    } else if (event.key === 'Enter' || event.key === ' ') onPress(bar);
    else return;
    event.preventDefault();
  };
  return { isStop, onKey, onFocus: (bar: DrawnBar) => setAt(idOf(bar)) };
}
