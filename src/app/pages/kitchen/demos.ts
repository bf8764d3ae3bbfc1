/// <reference types="vite/client" />

/** The invented kitchens that come with the app, in the order they are offered; their words are in the catalogue by id. */
export const DEMOS = ['flat-coils', 'mountain-gas', 'flat-glass-230', 'hall'] as const;

const FILES = import.meta.glob<string>('/demo-kitchens/*.kitchen.json', {
  query: '?raw',
  import: 'default',
});

/** The text of a demo kitchen's file; undefined for an unknown id. */
export async function demoText(id: string): Promise<string | undefined> {
  return FILES[`/demo-kitchens/${id}.kitchen.json`]?.();
}
