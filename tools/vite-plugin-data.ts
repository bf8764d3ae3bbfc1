import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/** Where a number of a row is from, field by field; `source`, of the row as a whole, is read by the page. */
export const ORIGINS = [
  'contactSource',
  'thicknessSource',
  'shockSource',
  'areaSource',
  'lossSource',
] as const;

/** Of a source: the catalogue prints it, and a test holds it against these. */
const CITED = ['title', 'place'];

/** `note: true` is data: it says that the catalogue has a note. */
function isRemark(key: string, value: unknown): boolean {
  return (
    key === '$comment' ||
    (key === 'note' && typeof value === 'string') ||
    ORIGINS.some((one) => one === key)
  );
}

/**
 * A table without what is written for its readers alone: every `$comment`,
 * every `note` that is text, and where single numbers are from; of sources
 * also title and place. No code may read them: the page has none.
 */
export function withoutRemarks(json: string, ofSources: boolean): string {
  const bare: unknown = JSON.parse(json, (key, value: unknown) =>
    isRemark(key, value) || (ofSources && CITED.includes(key)) ? undefined : value,
  );
  return JSON.stringify(bare);
}

/** The text of a kitchen file without the white space that is for its readers alone. */
export function withoutLayout(json: string): string {
  return JSON.stringify(JSON.parse(json));
}

/** The tables of shared/ are bundled without their remarks, the demo kitchens in one line each. */
export function dataPlugin(): Plugin {
  return {
    name: 'glowpour-data',
    enforce: 'pre',
    load: {
      filter: { id: /\/demo-kitchens\/[^?]*\.kitchen\.json\?raw$/ },
      handler: (id) => {
        const text = withoutLayout(readFileSync(id.slice(0, -'?raw'.length), 'utf8'));
        return `export default ${JSON.stringify(text)};`;
      },
    },
    transform: {
      filter: { id: /\/shared\/[^?]*\.json$/ },
      handler: (code, id) => withoutRemarks(code, id.includes('/shared/sources/')),
    },
  };
}
