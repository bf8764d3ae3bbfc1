import { fieldPath } from '../model/problem.ts';

/** Where reading the text had to stop, in words for someone who does not program. */
export type JsonFault = {
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly allowed: string;
  readonly advice: string;
};

/** A text read: its value, the line of every path in it, and names written twice. */
export type JsonText = {
  readonly value: unknown;
  readonly lineOf: ReadonlyMap<string, number>;
  readonly repeated: readonly string[];
};

/** Deepest nesting: a kitchen needs seven levels. */
const DEEPEST = 40;

const ESCAPES: Readonly<Record<string, string>> = {
  '"': '"',
  '\\': '\\',
  '/': '/',
  b: '\b',
  f: '\f',
  n: '\n',
  r: '\r',
  t: '\t',
};

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORDS = new Map<string, unknown>([
  ['true', true],
  ['false', false],
  ['null', null],
]);

class Stop extends Error {
  readonly fault: JsonFault;
  constructor(fault: JsonFault) {
    super(fault.found);
    this.fault = fault;
  }
}

/**
 * Reads JSON (RFC 8259). The engine's own reader names faults differently in
 * every browser, keeps the last of two equal names silently and knows no
 * lines; a household that edits the file by hand needs all three.
 */
class Scanner {
  readonly lineOf = new Map<string, number>();
  readonly repeated: string[] = [];
  readonly #text: string;
  #at = 0;
  #line = 1;
  #lineStart = 0;

  constructor(text: string) {
    this.#text = text;
  }

