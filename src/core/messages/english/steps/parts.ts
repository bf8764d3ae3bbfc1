import type { Section } from '../../model/message.ts';

/** What the parts of fixtures are called. */
export const partNames = {
  'steps.part.racks': 'racks',
  'steps.part.side-rails': 'side rails',
  'steps.part.trays': 'baking trays',
  'steps.part.door-rim': 'rim of the door',
  'steps.part.grates': 'grates',
  'steps.part.caps': 'burner caps',
  'steps.part.drip-bowls': 'drip bowls',
  'steps.part.cooktop-surface': 'surface round the burners',
  'steps.part.knobs': 'knobs',
  'steps.part.hood-filter': 'filter',
  'steps.part.strainer': 'drain strainer',
  'steps.part.aerator': 'aerator of the tap',
  'steps.part.overflow': 'overflow',
  'steps.part.sprayer-hose': 'sprayer and its hose',
  'steps.part.instant-hot-tap': 'hot-water tap',
  'steps.part.disposer': 'splash guard of the disposer',
  'steps.part.plate': 'glass plate',
  'steps.part.plate-ring': 'ring under the plate',
} satisfies Section;
