function pairs(word: string): ReadonlySet<string> {
  const letters = `^${word.toLowerCase().replaceAll(/[^a-z0-9]/g, '')}$`;
  return new Set(Array.from({ length: letters.length - 1 }, (_, i) => letters.slice(i, i + 2)));
}

/** Share of letter pairs that two words have in common (Dice), 0 to 1. */
function alike(a: string, b: string): number {
  const [first, second] = [pairs(a), pairs(b)];
  const common = [...first].filter((pair) => second.has(pair)).length;
  return (2 * common) / (first.size + second.size);
}

/** Below this two names have nothing to do with each other. */
const LEAST_ALIKE = 0.3;

/** The known name that is most like the word, if any is. */
export function nearestName(word: string, names: readonly string[]): string | undefined {
  const [best] = names.toSorted((a, b) => alike(word, b) - alike(word, a));
  return best !== undefined && alike(word, best) >= LEAST_ALIKE ? best : undefined;
}
