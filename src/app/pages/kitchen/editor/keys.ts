/** What a key does to the fixture that has the focus. */
export type KeyAction =
  | { readonly do: 'move'; readonly dxM: number; readonly dyM: number }
  | { readonly do: 'remove' }
  | { readonly do: 'open' }
  | { readonly do: 'leave' };

type KeyPress = {
  readonly key: string;
  readonly shift: boolean;
  readonly ctrl: boolean;
};

/** One press of an arrow, m; with Shift ten times as far. */
const KEY_STEP_M = 0.01;
const KEY_STRIDE_M = 0.1;

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
    const stepM = press.shift ? KEY_STRIDE_M : KEY_STEP_M;
    return { do: 'move', dxM: arrow[0] * stepM, dyM: arrow[1] * stepM };
  }
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
