import type { Area } from './differences.ts';

/** A difference that is meant: a bug of the version before that the version after mends, or one way of writing in place of several. */
export type Known = {
  readonly areas: readonly Area[];
  /** Matches the place of the difference, `scene: place`; absent: anywhere. */
  readonly place?: RegExp;
  /** For texts: matches the line before or the line after. */
  readonly line?: RegExp;
  /** For texts: the lines before and after are the same, read so. */
  readonly alike?: (line: string) => string;
  /** What was wrong before. */
  readonly reason: string;
};

const S_MIN = 60;
const S_H = 3600;

/** Every length of time in a line as whole minutes, however it is written. The numbers themselves are compared in the plans. */
function lengthsInMinutes(line: string): string {
  return line.replaceAll(
    /(?:(\d+) h\b ?)?(?:(\d+) min\b ?)?(?:(\d+) s\b)?/g,
    (found, h?: string, min?: string, s?: string) => {
      if (found === '') return '';
      const lengthS = Number(h ?? 0) * S_H + Number(min ?? 0) * S_MIN + Number(s ?? 0);
      return `${Math.round(lengthS / S_MIN)} minutes${found.endsWith(' ') ? ' ' : ''}`;
    },
  );
}

/** Names of methods as the printed plan alone had them, by those that all share now. */
const METHOD_NAMES: readonly (readonly [RegExp, string])[] = [
  [/: one full self-clean cycle\b/, ': Full self-clean cycle'],
  [/: clean and cover\b/, ': Cover'],
  [
    /: (heat to glow|heat at the highest setting|pour boiling water|immerse in boiling water|boil water inside|boil over the rim|clean thoroughly|clean and line|not purged)\b/,
    '',
  ],
];

function methodsByOneTable(line: string): string {
  return METHOD_NAMES.reduce(
    (text, [name, shared]) =>
      text.replace(name, (_, own?: string) =>
        typeof own === 'string' ? `: ${own.charAt(0).toUpperCase()}${own.slice(1)}` : shared,
      ),
    line,
  );
}

const BOILED_LATER =
  'A kettle was boiled so early that a hand at the usual speed poured its last drop stale; it is boiled later.';

export const KNOWN: readonly Known[] = [
  { areas: ['plan'], place: /: steps\.boil \S+ \d+\.startS$/, reason: BOILED_LATER },
  {
    areas: ['plan text'],
    line: /\d\d:\d\d {2}Boil kettle \d+ of \d+ for [^.]*\. {2}\[/,
    reason: BOILED_LATER,
  },
  {
    areas: ['plan text', 'sentence', 'record'],
    alike: lengthsInMinutes,
    reason:
      'Lengths of time were written in several ways: 120 min here and 2 h there, 5 h 09 min, 90 s.',
  },
  {
    areas: ['plan text'],
    alike: methodsByOneTable,
    reason: 'The printed plan had names of methods of its own.',
  },
];
