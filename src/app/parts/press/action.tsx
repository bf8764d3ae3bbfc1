import { createSignal, type JSX, onCleanup } from 'solid-js';
import { t } from '../../context/language.ts';
import { noPress, type Touch } from './press.ts';
import { useSwitchedOff } from './switched-off.ts';

const fingersDown = new Set<number>();
let mostFingers = 0;

function watchFingers(event: PointerEvent): void {
  if (event.pointerType !== 'touch') return;
  if (event.type === 'pointerdown') {
    if (fingersDown.size === 0) mostFingers = 0;
    fingersDown.add(event.pointerId);
    mostFingers = Math.max(mostFingers, fingersDown.size);
  } else fingersDown.delete(event.pointerId);
}

if (typeof window !== 'undefined') {
  for (const kind of ['pointerdown', 'pointerup', 'pointercancel'] as const)
    window.addEventListener(kind, watchFingers, { capture: true, passive: true });
}

/** A touch in progress: where and when it began, and how large it has been. */
type Contact = {
  readonly x: number;
  readonly y: number;
  readonly at: number;
  widthPx: number;
  heightPx: number;
};

/** How long a button says why it did not take a touch, ms. */
const HINT_MS = 2500;

/** A button that water cannot press. Keyboard, pedal and mouse work as ever. */
export function Action(props: {
  class?: string;
  /** What it does, by a name no language changes: `data-action`. */
  name?: string;
  disabled?: boolean;
  onPress: () => void;
  label?: string;
  children: JSX.Element;
  /** For a button that stays pressed or not. */
  pressed?: boolean;
}) {
  const off = useSwitchedOff();
  const disabled = () => props.disabled === true || off();
  let down: Contact | undefined;
  let refuseNext = false;
  let settle: ReturnType<typeof setTimeout> | undefined;
  /** Why the last touch was no press, in words on the button for a while. */
  const [hint, setHint] = createSignal<string>();
  let unsay: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => {
    clearTimeout(settle);
    clearTimeout(unsay);
  });

  const onPointerDown = (event: PointerEvent) => {
    down = {
      x: event.clientX,
      y: event.clientY,
      at: event.timeStamp,
      widthPx: event.width,
      heightPx: event.height,
    };
    refuseNext = false;
  };
  // A lifting finger has no size any more: the largest contact counts.
  const onPointerMove = (event: PointerEvent) => {
    if (!down) return;
    down.widthPx = Math.max(down.widthPx, event.width);
    down.heightPx = Math.max(down.heightPx, event.height);
  };
  const onPointerUp = (event: PointerEvent) => {
    if (!down) return;
    const touch: Touch = {
      pointerType: event.pointerType,
      widthPx: down.widthPx,
      heightPx: down.heightPx,
      heldMs: event.timeStamp - down.at,
      touchesAtOnce: Math.max(1, mostFingers),
      movedPx: Math.hypot(event.clientX - down.x, event.clientY - down.y),
    };
    down = undefined;
    const lacks = noPress(touch);
    refuseNext = lacks !== undefined;
    // Who slides pulls the page along, and has pressed nothing.
    setHint(lacks && lacks !== 'slide' && !disabled() ? t(`common.press.${lacks}`) : undefined);
    clearTimeout(unsay);
    unsay = setTimeout(() => setHint(undefined), HINT_MS);
    clearTimeout(settle);
    settle = setTimeout(() => (refuseNext = false), 400);
  };
  const onClick = () => {
    if (refuseNext) {
      refuseNext = false;
      return;
    }
    if (!disabled()) props.onPress();
  };

  return (
    <button
      type="button"
      class={props.class ?? 'button'}
      disabled={disabled()}
      data-action={props.name}
      aria-label={props.label}
      aria-pressed={props.pressed}
      data-hint={hint()}
      onKeyDown={(event) => {
        // A foot that rests on its pedal presses once, not again and again.
        if (event.repeat && event.key === 'Enter') event.preventDefault();
      }}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onClick={onClick}
    >
      {props.children}
    </button>
  );
}
