import type { Seen, Wanted } from './in-page.ts';

/** Each kind of stage of the flat with coils. */
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

export const isAsWanted = (seen: Seen, wanted: Wanted): boolean =>
  Object.entries(wanted).every(([name, value]) => seen[name as keyof Seen] === value);
