import type { Section } from '../model/message.ts';

/** Words that every place shares. */
export const common = {
  'common.as-written': ({ text }: { text: string }) => text,

  'common.method.glow': 'Heat to glow',
  'common.method.light-heat': 'Heat at the highest setting',
  'common.method.self-clean': 'Full self-clean cycle',
  'common.method.pour': 'Pour boiling water',
  'common.method.immerse': 'Immerse in boiling water',
  'common.method.steam': 'Boil water inside',
  'common.method.boil-over': 'Boil over the rim',
  'common.method.clean': 'Clean thoroughly',
  'common.method.line': 'Clean and line',
  'common.method.cover': 'Cover',
  'common.method.not-purged': 'Not purged: keep it out of use',

  'common.phase.prepare': 'Prepare',
  'common.phase.clean': 'Clean',
  'common.phase.rest': 'Rest',
  'common.phase.purge': 'Purge',
  'common.phase.cool': 'Cool',
  'common.phase.cover': 'Cover',
  'common.phase.mark': 'Mark',

  'common.purpose.new-kitchen': 'a kitchen taken over',
  'common.purpose.passover': 'Passover',
  'common.purpose.mix-up': 'after a mix-up',

  'common.designation.meat': 'Meat',
  'common.designation.dairy': 'Dairy',
  'common.designation.pareve': 'Pareve (neutral)',
  'common.designation.undecided': 'Not decided',
} satisfies Section;
