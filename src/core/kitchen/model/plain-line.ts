/** Marks that turn the reading direction of what follows, and other letters that nobody sees. */
const UNSEEN =
  /[\u00AD\u061C\u180E\u200B\u200E\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/gu;

/** Breaks of line and paragraph, control codes, and any run of blanks. */
const BLANKS = /[\p{Cc}\p{Zl}\p{Zp}\s]+/gu;

/**
 * What people wrote, as it may stand in a line of ours: on one line, without
 * control codes or direction marks, so that no name can pass for another line
 * or turn the words around it. Joiners, which some scripts need, stay.
 */
export function plainLine(text: string): string {
  return text.replace(UNSEEN, '').replace(BLANKS, ' ').trim();
}
