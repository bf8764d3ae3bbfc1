/** Marks that turn the reading direction of what follows, and other letters that nobody sees. */
const UNSEEN =
  /[\u00AD\u061C\u180E\u200B\u200E\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/gu;

/** Breaks of line and paragraph, control codes, and any run of blanks. */
const BLANKS = /[\p{Cc}\p{Zl}\p{Zp}\s]+/gu;

/**
 * What no text of a file may hold: control codes but tab and line ends,
 * embeddings, overrides and isolates of the reading direction, and blanks of no
 * width. Marks that are only a letter without a shape (left-to-right,
 * right-to-left) stay, and so do joiners: some scripts need them.
 */
const UNWANTED =
  // oxlint-disable-next-line no-control-regex -- these are what is looked for
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u180E\u200B\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/gu;

/** Half of a letter that takes two places: no text, and no file in UTF-8 can hold it. */
const HALVES = /\p{Cs}/gu;

/**
 * Marks over and under one letter beyond the sixth. Hebrew with vowels and
 * cantillation takes up to five; more pile up over the lines around.
 */
const PILED = /(\p{M}{6})\p{M}+/gu;

/** What people wrote without what no text may hold (half letters become U+FFFD); the same text where it holds nothing of it. */
export function seenText(text: string): string {
  return text.replace(UNWANTED, '').replace(HALVES, '\uFFFD').replace(PILED, '$1');
}

/** The text with what nobody sees written as an escape, for a message about it. */
export function escapedUnseen(text: string): string {
  return text
    .replace(UNWANTED, escaped)
    .replace(UNSEEN, escaped)
    .replace(HALVES, escaped)
    .replace(PILED, '$1…');
}

function escaped(letter: string): string {
  return `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`;
}

/**
 * What people wrote, as it may stand in a line of ours: on one line, without
 * control codes or direction marks, so that no name can pass for another line
 * or turn the words around it. Joiners, which some scripts need, stay.
 */
export function plainLine(text: string): string {
  return text
    .replace(UNSEEN, '')
    .replace(BLANKS, ' ')
    .replace(HALVES, '\uFFFD')
    .replace(PILED, '$1')
    .trim();
}
