import { message, type Message } from '../../messages/index.ts';

/** Share of a name's letters that may be wrong for it still to be meant. */
const WRONG_SHARE = 0.4;

/** Shortest beginning that points at one name: `alt` at `altitudeM`. */
const SHORTEST_BEGINNING = 3;

/** Edits between two words: a letter added, dropped, changed, or two neighbours swapped. */
export function editDistance(a: string, b: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(
        (last[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (last[j - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** Letters and digits only, small: `Back-Edges` and `backedges` are one word. */
function bare(word: string): string {
  return word.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '');
}

/** The name most likely meant by `word`, or none when nothing is near. */
export function nearest(word: string, names: readonly string[]): string | undefined {
  const asked = bare(word.slice(0, 80));
  if (asked === '') return undefined;
  let best: string | undefined;
  let bestCost = Infinity;
  for (const name of names) {
    const known = bare(name);
    const begins =
      Math.min(asked.length, known.length) >= SHORTEST_BEGINNING &&
      (known.startsWith(asked) || asked.startsWith(known));
    const cost = begins ? 1 : editDistance(asked, known);
    const near = begins || cost <= Math.max(1, Math.floor(known.length * WRONG_SHARE));
    if (near && cost < bestCost) {
      best = name;
      bestCost = cost;
    }
  }
  return best;
}

/** `Did you mean "granite"?` or, when nothing is near, the fallback. */
export function didYouMean(word: unknown, names: readonly string[], otherwise: Message): Message {
  const name = typeof word === 'string' ? nearest(word, names) : undefined;
  return name === undefined ? otherwise : message('problems.did-you-mean', { name });
}
