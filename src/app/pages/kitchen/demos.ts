/// <reference types="vite/client" />

/** The invented kitchens that come with the app, in the order they are offered; their words are in the catalogue by id. */
export const DEMOS = ['flat-coils', 'mountain-gas', 'flat-glass-230', 'hall'] as const;

// As data: what makes a file readable need not be downloaded.
const FILES = import.meta.glob<unknown>('/demo-kitchens/*.kitchen.json', { import: 'default' });

/** The text of a demo kitchen's file; undefined for an unknown id. */
export async function demoText(id: string): Promise<string | undefined> {
  const kitchen = await FILES[`/demo-kitchens/${id}.kitchen.json`]?.();
  return kitchen === undefined ? undefined : JSON.stringify(kitchen);
}
