import { createEffect, createMemo, createSignal, on, onCleanup, onMount } from 'solid-js';
import { middleOf, type Point, type Polygon } from '../../../../../core/geometry/index.ts';
import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import { frameOfView, outOfView, viewOfAll, zoomed } from './view.ts';

/** What part of the plan is looked at, and how large a centimetre is on the screen. */
export function createViewport(
  kitchen: () => Kitchen,
  plan: () => SVGSVGElement | undefined,
  roomy: () => boolean,
) {
  const [view, setView] = createSignal(viewOfAll(kitchen()));
  const onScreen = onScreenSize(plan);
  const frame = createMemo(() => frameOfView(view()));
  let underFinger = false;
  let panFrom = view();
  let heldOf: Kitchen | undefined;
  const seeAll = () => setView(viewOfAll(kitchen(), roomy() ? onScreen() : undefined));
  const follow = () => {
    if (!underFinger && outOfView(view(), kitchen())) seeAll();
  };
  // What was added or typed out of sight is brought into sight; not under a finger.
  createEffect(on(kitchen, follow));
  createEffect(on(roomy, seeAll, { defer: true }));
  createEffect(on(onScreen, () => roomy() && seeAll(), { defer: true }));
  return {
    frame,
    pxPerCm: () =>
      Math.min(onScreen().widthPx / frame().widthCm, onScreen().heightPx / frame().heightCm),
    seeAll,
    /** While a finger holds something the view keeps still; afterwards it follows what was moved. */
    hold(held: boolean): void {
      if (held) heldOf = kitchen();
      underFinger = held;
      if (!held && heldOf !== kitchen()) follow();
    },
    /** Pulls the paper along; `byM` is the way since the finger began. */
    pan(byM: Point, begun: boolean): void {
      if (begun) panFrom = view();
      setView({ ...panFrom, xM: panFrom.xM - byM[0], yM: panFrom.yM - byM[1] });
    },
    zoom(factor: number, chosen: Polygon | undefined): void {
      setView(zoomed(view(), factor, chosen && middleOf(chosen)));
    },
  };
}

/** How large a drawing is on the screen, px; followed as it changes. */
export function onScreenSize(drawing: () => SVGSVGElement | undefined) {
  const [size, setSize] = createSignal({ widthPx: 600, heightPx: 400 });
  onMount(() => {
    const svg = drawing();
    if (!svg) return;
    const watch = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const { width, height } = entry.contentRect;
      setSize({ widthPx: Math.max(1, width), heightPx: Math.max(1, height) });
    });
    watch.observe(svg);
    onCleanup(() => watch.disconnect());
  });
  return size;
}
