import type { Wanted } from './in-page.ts';

/** Each kind of stage of the flat with coils, in the order in which a run comes to it. */
export const STAGES: readonly (readonly [name: string, wanted: Wanted])[] = [
  ['gate', { action: 'answer-gate' }],
  ['clean', { action: 'tick' }],
  ['rest', { isQuiet: true }],
  ['boil', { stage: 'boil', action: 'confirm' }],
  ['pour', { stage: 'pour', action: 'confirm' }],
  ['cold', { kind: 'pour', stage: 'cold', action: 'confirm' }],
  ['oven', { kind: 'self-clean', stage: 'cycle' }],
  ['warm-up', { kind: 'glow', stage: 'warm-up' }],
  ['glow', { kind: 'glow', stage: 'hold' }],
];
