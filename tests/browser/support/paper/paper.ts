import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Screen } from '../screen.ts';

/** Where what was printed is kept, to be looked at. */
const FOLDER = join('test-artifacts', 'paper');
/** Fine enough to read the smallest letters, dots an inch. */
const DOTS = '60';

/** What a printer would get. */
export type Printed = { readonly path: string; readonly pages: number };

/**
 * Prints what is on the page as the browser's own dialog would, the backgrounds left out.
 * @param part what is printed alone (`data-print`); absent: all of the page
 */
export async function print(screen: Screen, name: string, part?: string): Promise<Printed> {
  const { page } = screen;
  if (part !== undefined)
    await screen.see(`void (document.documentElement.dataset.printOnly = ${JSON.stringify(part)})`);
  const file = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  if (part !== undefined)
    await screen.see(`void delete document.documentElement.dataset.printOnly`);
  mkdirSync(FOLDER, { recursive: true });
  const path = join(FOLDER, `${name}.pdf`);
  writeFileSync(path, file);
  // By the page objects of the file (ISO 32000-1, 7.7.3.3).
  return { path, pages: file.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/gu)?.length ?? 0 };
}

/** Without spaces: readers of narrow letters differ about where a word ends. */
export function unspaced(text: string): string {
  return text.replaceAll(/\s/g, '');
}

/** What stands on a printed file as another program reads it, page by page, in the order of drawing, without spaces. */
export function lettersOn({ path }: Printed): readonly string[] {
  const options = ['-raw', '-enc', 'UTF-8', path, '-'];
  const text = execFileSync('pdftotext', options, { encoding: 'utf8' });
  return text.split('\f').slice(0, -1).map(unspaced);
}

/** A picture of each page beside the file, to be looked at. */
export function drawPages({ path }: Printed): void {
  execFileSync('pdftoppm', ['-r', DOTS, '-png', path, path.replace(/\.pdf$/, '')]);
}
