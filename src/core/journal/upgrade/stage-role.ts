import type { StageRole } from '../../plan/index.ts';

/** What a stage is in its step, by the id that version 1 gave it. Ids stay: facts name them. */
const ROLE_OF_ID: Readonly<Record<string, StageRole>> = {
  do: 'do',
  clean: 'clean',
  rest: 'rest',
  fill: 'fill',
  boil: 'boil',
  over: 'overflow',
  pour: 'pour',
  immerse: 'immerse',
  cold: 'cold',
  light: 'light',
  start: 'start',
  'warm-up': 'warm-up',
  'heat-up': 'warm-up',
  hold: 'hold',
  steam: 'hold',
  cycle: 'cycle',
  off: 'off',
  cool: 'cool',
  open: 'open',
  cover: 'cover',
  mark: 'mark',
};

/** @returns `do` for an id that version 1 gave to no stage */
export function stageRoleOf(stageId: string): StageRole {
  return Object.hasOwn(ROLE_OF_ID, stageId) ? (ROLE_OF_ID[stageId] ?? 'do') : 'do';
}
