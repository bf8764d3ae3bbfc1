/** Stands in a template's text for each value that is filled in. */
export const FILLED = '\u0001';

const WORD = /\p{L}{2,}/u;
/** Style and drawing notations that hold words or letters but are read by the browser alone. */
const NOTATIONS: readonly RegExp[] = [
  // A media query, or a function of CSS or SVG: translate(1 2), var(--ink).
  /^\((?:min|max|prefers|pointer|hover|display|orientation|forced)\b/,
  /^[a-z][\w-]*\(.*\)$/s,
  // The path of a drawing: it begins with a move or a line, and no letter but the closing z stands beside another.
  /^(?!.*[a-y]{2})[mlhvcsqtaz][mlhvcsqtaz\s\d.,-]*$/is,
  // Lengths beside each other.
  /^(?:-?[\d.]+(?:px|em|rem|fr|vh|vw|deg|%)?\s+)*-?[\d.]+(?:px|em|rem|fr|vh|vw|deg|%)?$/,
];

/** Whether text holds a letter: enough where whatever stands there is shown. */
export function holdsLetters(text: string): boolean {
  return /\p{L}/u.test(text);
}

/** Class names beside each other: one of them has two hyphens or a hyphen inside, and none is more than that. */
function isClassList(text: string): boolean {
  const names = text.trim().split(/\s+/u);
  return (
    names.every((name) => /^[a-z][a-z\d]*(?:-{1,2}[a-z\d]+)*(?:--)?$/u.test(name)) &&
    names.some((name) => name.includes('--'))
  );
}

/**
 * Whether a word stands beside something else: another word, a number, a
 * punctuation mark, or a blank at the edge, where more is to follow. Beside a
 * value that is filled in, one letter is enough: it is a unit.
 */
function hasWordBeside(text: string): boolean {
  const pieces = text.split(/\s+/u);
  return pieces.slice(1).some((piece, i) => {
    const both = [pieces[i] ?? '', piece];
    const filled = both.some((one) => one.includes(FILLED));
    return both.some((one) => (filled ? holdsLetters(one) : WORD.test(one)));
  });
}

/**
 * Whether text looks as if it were written for a person: words beside each
 * other, or a word with a capital, alone or before a punctuation mark. Codes,
 * ids, class lists, drawings and styles are not. A single word without a
 * capital cannot be told from a code and is taken for one.
 *
 * @param text where values are filled in, FILLED stands for each.
 */
export function looksLikeProse(text: string): boolean {
  if (/^\p{Lu}\p{Ll}+[.!?:;,…]*$/u.test(text.trim())) return true;
  if (text.includes(`${FILLED}°`)) return true;
  const unfilled = text.replaceAll(FILLED, '0');
  if (NOTATIONS.some((notation) => notation.test(unfilled)) || isClassList(unfilled)) return false;
  return hasWordBeside(text);
}
