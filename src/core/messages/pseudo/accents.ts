/** Private-use characters round what people wrote; taken out at the end. */
const OPEN = '\uE000';
const CLOSE = '\uE001';
const MARKED = /\uE000[^\uE000\uE001]*\uE001/gu;

const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const ACCENTED = [...'áƀçđéƒĝĥíĵķľɱñóþǫŕšŧúṽŵẋýžÁƁÇĐÉƑĜĤÍĴĶĽṀÑÓÞǪŔŠŦÚṼŴẊÝŽ'];
const ACCENT_OF = new Map([...PLAIN].map((letter, i) => [letter, ACCENTED[i] ?? letter]));
/** Written twice: about two letters of five are vowels, so a text grows by about as much. */
const VOWEL = /[aeiou]/iu;

/** Keeps a text of a person as it is through `accented`. */
export function marked(text: string): string {
  return OPEN + text + CLOSE;
}

export function unmarked(text: string): string {
  return text.replaceAll(OPEN, '').replaceAll(CLOSE, '');
}

function accentedPart(text: string): string {
  return [...text]
    .map((letter) => {
      const accent = ACCENT_OF.get(letter);
      if (accent === undefined) return letter;
      return VOWEL.test(letter) ? accent + accent.toLowerCase() : accent;
    })
    .join('');
}

/**
 * Every plain letter with an accent and every vowel twice, but for what is
 * marked; without the marks. What has its accents already stays as it is.
 */
export function accented(text: string): string {
  let done = 0;
  let result = '';
  for (const match of text.matchAll(MARKED)) {
    result += accentedPart(text.slice(done, match.index)) + match[0];
    done = match.index + match[0].length;
  }
  return unmarked(result + accentedPart(text.slice(done)));
}
