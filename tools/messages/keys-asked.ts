/** Keys that a source text asks for: whole ones, and patterns of those made of parts. */
type Asked = { readonly whole: ReadonlySet<string>; readonly patterns: readonly RegExp[] };

/** A key in quotes that is not the name of an entry of the catalogue itself; after `?` it is one of two. */
const WHOLE = /(?<either>\?\s*)?(['"])(?<key>[a-z][\w-]*(?:\.[\w-]+)+)\2(?<named>\s*:)?/g;
/** A key made of parts; it begins with a section and a dot, written out. */
const MADE = /`([a-z][a-z-]*\.[^`\s]*\$\{[^`]*)`/g;

function patternOf(template: string): RegExp {
  const parts = template.split(/\$\{[^}]*\}/);
  return new RegExp(
    `^${parts.map((part) => part.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)).join('.*')}$`,
  );
}

/** @param source text of a file */
export function keysAsked(source: string): Asked {
  return {
    whole: new Set(
      [...source.matchAll(WHOLE)].flatMap(({ groups = {} }) =>
        groups.key === undefined || (groups.named && !groups.either) ? [] : [groups.key],
      ),
    ),
    patterns: [...source.matchAll(MADE)].map(([, template]) => patternOf(template ?? '')),
  };
}

/** Those of the keys that no source asks for, in order. */
export function unasked(keys: readonly string[], asked: readonly Asked[]): readonly string[] {
  const whole = new Set(asked.flatMap((one) => [...one.whole]));
  const patterns = asked.flatMap((one) => one.patterns);
  return keys
    .filter((key) => !whole.has(key) && !patterns.some((pattern) => pattern.test(key)))
    .toSorted();
}
