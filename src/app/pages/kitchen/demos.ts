/// <reference types="vite/client" />
export type DemoChoice = { readonly id: string; readonly name: string; readonly tells: string };

/** The invented kitchens that come with the app, in the order they are offered. */
export const DEMOS: readonly DemoChoice[] = [
  {
    id: 'flat-coils',
    name: 'Flat with coils',
    tells: '120 V, electric coils, one steel sink, self-clean oven',
  },
  {
    id: 'mountain-gas',
    name: 'Mountain house',
    tells: 'Gas range at 2100 m, two sinks, stone counters, Passover',
  },
  {
    id: 'flat-glass-230',
    name: 'Flat with a glass hob',
    tells: '230 V, glass-ceramic hob, two kettles, wall oven',
  },
  {
    id: 'hall',
    name: 'Hall kitchen',
    tells: 'Eight burners, two ovens, three-bowl sink, an urn, a crew of three',
  },
];

const FILES = import.meta.glob<string>('/demo-kitchens/*.kitchen.json', {
  query: '?raw',
  import: 'default',
});

/** The text of a demo kitchen's file; undefined for an unknown id. */
export async function demoText(id: string): Promise<string | undefined> {
  return FILES[`/demo-kitchens/${id}.kitchen.json`]?.();
}
