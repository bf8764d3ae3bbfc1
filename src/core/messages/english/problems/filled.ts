import type { Section } from '../../model/message.ts';

/** Why a field that the file left out was filled as it was. */
export const filled = {
  'problems.filled.not-told': 'not told',
  'problems.filled.plan-asks': 'not told: the plan asks',
  'problems.filled.designation': 'nobody has said where it is to belong',
  'problems.filled.holes': 'no cut-out was drawn',
  'problems.filled.back-edges': 'no edge stands at a wall',
  'problems.filled.backsplash': 'no backsplash was told',
  'problems.filled.tap': 'one handle without a sprayer is usual',
  'problems.filled.drainboard': 'no drainboard was told',
  'problems.filled.racks': 'racks come out unless the maker allows them in',
  'problems.filled.shelves': 'no shelf was measured',
  'problems.filled.own-rows': 'no row was changed',
  'problems.filled.people': 'one person works unless more are told',
  'problems.filled.rest-days': 'nothing is planned on Sabbaths and festivals unless told',
  'problems.filled.overrides': 'no answer of a rabbi was entered',
  'problems.filled.ceiling': 'a usual ceiling height',
  'problems.filled.hood': 'no hood was told: it counts as none until it is',
  'problems.filled.kitchen-mains': 'the mains voltage of the kitchen',
  'problems.filled.country-mains': 'the mains voltage of the country',
  'problems.filled.vessel-power':
    'usual for an electric kettle in this country; 0 for what stands on the stove',
  'problems.filled.utensil-count': 'one unless more are told',
  'problems.filled.vessel-count': 'one unless more are told',
  'problems.filled.altitude': 'sea level: water boils lower in the mountains',
  'problems.filled.tap-cold': 'usual for mains water and for kettle tests',
  'problems.filled.circuits': 'no circuit was told',
  'problems.filled.vessels': 'no kettle was told',
} satisfies Section;