  whole(): unknown {
    const value = this.#value('', 0);
    this.#space();
    if (this.#at < this.#text.length) {
      this.#stop(
        'the end of the file',
        'One kitchen a file: take out what stands after the last }.',
      );
    }
    return value;
  }

  #stop(allowed: string, advice: string): never {
    const found = this.#foundHere();
    const column = this.#at - this.#lineStart + 1;
    throw new Stop({ line: this.#line, column, found, allowed, advice });
  }

  #foundHere(): string {
    if (this.#at >= this.#text.length) return 'the end of the file';
    const word = /"[^"\n\r]{0,30}"|[^\s,:[\]{}"]{1,20}|[\s\S]/uy;
    word.lastIndex = this.#at;
    const found = word.exec(this.#text)?.[0] ?? '';
    return found.length > 1 && found.startsWith('"') ? found : JSON.stringify(found);
  }

  /** Skips white space and counts lines, whether they end in LF, CR or both. */
  #space(): void {
    for (;;) {
      const letter = this.#text[this.#at];
      if (letter !== ' ' && letter !== '\t' && letter !== '\n' && letter !== '\r') return;
      this.#at += 1;
      const endsLine = letter === '\n' || (letter === '\r' && this.#text[this.#at] !== '\n');
      if (endsLine) {
        this.#line += 1;
        this.#lineStart = this.#at;
      }
    }
  }

  #value(path: string, depth: number): unknown {
    this.#space();
    this.lineOf.set(path, this.#line);
    const letter = this.#text[this.#at];
    if (depth > DEEPEST) {
      this.#stop(
        `at most ${DEEPEST} brackets inside each other`,
        'Close brackets that were left open.',
      );
    }
    if (letter === '{') return this.#object(path, depth);
    if (letter === '[') return this.#list(path, depth);
    if (letter === '"') return this.#string();
    return this.#numberOrWord();
  }

  #numberOrWord(): unknown {
    NUMBER.lastIndex = this.#at;
    const digits = NUMBER.exec(this.#text)?.[0];
    if (digits !== undefined) {
      const next = this.#text[this.#at + digits.length] ?? '';
      if (/[\w.+-]/.test(next)) {
        this.#stop('a plain number', 'Write it like 12 or 0.5, without a unit or a leading zero.');
      }
      this.#at += digits.length;
      return Number(digits);
    }
    for (const [word, value] of WORDS) {
      if (
        this.#text.startsWith(word, this.#at) &&
        !/\w/.test(this.#text[this.#at + word.length] ?? '')
      ) {
        this.#at += word.length;
        return value;
      }
    }
    return this.#stop('a value: "text", a number, true, false, [ or {', this.#valueAdvice());
  }

  #valueAdvice(): string {
    const letter = this.#text[this.#at];
    if (letter === undefined) return 'The file breaks off: close every { and [ that was opened.';
    if (letter === ']' || letter === '}' || letter === ',') {
      return 'Take out the comma before it, or write the missing value.';
    }
    if (letter === '/' || letter === '#') return 'Notes go into a "comment" field.';
    if (/['‘’“”„«]/u.test(letter)) return 'Use straight double quotes " round text.';
    if (letter === '.') return 'Write a zero before the point: 0.5.';
    if (letter === '+') return 'Leave the plus sign out.';
    return 'Put text between double quotes ".';
  }

  #list(path: string, depth: number): unknown[] {
    const values: unknown[] = [];
    this.#at += 1;
    this.#space();
    if (this.#text[this.#at] === ']') {
      this.#at += 1;
      return values;
    }
    for (;;) {
      values.push(this.#value(`${path}[${values.length}]`, depth + 1));
      if (this.#closes(']', 'list')) return values;
    }
  }

  #object(path: string, depth: number): Record<string, unknown> {
    // No prototype: a field called __proto__ is then a field like any other.
    const object: Record<string, unknown> = Object.create(null) as Record<string, unknown>;
    this.#at += 1;
    this.#space();
    if (this.#text[this.#at] === '}') {
      this.#at += 1;
      return object;
    }
    for (;;) {
      const name = this.#name();
      const here = fieldPath(path, name);
      if (name in object) this.repeated.push(here);
      object[name] = this.#value(here, depth + 1);
      if (this.#closes('}', 'object')) return object;
    }
  }

  #name(): string {
    this.#space();
    if (this.#text[this.#at] !== '"') {
      this.#stop('the name of a field in quotes', this.#nameAdvice());
    }
    const name = this.#string();
    this.#space();
    if (this.#text[this.#at] !== ':') {
      this.#stop('a colon :', `Put a colon between "${name.slice(0, 40)}" and its value.`);
    }
    this.#at += 1;
    return name;
  }

  #nameAdvice(): string {
    const letter = this.#text[this.#at];
    if (letter === undefined) return 'The file breaks off: close every { and [ that was opened.';
    if (letter === '}') return 'Take out the comma before it.';
    if (/\d/.test(letter)) return 'Write decimals with a point, not a comma: 1.5.';
    if (letter === '/' || letter === '#') return 'Notes go into a "comment" field.';
    return 'Put the name of the field between double quotes ".';
  }

  /** After a value: a comma goes on, the bracket ends. */
  #closes(bracket: ']' | '}', what: string): boolean {
    this.#space();
    const letter = this.#text[this.#at];
    if (letter === bracket || letter === ',') {
      this.#at += 1;
      return letter === bracket;
    }
    const advice =
      letter === undefined
        ? `The file breaks off: close the ${what} with ${bracket}.`
        : `Put a comma before it, or close the ${what} with ${bracket}.`;
    return this.#stop(`a comma or ${bracket}`, advice);
  }

  #string(): string {
    let text = '';
    this.#at += 1;
    for (;;) {
      const letter = this.#text[this.#at];
      if (letter === undefined || letter < ' ') {
        this.#stop('the closing quote "', 'Text ends on the line it began: close it with a ".');
      }
      this.#at += 1;
      if (letter === '"') return text;
      text += letter === '\\' ? this.#escape() : letter;
    }
  }

  #escape(): string {
    const letter = this.#text[this.#at] ?? '';
    const code = /^[\da-fA-F]{4}$/.exec(this.#text.slice(this.#at + 1, this.#at + 5))?.[0];
    if (letter === 'u' && code !== undefined) {
      this.#at += 5;
      return String.fromCharCode(Number.parseInt(code, 16));
    }
    const plain = ESCAPES[letter];
    if (plain === undefined) {
      this.#stop('\\" \\\\ \\/ \\n \\t or \\u with four digits', 'Write a backslash as \\\\.');
    }
    this.#at += 1;
    return plain;
  }
}

/** Reads a JSON text; a fault comes back as a value, never thrown. */
export function readJsonText(text: string): JsonText | { readonly fault: JsonFault } {
  const scanner = new Scanner(text);
  try {
    const value = scanner.whole();
    return { value, lineOf: scanner.lineOf, repeated: scanner.repeated };
  } catch (stop) {
    if (stop instanceof Stop) return { fault: stop.fault };
    throw stop;
  }
}
