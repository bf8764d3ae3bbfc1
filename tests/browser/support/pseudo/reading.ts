import { expect } from 'vitest';
import type { OnTablet } from '../on-tablet.ts';
import type { ReadText } from './reader.ts';

/** Looks through what was read for words that are not of the language. */
export type Finder = {
  /** `also`: what else is right on that screen. */
  look(screen: string, texts: readonly ReadText[], also?: readonly string[]): void;
  readonly screens: number;
  /** What was found since it was taken last, by screen. */
  take(): Readonly<Record<string, readonly string[]>>;
};

const SIZES = [
  [1280, 800],
  [800, 1280],
] as const;
/** A4 at 96 CSS px an inch. */
const A4 = [794, 1123] as const;

/** Lines that a person reads; of a calendar what its program shows (escapes of RFC 5545, 3.3.11). */
function readableLines(text: string): readonly string[] {
  if (!text.startsWith('BEGIN:VCALENDAR')) return text.split('\n').filter((line) => line !== '');
  return text
    .replaceAll(/\r\n[ \t]/g, '')
    .split('\r\n')
    .filter((line) => /^(SUMMARY|DESCRIPTION|LOCATION|X-WR-CALNAME)\b/.test(line))
    .flatMap((line) => line.slice(line.indexOf(':') + 1).split(/\\n/i))
    .map((line) => line.replaceAll(/\\([\\,;])/g, '$1'));
}

const fileName = (screen: string): string => screen.replaceAll(/\W+/g, '-');

/** Reads screens, dialogs and prints of the app, and keeps what was found on each. */
export class Reading {
  readonly #on: OnTablet;
  readonly #left: Finder;
  readonly #folder: string;
  readonly #sizes: readonly (readonly [widthPx: number, heightPx: number])[];
  #cutOff = new Map<string, readonly string[]>();

  /**
   * @param folder of the pictures
   * @param looksFor room too: two sizes are looked at, each with a picture
   */
  constructor(on: OnTablet, left: Finder, folder: string, looksFor: 'words' | 'room' = 'room') {
    this.#on = on;
    this.#left = left;
    this.#folder = folder;
    this.#sizes = looksFor === 'room' ? SIZES : [];
  }

  /** How many screens and prints were read. */
  get screens(): number {
    return this.#left.screens;
  }

  texts(): Promise<readonly ReadText[]> {
    return this.#on.screen.see('reader.texts()');
  }

  /** Reads a screen, and looks in both orientations what is cut off; `also`: what else is right there. */
  async read(name: string, also: readonly string[] = []): Promise<void> {
    const { screen } = this.#on;
    this.#left.look(name, await this.texts(), also);
    for (const [width, height] of this.#sizes) {
      await screen.resize(width, height);
      const lines = await screen.see<string[]>('reader.cutOff()');
      if (lines.length > 0) this.#cutOff.set(`${name}, ${width}×${height}`, lines);
      await screen.picture(`${this.#folder}/${fileName(name)}-${width}`);
    }
    await screen.resize(...SIZES[0]);
  }

  /** Reads only the words, on a screen that was looked at before. */
  async readAgain(name: string): Promise<void> {
    this.#left.look(name, await this.texts());
  }

  /** What the page puts on paper. */
  async readPrint(name: string): Promise<void> {
    const { screen } = this.#on;
    await screen.page.emulateMedia({ media: 'print' });
    await screen.resize(...A4);
    this.#left.look(`${name}, printed`, await this.texts());
    await screen.picture(`${this.#folder}/${fileName(name)}-print`);
    await screen.page.emulateMedia({ media: null });
    await screen.resize(...SIZES[0]);
  }

  /** What a press saves to a file, or sends. */
  async readSaved(name: string, press: () => Promise<void>): Promise<void> {
    const { screen } = this.#on;
    const before = await screen.see<number>('reader.saved.length');
    await press();
    const text = await screen.waitFor<string>(`reader.saved[${before}]`, `${name} is saved`);
    const lines = readableLines(text);
    this.#left.look(
      name,
      lines.map((line) => ({ as: 'line', text: line, in: name })),
    );
  }

  /** Opens a dialog, reads it, and shuts it. */
  async readDialog(name: string, open: () => Promise<void>): Promise<void> {
    await open();
    await this.#on.screen.dialog().first().waitFor();
    await this.read(name);
    await this.#on.screen.closeDialog();
  }

  /** Asserts that nothing was found since this was asked last; prints what was. */
  nothingFound(): void {
    const english = this.#left.take();
    const cutOff = Object.fromEntries(this.#cutOff);
    this.#cutOff = new Map();
    for (const [screen, words] of Object.entries(english))
      console.log(`Foreign on "${screen}":\n  ${words.join('\n  ')}`);
    for (const [screen, lines] of Object.entries(cutOff))
      console.log(`Cut off on "${screen}":\n  ${lines.join('\n  ')}`);
    expect.soft(Object.keys(english), 'screens with words of another language').toEqual([]);
    expect(Object.keys(cutOff), 'screens on which something is cut off').toEqual([]);
  }
}
