/** What a key does to the fixture that has the focus. */
export type KeyAction =
  | { readonly do: 'move'; readonly dxM: number; readonly dyM: number }
  | { readonly do: 'resize'; readonly widerM: number; readonly deeperM: number }
  | { readonly do: 'turn' }
  | { readonly do: 'remove' }
  | { readonly do: 'open' }
  | { readonly do: 'leave' };

type KeyPress = {
  readonly key: string;
  readonly shift: boolean;
  readonly ctrl: boolean;
};

/** One press of an arrow, m: what a finger snaps to. Closer is typed. */
const KEY_STEP_M = 0.05;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

export function actionOfKey(press: KeyPress): KeyAction | undefined {
  if (press.ctrl) return undefined;
  const arrow = ARROWS[press.key];
  if (arrow) {
    const [x, y] = [arrow[0] * KEY_STEP_M, arrow[1] * KEY_STEP_M];
    return press.shift ? { do: 'resize', widerM: x, deeperM: y } : { do: 'move', dxM: x, dyM: y };
  }
  // On a Hebrew keyboard the key of T writes an alef.
  if (['t', 'T', 'א'].includes(press.key)) return { do: 'turn' };
  if (press.key === 'Delete' || press.key === 'Backspace') return { do: 'remove' };
  if (press.key === 'Enter' || press.key === ' ') return { do: 'open' };
  if (press.key === 'Escape') return { do: 'leave' };
  return undefined;
}

/** Ctrl+Z, Shift+Ctrl+Z and Ctrl+Y anywhere but in a field, which has its own. */
export function historyKey(press: KeyPress): 'undo' | 'redo' | undefined {
  if (!press.ctrl) return undefined;
  const key = press.key.toLowerCase();
  if (key === 'z') return press.shift ? 'redo' : 'undo';
  return key === 'y' ? 'redo' : undefined;
}
