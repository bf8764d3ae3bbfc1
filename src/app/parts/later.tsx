import { createEffect, createSignal, onCleanup, Show, type JSX } from 'solid-js';

/** What is drawn in one go, ms: a touch in between is answered as if nothing were drawn. */
const SLICE_MS = 10;

const waiting = new Set<() => void>();
let timer: ReturnType<typeof setTimeout> | undefined;

function drawUntil(endMs: number): void {
  // What is drawn may hold more that waits: it is met in the same round.
  for (const draw of waiting) {
    waiting.delete(draw);
    draw();
    if (performance.now() >= endMs) return;
  }
}

function turn(): void {
  drawUntil(performance.now() + SLICE_MS);
  timer = waiting.size > 0 ? setTimeout(turn) : undefined;
}

/** Draws in a slice of its own, after what is looked at. @returns takes it back */
function drawLater(draw: () => void): () => void {
  waiting.add(draw);
  timer ??= setTimeout(turn);
  return () => waiting.delete(draw);
}

let scrolledPx = 0;
window.addEventListener('scroll', () => (scrolledPx = window.scrollY), { passive: true });

/** Whether the page is somewhere else than at its top; asking costs no layout. */
export function hasScrolled(): boolean {
  return scrolledPx > 0;
}

// Paper waits for nothing.
window.addEventListener('beforeprint', () => drawUntil(Infinity));

/**
 * What is out of sight, drawn in slices after what is looked at; at once when it
 * is looked at (`now`) or printed. Made anew for another `of`.
 */
export function Later(props: { of: object; now: boolean; children: JSX.Element }) {
  const [drawn, setDrawn] = createSignal<object>();
  createEffect(() => {
    const { of } = props;
    const draw = () => setDrawn(() => of);
    if (props.now) draw();
    else onCleanup(drawLater(draw));
  });
  return <Show when={props.now || drawn() === props.of}>{props.children}</Show>;
}
