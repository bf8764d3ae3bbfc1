import { createSignal } from 'solid-js';

const [openSheets, setOpenSheets] = createSignal(0);

/** Does a sheet lie over the page? Then keys mean nothing to what is under it. */
export function sheetIsOpen(): boolean {
  return openSheets() > 0;
}

/** A sheet came (1) or went (−1). */
export function countSheets(by: 1 | -1): void {
  setOpenSheets((n) => n + by);
}
