import type { Wanted } from './in-page.ts';

/** Each kind of stage of the flat with coils, in the order in which a run comes to it. */
export const STAGES: readonly (readonly [name: string, wanted: Wanted])[] = [
  ['gate', { action: 'answer-gate' }],
  ['clean', { action: 'tick' }],
  ['rest', { isQuiet: true }],
  ['boil', { stage: 'boil', action: 'confirm' }],
  ['pour', { stage: 'pour', action: 'confirm' }],
  ['cold', { kind: 'pour', stage: 'cold', action: 'confirm' }],
  // Once it is started the page shows what has its next press sooner.
  ['oven', { kind: 'self-clean', stage: 'start', action: 'confirm' }],
  ['warm-up', { kind: 'glow', stage: 'warm-up' }],
  ['glow', { kind: 'glow', stage: 'hold' }],
];
