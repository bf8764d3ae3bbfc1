import { message, type Message } from '../../messages/index.ts';
import { fieldPath, quoted } from '../model/problem.ts';
import { MOST_PROBLEMS } from './codec.ts';

/** Where reading the text had to stop, told to someone who does not program. */
export type JsonFault = {
  readonly line: number;
  readonly column: number;
  readonly found: Message;
  readonly allowed: Message;
  readonly advice: Message;
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
    super(`line ${fault.line}, column ${fault.column}`);
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
      this.#stop(message('problems.json.end'), message('problems.json.one-kitchen'));
    }
    return value;
  }

  #stop(allowed: Message, advice: Message): never {
    const found = this.#foundHere();
    const column = this.#at - this.#lineStart + 1;
    throw new Stop({ line: this.#line, column, found, allowed, advice });
  }

  #foundHere(): Message {
    if (this.#at >= this.#text.length) return message('problems.json.end');
    const word = /"[^"\n\r]{0,30}"|[^\s,:[\]{}"]{1,20}|[\s\S]/uy;
    word.lastIndex = this.#at;
    const found = word.exec(this.#text)?.[0] ?? '';
    return found.length > 1 && found.startsWith('"')
      ? message('problems.value', { json: found })
      : quoted(found);
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
        message('problems.json.deepest', { most: DEEPEST }),
        message('problems.json.close-brackets'),
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
        this.#stop(message('problems.json.number'), message('problems.json.plain-number'));
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
    return this.#stop(message('problems.json.value'), this.#valueAdvice());
  }

  #valueAdvice(): Message {
    const letter = this.#text[this.#at];
    if (letter === undefined) return message('problems.json.breaks-off');
    if (letter === ']' || letter === '}' || letter === ',') {
      return message('problems.json.comma-or-value');
    }
    if (letter === '/' || letter === '#') return message('problems.json.notes');
    if (/['‘’“”„«]/u.test(letter)) return message('problems.json.straight-quotes');
    if (letter === '.') return message('problems.json.zero');
    if (letter === '+') return message('problems.json.plus');
    return message('problems.json.quote-text');
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
      if (this.#closes(']')) return values;
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
      if (name in object && this.repeated.length < MOST_PROBLEMS) this.repeated.push(here);
      object[name] = this.#value(here, depth + 1);
      if (this.#closes('}')) return object;
    }
  }

  #name(): string {
    this.#space();
    if (this.#text[this.#at] !== '"') {
      this.#stop(message('problems.json.name'), this.#nameAdvice());
    }
    const name = this.#string();
    this.#space();
    if (this.#text[this.#at] !== ':') {
      this.#stop(
        message('problems.json.colon'),
        message('problems.json.put-colon', { name: name.slice(0, 40) }),
      );
    }
    this.#at += 1;
    return name;
  }

  #nameAdvice(): Message {
    const letter = this.#text[this.#at];
    if (letter === undefined) return message('problems.json.breaks-off');
    if (letter === '}') return message('problems.json.comma');
    if (/\d/.test(letter)) return message('problems.json.decimals');
    if (letter === '/' || letter === '#') return message('problems.json.notes');
    return message('problems.json.quote-name');
  }

  /** After a value: a comma goes on, the bracket ends. */
  #closes(bracket: ']' | '}'): boolean {
    this.#space();
    const letter = this.#text[this.#at];
    if (letter === bracket || letter === ',') {
      this.#at += 1;
      return letter === bracket;
    }
    const isList = bracket === ']';
    if (letter === undefined) {
      return this.#stop(
        message('problems.json.comma-or-bracket', { bracket }),
        isList ? message('problems.json.close-list') : message('problems.json.close-object'),
      );
    }
    return this.#stop(
      message('problems.json.comma-or-bracket', { bracket }),
      isList ? message('problems.json.next-item') : message('problems.json.next-field'),
    );
  }

  #string(): string {
    let text = '';
    this.#at += 1;
    for (;;) {
      const letter = this.#text[this.#at];
      if (letter === undefined || letter < ' ') {
        this.#stop(message('problems.json.closing-quote'), message('problems.json.close-text'));
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
      this.#stop(message('problems.json.escape'), message('problems.json.backslash'));
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
