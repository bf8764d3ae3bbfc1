/** A line holds at most this many octets of UTF-8 without its break (RFC 5545, 3.1). */
export const LINE_OCTETS = 75;

const BREAK = '\r\n';

function octets(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

/**
 * Folds one content line: a break and a space wherever the next letter would
 * not fit, the space counted, and never inside a letter. Ends with a break.
 */
export function fold(line: string): string {
  let folded = '';
  let used = 0;
  for (const letter of line) {
    const size = octets(letter);
    if (used + size > LINE_OCTETS) {
      folded += `${BREAK} `;
      used = 1;
    }
    folded += letter;
    used += size;
  }
  return folded + BREAK;
}

/**
 * A value of type TEXT (RFC 5545, 3.3.11): backslash, semicolon and comma
 * escaped, line ends as `\n`. Control characters, which the format forbids,
 * are left out; half a surrogate pair becomes the replacement character.
 */
export function escapeText(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD')
    .replace(FORBIDDEN, '')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');
}

/** CONTROL of RFC 5545, 3.1, without the line feed, which is escaped; a tab is allowed. */
// oxlint-disable-next-line no-control-regex
const FORBIDDEN = /[\u0000-\u0008\u000B-\u001F\u007F]/g;
