/**
 * Fails where the source could make markup or a script out of a text: what a
 * person wrote reaches the page as text nodes and attributes only.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Ways from a text to markup or to a script, and what to do instead. */
const WAYS: readonly (readonly [RegExp, string])[] = [
  [
    /\b(?:innerHTML|outerHTML|insertAdjacentHTML|setHTMLUnsafe|parseHTMLUnsafe|createContextualFragment|DOMParser|srcdoc)\b/u,
    'write elements with text in them',
  ],
  [/\bdocument\s*\.\s*write(?:ln)?\b/u, 'write elements with text in them'],
  [/\bjavascript:/iu, 'give the element a handler'],
  [/\bnew\s+Function\b|(?<![\w.])eval\s*\(/u, 'call a function'],
  [/\bset(?:Timeout|Interval)\s*\(\s*["'`]/u, 'hand over a function'],
];

export type Way = { readonly line: number; readonly found: string; readonly instead: string };

/** Lines of a source text that make markup or scripts out of texts; comments count too. */
export function waysToMarkup(source: string): readonly Way[] {
  return source.split('\n').flatMap((text, at) =>
    WAYS.flatMap(([way, instead]) => {
      const found = way.exec(text)?.[0];
      return found === undefined ? [] : [{ line: at + 1, found, instead }];
    }),
  );
}

if (process.argv[1]?.endsWith('check-markup.ts')) {
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join('src', name));
  const found = [...files, 'index.html'].flatMap((file) =>
    waysToMarkup(readFileSync(file, 'utf8')).map((way) => ({ file, ...way })),
  );
  for (const { file, line, found: what, instead } of found)
    console.error(`${file}:${line} has ${what}; allowed: none. Instead: ${instead}.`);
  console.log(
    found.length === 0
      ? `No text becomes markup in ${files.length} files.`
      : `${found.length} places make markup or scripts out of texts.`,
  );
  process.exit(found.length === 0 ? 0 : 1);
}
