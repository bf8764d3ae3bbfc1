import { onCleanup, onMount } from 'solid-js';
import { listenKeys, type Intent } from '../../../../host/keys/index.ts';
import { sheetIsOpen } from '../../../parts/sheets/open-sheets.ts';
import type { MainKey } from '../step/main-bar.tsx';

type RunKeys = {
  readonly pedalActs: () => boolean;
  /** Keys mean nothing on a rest day, nor while something else takes the page. */
  readonly heeds: () => boolean;
  readonly mainKey: () => MainKey;
  readonly onMove: (by: 1 | -1) => void;
  readonly onStop: () => void;
  readonly onRepeat: () => void;
};

/**
 * Keys and pedals of the run. A gate is never answered from here, neither by a
 * pedal nor by a key of the whole page: the answer is pressed on its own
 * button, by finger, or by Tab and Enter.
 */
export function useRunKeys(keys: RunKeys): void {
  const act = (): void => {
    const main = keys.mainKey();
    if (main === 'gate') document.querySelector<HTMLElement>('.gate-ask')?.focus();
    else main?.press();
  };
  const does: Readonly<Record<Intent, () => void>> = {
    main: act,
    pedal: act,
    forward: () => keys.onMove(1),
    back: () => keys.onMove(-1),
    dismiss: keys.onStop,
    stop: keys.onStop,
    repeat: keys.onRepeat,
  };
  onMount(() =>
    onCleanup(
      listenKeys({
        onIntent: (intent) => does[intent](),
        pedalActs: keys.pedalActs,
        // A sheet takes all keys but the one that makes safe.
        heeds: (intent) => (intent === 'stop' || !sheetIsOpen()) && keys.heeds(),
      }),
    ),
  );
}
