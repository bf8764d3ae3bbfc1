import { translator } from '../../context/language.ts';

/** Time runs the way the language is read: from right to left in Hebrew. */
export function isMirrored(): boolean {
  return translator().direction === 'rtl';
}

/** Turns all of a picture of that width round, px; an SVG transform. */
export function mirrored(widthPx: number): string | undefined {
  return isMirrored() ? `matrix(-1 0 0 1 ${widthPx} 0)` : undefined;
}

/** Turns a word that stands at x back, so that it can be read where all round it is mirrored. */
export function upright(x: number): string | undefined {
  return isMirrored() ? `matrix(-1 0 0 1 ${2 * x} 0)` : undefined;
}
