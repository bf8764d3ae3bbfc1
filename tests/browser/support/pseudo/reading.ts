import { expect } from 'vitest';
import type { OnTablet } from '../on-tablet.ts';
import { EnglishLeft } from './english-left.ts';
import type { ReadText } from './reader.ts';

const SIZES = [
  [1280, 800],
  [800, 1280],
] as const;
/** A4 at 96 CSS px an inch. */
const A4 = [794, 1123] as const;

const fileName = (screen: string): string => screen.replaceAll(/\W+/g, '-');

/** Reads screens, dialogs and prints of the app, and keeps what was found on each. */
export class Reading {
  readonly #on: OnTablet;
  readonly #left: EnglishLeft;
  #cutOff = new Map<string, readonly string[]>();

  /** @param known what people wrote themselves */
  constructor(on: OnTablet, known: readonly string[]) {
    this.#on = on;
    this.#left = new EnglishLeft(known);
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
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      const lines = await screen.see<string[]>('reader.cutOff()');
      if (lines.length > 0) this.#cutOff.set(`${name}, ${width}×${height}`, lines);
      await screen.picture(`pseudo/${fileName(name)}-${width}`);
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
    await screen.picture(`pseudo/${fileName(name)}-print`);
    await screen.page.emulateMedia({ media: null });
    await screen.resize(...SIZES[0]);
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
      console.log(`English on "${screen}":\n  ${words.join('\n  ')}`);
    for (const [screen, lines] of Object.entries(cutOff))
      console.log(`Cut off on "${screen}":\n  ${lines.join('\n  ')}`);
    expect.soft(Object.keys(english), 'screens with English words').toEqual([]);
    expect(Object.keys(cutOff), 'screens on which something is cut off').toEqual([]);
  }
}
