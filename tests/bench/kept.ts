import { readFileSync, writeFileSync } from 'node:fs';

/** A ratio may grow by this before it is called slower. */
export const MOST_GROWTH = 1.5;

type Kept = Readonly<Record<string, number>>;

export function readKept(file: string): Kept {
  return JSON.parse(readFileSync(file, 'utf8')) as Kept;
}

export function keep(file: string, measured: Kept): void {
  writeFileSync(file, `${JSON.stringify(measured, null, 2)}\n`);
}

/** A ratio beside the one that was kept; what was never kept is slower, too. */
export function growth(
  name: string,
  ratio: number,
  kept: Kept,
): { readonly isSlower: boolean; readonly told: string } {
  const before = kept[name];
  const grown = before === undefined ? Number.NaN : ratio / before;
  const isSlower = !(grown <= MOST_GROWTH);
  return {
    isSlower,
    told: `${name}: ${ratio.toFixed(1)} times, ${grown.toFixed(2)} of what was kept (${before ?? 'nothing'})${isSlower ? ' SLOWER' : ''}`,
  };
}
