import type { MethodId, Purpose } from '../../kitchen/index.ts';
import type { Phase } from '../model/types.ts';

export const METHOD_WORDS: Readonly<Record<MethodId, string>> = {
  glow: 'heat to glow',
  'light-heat': 'heat at the highest setting',
  'self-clean': 'one full self-clean cycle',
  pour: 'pour boiling water',
  immerse: 'immerse in boiling water',
  steam: 'boil water inside',
  'boil-over': 'boil over the rim',
  clean: 'clean thoroughly',
  line: 'clean and line',
  cover: 'clean and cover',
  'not-purged': 'not purged: keep it out of use',
};

export const PHASE_WORDS: Readonly<Record<Phase, string>> = {
  prepare: 'prepare',
  clean: 'clean',
  rest: 'rest',
  purge: 'purge',
  cool: 'cool',
  cover: 'cover',
  mark: 'mark',
};

export const PURPOSE_WORDS: Readonly<Record<Purpose, string>> = {
  'new-kitchen': 'a kitchen taken over',
  passover: 'Passover',
  'mix-up': 'after a mix-up',
};

/** Stands wherever a method does. */
export const CUSTOMS_DIFFER =
  'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.';
