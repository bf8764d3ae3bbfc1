import { createContext, useContext } from 'solid-js';

/** Is what stands here only shown? Then its buttons are switched off. */
export const SwitchedOff = createContext<() => boolean>(() => false);

/**
 * Each button asks for itself. A fieldset round a whole page would say it in
 * one word, but Chromium 156 then no longer lays out what is in it when an
 * alarm begins to flash.
 */
export function useSwitchedOff(): () => boolean {
  return useContext(SwitchedOff);
}
