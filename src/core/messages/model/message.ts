import type { Band } from '../../units/index.ts';

/** What a sentence is made of, as it travels in plans, facts and files: plain data, units in the names. */
export type Param =
  | string
  | number
  | boolean
  | Band
  | Message
  | readonly string[]
  | readonly number[]
  | readonly Message[];

export type Params = Readonly<Record<string, Param>>;

/**
 * A sentence not yet made: a key of the catalogue and what fills it. Nothing
 * reads a sentence back; whoever needs the number reads it from here, or from
 * the field of the plan that holds it.
 */
export type Message = { readonly key: string; readonly params: Params };

/** An entry of a catalogue: fixed text, or a sentence made of its parameters. */
export type Entry = string | ((params: never, format: Formatter) => string);

/** Part of a catalogue that is loaded at once. Every key begins with the name of its section. */
export type Section = Readonly<Record<string, Entry>>;

/** Which way a length of time is brought to whole units: a report never claims a minute too many. */
export type Rounding = 'nearest' | 'down' | 'up';

/** Forms of a word by number, after the plural rules of the language; `other` always stands. */
export type PluralForms = Readonly<Partial<Record<Intl.LDMLPluralRule, string>>> & {
  readonly other: string;
};

/** What sizes are told in: the metric unit in which sentences hold them, whatever the household reads them in. K: a difference of temperatures. */
export type Unit = 'm' | 'cm' | 'm²' | 'cm²' | 'm³' | 'L' | 'L/s' | '°C' | 'K' | 'kg';

/** How a length off a tape is written in metres; 2 decimals unless told. */
type TapeForm = {
  readonly decimals?: number;
  /** With at most so many decimals. */
  readonly isShort?: boolean;
  /** What a shop is asked for: in US units as shops tell it, and never less than it is. */
  readonly isBought?: boolean;
  /** Its metres come with the length after it: "0.61" in "0.61 × 2.40 m", but "24 in" in "24 in × 7 ft 10 1/2 in". */
  readonly isFirst?: boolean;
};

/**
 * How sizes are written in the units of a household: "1.7 L", "1.8 qt". Every
 * value is given in the metric unit that is named beside it. A limit is rounded
 * to its safe side: most of it `down`, least of it `up`.
 */
export type SizeFormatter = {
  /** "1.7 L": with exactly that many decimals where the household reads that unit, else to about as fine a step. */
  measure(value: number, unit: Unit, decimals?: number, toward?: Rounding): string;
  /** The shortest way to write it, with at most that many decimals. */
  shortMeasure(value: number, unit: Unit, mostDecimals?: number, toward?: Rounding): string;
  /** "3–4 L", or "3 L" where both ends look alike. */
  measureRange(low: number, high: number, unit: Unit, decimals?: number): string;
  /** The first of two figures whose unit comes with the second: "45" in "45 to 71 °C". */
  first(value: number, unit: Unit, decimals?: number, toward?: Rounding): string;
  /** A length that is cut or measured with a tape: "0.61 m", "24 in", "8 ft 3 1/2 in". */
  tape(metres: number, how?: TapeForm): string;
  /** How far something is filled, by a mark that may be in litres whatever the household reads: "1.6 L", "1 3/4 qt (1.7 L)"; by its own mark alone: "1 3/4 qt". Never more than told. */
  fill(litres: number, byOneMark?: boolean): string;
  /** The number that stands before `unitName`. */
  figure(value: number, unit: Unit): number;
  /** What one number of `figure` counts: "°C", "°F". */
  unitName(unit: Unit): string;
};

/** How a language writes numbers, times and lists. What it returns is ready to be shown. */
export type Formatter = SizeFormatter & {
  readonly locale: string;
  /** A sentence inside a sentence. */
  say(message: Message): string;
  /** With exactly that many decimals; none unless told. */
  number(value: number, decimals?: number, toward?: Rounding): string;
  /** The shortest way to write a number, with at most that many decimals. */
  shortNumber(value: number, mostDecimals?: number, toward?: Rounding): string;
  /** "3–4", or "3" where both ends look alike. */
  range(low: number, high: number, decimals?: number): string;
  /** A length of time in seconds: "45 s", "2 min 25 s", "12 min", "1 h 35 min", "24 h". */
  duration(lengthS: number, rounding?: Rounding): string;
  /** An estimate in round figures: "about 40 s", "about 9 min", "about 1 h 35 min". Seconds. */
  about(lengthS: number): string;
  /** "18:05" on the wall of a zone (IANA name). ms since 1970-01-01 UTC. */
  clock(wallMs: number, zone: string): string;
  /** "Sunday 29 March" on the wall of a zone. */
  day(wallMs: number, zone: string): string;
  /** "Sunday 29 March 2026" on the wall of a zone. */
  date(wallMs: number, zone: string): string;
  /** "Sun 29 Mar" on the wall of a zone. */
  shortDay(wallMs: number, zone: string): string;
  /** "Sunday" on the wall of a zone. */
  weekday(wallMs: number, zone: string): string;
  /** "Sun" on the wall of a zone. */
  shortWeekday(wallMs: number, zone: string): string;
  /** "Sunday 29 March 18:05". */
  moment(wallMs: number, zone: string): string;
  /** "Sun 29 Mar, 18:05". */
  dateTime(wallMs: number, zone: string): string;
  /** "Sun 18:05". */
  shortMoment(wallMs: number, zone: string): string;
  /** The form of a word that goes with a number. */
  plural(count: number, forms: PluralForms): string;
  /** "a, b and c". */
  list(parts: readonly string[]): string;
  /** The first letter as a sentence begins. */
  capital(text: string): string;
};
