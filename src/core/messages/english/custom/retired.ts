import type { Section } from '../../model/message.ts';
import { appliances } from './appliances.ts';
import { fire } from './fire.ts';
import { rules } from './rules.ts';
import { sinks } from './sinks.ts';
import { tops } from './tops.ts';
import { UNCHANGED } from './unchanged.ts';

const TODAY = { ...sinks, ...tops, ...fire, ...appliances, ...rules };

type Unchanged = { readonly [K in (typeof UNCHANGED)[number] as `custom.row.${K}`]: string };

const GLASS_AS_CLAY = 'By this custom glass is judged as earthenware, which is not purged.';
const ZONE_GLOWS = 'Food burned on the zone over fire, so the zone is heated until it glows.';
const NO_CYCLE =
  'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge), so it is heated at its highest setting.';

/**
 * Sentences that no plan is made with any more and that journals of older runs
 * still name: a record is told in the words it was written in. A test holds
 * them to the letter: when a row of today is said otherwise, its sentence of
 * before moves to the list below.
 */
export const retired = {
  ...(Object.fromEntries(
    UNCHANGED.map((row) => [`custom.row.${row}`, TODAY[`custom.way.${row}`]]),
  ) as Unchanged),
  'custom.row.sink-clay.ashkenazic.reason':
    'Porcelain, glazed clay and enamel are judged as earthenware, which is not purged: clean it, line it, and use a basin on a rack.',
  'custom.row.sink-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.sink-wood.reason': 'Wood is purged by the way it was used.',
  'custom.row.top-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.top-tile.reason': 'The joints between tiles hold food that no pour reaches.',
  'custom.row.counter-wood.ashkenazic.reason':
    'Smooth wood is purged by the way it was used; sand out every cut first, and many cover after it.',
  'custom.row.top-raw.reason': 'Raw wood drinks water and holds food.',
  'custom.row.table-pour.reason':
    'Hot food stood and spilled on it: smooth wood, stone or metal is purged by pouring.',
  'custom.row.table-other.reason':
    'This material is not purged with confidence, and a table is easily covered.',
  'custom.row.burner-induction.reason':
    'Induction heats the pot and not itself: it never glows, and its glass took in what boiled over.',
  'custom.row.burner-induction.ask': 'How may an induction hob be purged?',
  'custom.row.burner-induction.until-then': 'Clean it and keep it out of use.',
  'custom.row.burner-glass.ashkenazic.reason': ZONE_GLOWS,
  'custom.row.burner-glass.ashkenazic.ask': 'How is the glass between the zones to be treated?',
  'custom.row.burner-glass.ashkenazic.until-then':
    'Let no pot, spoon or food touch the glass between the zones.',
  'custom.row.burner-fire.reason':
    'Food burned on the element over fire without liquid, so the element is heated until it glows.',
  'custom.row.oven-pyrolytic.reason':
    'Food burned on its walls without liquid; the full self-clean cycle burns them out.',
  'custom.row.oven-plain.ashkenazic.reason': NO_CYCLE,
  'custom.row.oven-plain.ashkenazic.ask':
    'How long at the highest setting, and does your custom accept it without a glow?',
  'custom.row.oven-plain.ashkenazic.until-then':
    'Heat it at the highest setting for two hours, and put food in it only covered or on an insert.',
  'custom.row.microwave.reason':
    'It absorbed by steam, so steam of boiling water inside purges it.',
  'custom.row.microwave.until-then': 'Steam it for 20 minutes and keep the glass plate out of use.',
  'custom.row.sink-wood-open.reason':
    'Cracks and open grain hold what neither sanding nor water reaches, so it is not poured but used with a basin.',
  'custom.row.wood-open.reason':
    'Cracks and open grain hold what neither sanding nor water reaches, so it is not poured but covered.',
  'custom.row.sink-broken.reason':
    'A crack or pore holds what no scrubbing reaches, so a basin is used after it.',
  'custom.row.top-worn.reason':
    'Old, scratched or porous tops hold food: pour, then cover with thick plastic.',
  'custom.row.sink-clay.sephardic.reason':
    'Glazed clay is judged as earthenware by many, which is not purged; enamel is asked about.',
  'custom.row.sink-clay.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.counter-wood.sephardic.reason':
    'Smooth wood is purged by the way it was used; sand out every cut first.',
  'custom.row.burner-glass.sephardic.reason': ZONE_GLOWS,
  'custom.row.oven-plain.sephardic.reason': NO_CYCLE,
  'custom.row.oven-plain.sephardic.ask': 'How long at the highest setting: one hour or two?',
  'custom.row.oven-plain.sephardic.until-then': 'Heat it at the highest setting for two hours.',
  'sources.oc-451-3-8': 'Shulchan Aruch, Orach Chaim 451:3-8',
} satisfies Section;
