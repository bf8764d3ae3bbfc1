/// <reference types="vite/client" />

/** The invented kitchens that come with the app, in the order they are offered; their words are in the catalogue by id. */
export const DEMOS = ['flat-coils', 'mountain-gas', 'flat-glass-230', 'hall'] as const;

// As data: what makes a file readable need not be downloaded.
const FILES = import.meta.glob<unknown>('/demo-kitchens/*.kitchen.json', { import: 'default' });

/** What is called how in another language, by what it is called in the file. */
type Words = Readonly<Record<string, string>>;

const WORDS = import.meta.glob<Words>('/demo-kitchens/words/*.json', { import: 'default' });

/** Fields in which a household writes its own words. */
const OWN_WORDS = ['name', 'saidBy', 'text'];

/**
 * A demo kitchen's file with the names of another language. Remarks, which no
 * screen shows, are left out: they are written in English.
 */
export function inWords(kitchen: unknown, words: Words): string {
  return JSON.stringify(kitchen, (field, value: unknown) => {
    if (field === 'comment') return undefined;
    return typeof value === 'string' && OWN_WORDS.includes(field) ? (words[value] ?? value) : value;
  });
}

/**
 * The text of a demo kitchen's file; undefined for an unknown id.
 * @param language its tag; names stay English in a language that has none of its own
 */
export async function demoText(id: string, language: string): Promise<string | undefined> {
  const [kitchen, words] = await Promise.all([
    FILES[`/demo-kitchens/${id}.kitchen.json`]?.(),
    WORDS[`/demo-kitchens/words/${language}.json`]?.(),
  ]);
  if (kitchen === undefined) return undefined;
  return words === undefined ? JSON.stringify(kitchen) : inWords(kitchen, words);
}
