import type { Message } from '../../messages/index.ts';

/** A line of the printed plan, not yet a sentence; `depth` is how far it is set in. */
export type Line = { readonly depth: number; readonly text: Message };

/** Lines under a heading that is underlined. */
export type PlanSection = { readonly heading: Message; readonly lines: readonly Line[] };

export function line(text: Message, depth = 0): Line {
  return { depth, text };
}

export function lines(texts: readonly Message[], depth = 0): readonly Line[] {
  return texts.map((text) => line(text, depth));
}
