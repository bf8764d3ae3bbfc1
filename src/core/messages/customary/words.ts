/** US customary units in which sizes are told. */
export type CustomaryUnit =
  'ft' | 'in' | 'sq-ft' | 'sq-in' | 'cu-ft' | 'qt' | 'gal' | 'fl-oz' | 'cfm' | '°F' | 'lb';

/** How a language calls them, and writes a number with a part of one. */
export type CustomaryWords = {
  readonly measure: (figure: string, unit: CustomaryUnit) => string;
  /** "3 1/2", "1/2": the whole is absent where there is none. */
  readonly fraction: (whole: string | undefined, part: string) => string;
};

type Names = Readonly<Record<CustomaryUnit, string>>;

const ENGLISH: Names = {
  ft: 'ft',
  in: 'in',
  'sq-ft': 'sq ft',
  'sq-in': 'sq in',
  'cu-ft': 'cu ft',
  qt: 'qt',
  gal: 'gal',
  'fl-oz': 'fl oz',
  cfm: 'cfm',
  '°F': '°F',
  lb: 'lb',
};

const FRENCH: Names = {
  ...ENGLISH,
  ft: 'pi',
  in: 'po',
  'sq-ft': 'pi²',
  'sq-in': 'po²',
  'cu-ft': 'pi³',
  cfm: 'pi³/min',
};

const SPANISH: Names = {
  ...ENGLISH,
  ft: 'pies',
  in: 'pulg',
  'sq-ft': 'pies²',
  'sq-in': 'pulg²',
  'cu-ft': 'pies³',
  cfm: 'pies³/min',
};

const HEBREW: Names = {
  ft: 'רגל',
  in: 'אינץ׳',
  'sq-ft': 'רגל רבועה',
  'sq-in': 'אינץ׳ רבוע',
  'cu-ft': 'רגל מעוקבת',
  qt: 'קוורט',
  gal: 'גלון',
  'fl-oz': 'אונקיות נוזל',
  cfm: 'רגל מעוקבת/דקה',
  '°F': '°F',
  lb: 'ליברות',
};

/** A space at which no line ends. */
const TIED = '\u00a0';

function words(names: Names, gap = ' '): CustomaryWords {
  return {
    measure: (figure, unit) => `${figure}${gap}${names[unit]}`.trim(),
    fraction: (whole, part) => (whole === undefined ? part : `${whole}${TIED}${part}`),
  };
}

/** By language; any other is written as English is. */
export const CUSTOMARY_WORDS: Readonly<Partial<Record<string, CustomaryWords>>> = {
  en: words(ENGLISH, TIED),
  fr: words(FRENCH, TIED),
  es: {
    ...words(SPANISH),
    measure: (figure, unit) =>
      `${figure}${TIED}${unit === 'ft' && figure === '1' ? 'pie' : SPANISH[unit]}`.trim(),
  },
  he: {
    // The mark after the letter keeps what follows it in the line from right to left; alone, the sign is held together.
    measure: (figure, unit) =>
      unit !== '°F'
        ? `${figure}${TIED}${HEBREW[unit]}`.trim()
        : figure === ''
          ? '\u2066°F\u2069'
          : `${figure}°F\u200f`,
    // Isolated: else the whole and its part would change places in a line from right to left.
    fraction: (whole, part) => (whole === undefined ? part : `\u2066${whole}${TIED}${part}\u2069`),
  },
};
