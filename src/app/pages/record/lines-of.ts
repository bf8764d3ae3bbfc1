type Line = { readonly text: string; readonly depth: number; readonly heading: boolean };

/** Lines of a record: two spaces a step in; a line that stands at the margin after a gap heads what follows. */
export function linesOf(text: string): readonly Line[] {
  const raw = text.split('\n');
  return raw.flatMap((line, i): Line[] => {
    if (line.trim() === '') return [];
    const depth = Math.floor((line.length - line.trimStart().length) / 2);
    const after = raw[i + 1] ?? '';
    const heading = depth === 0 && (i === 0 || raw[i - 1]?.trim() === '') && after.startsWith('  ');
    return [{ text: line.trim(), depth, heading }];
  });
}
