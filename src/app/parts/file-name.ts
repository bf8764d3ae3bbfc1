/** "Grandma's flat" → "grandma-s-flat": safe on every file system. */
function fileWord(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}

/**
 * What a saved file is called: by its kitchen, or by a title in the language of the page, and the day,
 * so that it is found again among others; by the app's name where no kitchen is meant.
 * `atWallMs`: ms since 1970-01-01 UTC, told as the tablet's day. `ending`: as ".ics".
 */
export function fileName(of: {
  readonly called?: string | undefined;
  readonly atWallMs: number;
  readonly ending: string;
}): string {
  const at = new Date(of.atWallMs);
  const two = (value: number) => String(value).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${fileWord(of.called ?? '') || 'glowpour'}-${day}${of.ending}`;
}
