import type { Section } from '../../model/message.ts';

/** Rows of the customs for hobs and ovens: why, what may change it, what is asked. */
export const fire = {
  'custom.way.burner-induction.ashkenazic.reason':
    'Induction heats the pot and not itself: it never glows, and by this custom its glass is not purged by water.',
  'custom.way.burner-induction.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.burner-induction.ashkenazic.ask': 'How may an induction hob be purged?',
  'custom.way.burner-induction.ashkenazic.why':
    'It gives no glow. Some pour on the cooled glass where its maker allows it, some cover the zones.',
  'custom.way.burner-induction.ashkenazic.until-then': 'Clean it and keep it out of use.',
  'custom.way.burner-induction.ashkenazic.answer-1':
    'Pour on the cooled glass, where its maker allows it.',
  'custom.way.burner-induction.ashkenazic.answer-2': 'Clean it and cover the zones.',
  'custom.way.burner-induction.ashkenazic.answer-3': 'It stays out of use.',
  'custom.way.burner-induction.sephardic.reason':
    'Induction heats the pot and not itself: it never glows. By this custom glass does not absorb; whether that holds for a hob is asked.',
  'custom.way.burner-induction.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.burner-induction.sephardic.ask':
    'Is the glass of an induction hob rinsed as other glass, or poured over?',
  'custom.way.burner-induction.sephardic.why':
    'By this custom glass is rinsed. No code names glass that stands over a heater, and what was fried on it stood on the fire.',
  'custom.way.burner-induction.sephardic.until-then': 'Clean it and keep it out of use.',
  'custom.way.burner-induction.sephardic.answer-1': 'Clean and rinse it as other glass.',
  'custom.way.burner-induction.sephardic.answer-2':
    'Pour on the cooled glass, where its maker allows it.',
  'custom.way.burner-induction.sephardic.answer-3': 'It stays out of use.',
  'custom.way.burner-mix-up.reason':
    'Food burned on it over fire without liquid. If that food was itself permitted, lighter heat is enough.',
  'custom.way.burner-mix-up.would-change': 'Tell us what was spilled on it.',
  'custom.way.burner-mix-up.ask':
    'Was the food permitted by itself (meat in a dairy place, or dairy in a meat place), or forbidden?',
  'custom.way.burner-mix-up.why':
    'What was absorbed while it was permitted is purged by light heat; what was forbidden needs a glow.',
  'custom.way.burner-mix-up.until-then': 'Bring it to a glow.',
  'custom.way.burner-mix-up.answer-1': 'It was permitted: full heat, 30 minutes, without a glow.',
  'custom.way.burner-mix-up.answer-2': 'It was forbidden, or nobody knows: to a glow.',
  'custom.way.burner-glass.reason':
    'Food burned on the zone over fire, so the ribbon under it is brought to a glow.',
  'custom.way.burner-glass.would-change': 'Your rabbi may name other minutes.',
  'custom.way.burner-gas.sephardic.reason':
    'Food burned on the grate over fire without liquid, so the grate is purged by full flame until it glows where the flame reaches.',
  'custom.way.burner-gas.sephardic.would-change':
    'Your rabbi may name other minutes. The grates are asked about by themselves.',
  'custom.way.burner-gas.sephardic.note':
    'Grates and heads: full flame, glowing where the flame reaches.',
  'custom.way.burner-gas.ashkenazic.reason':
    'Food burned on the grate over fire without liquid, so the grate is purged by full flame until it glows where the flame reaches.',
  'custom.way.burner-gas.ashkenazic.would-change':
    'Your rabbi may name other minutes. The grates are asked about by themselves.',
  'custom.way.burner-gas.ashkenazic.note':
    'Grates and heads: full flame, glowing where the flame reaches. Many lay a metal sheet over the burners to spread the heat: only on a metal range whose maker allows it.',
  'custom.way.burner-plate.reason':
    'Food burned on the plate over fire without liquid, so the plate is brought to a glow. Many plates cut their power before they redden.',
  'custom.way.burner-plate.would-change': 'Tell us whether it reddens in a dark room.',
  'custom.way.burner-plate.ask':
    'A closed plate often does not redden. Is its highest heat enough?',
  'custom.way.burner-plate.why': 'The codes ask for a glow; many of these plates cannot.',
  'custom.way.burner-plate.until-then':
    'Bring it to a glow in a dark room; a plate that does not redden stays out of use.',
  'custom.way.burner-plate.answer-1': 'Highest heat for 30 minutes is enough.',
  'custom.way.burner-plate.answer-2': 'It must redden; one that does not stays out of use.',
  'custom.way.burner-plate.answer-3': 'Highest heat for 15 minutes is enough.',
  'custom.way.burner-fire.reason':
    'Food burned on the element over fire without liquid, so the element is brought to a glow.',
  'custom.way.burner-fire.would-change': 'Your rabbi may name other minutes.',
  'custom.way.burner-fire.ask': 'How many minutes must a coil glow?',
  'custom.way.burner-fire.why': 'The codes ask for a glow and name no minutes; 5 to 30 are used.',
  'custom.way.burner-fire.until-then': 'Let it glow for 30 minutes.',
  'custom.way.burner-fire.answer-1': '30 minutes.',
  'custom.way.burner-fire.answer-2': '15 minutes.',
  'custom.way.burner-fire.answer-3': '5 minutes.',
  'custom.way.oven-pyrolytic.reason':
    'Food burned on its walls without liquid; the full self-clean cycle burns them out. No code names it: an oven is purged by heat until sparks fly.',
  'custom.way.oven-pyrolytic.would-change':
    'Tell us if its manual forbids the cycle. A cycle that was cut short does not count.',
  'custom.way.oven-pyrolytic.note': 'Racks go in only if the manual lets them stay.',
  'custom.way.oven-new.reason':
    'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge). No code names the highest setting of an oven: they ask for heat until sparks fly. In a kitchen that was not kosher light heat does not serve where fire is needed.',
  'custom.way.oven-new.would-change': 'Your rabbi may name other hours.',
  'custom.way.oven-new.ask': 'Is the highest setting enough without a glow, and for how long?',
  'custom.way.oven-new.why':
    'Views run from one hour to two; some want a glow, which such an oven does not reach.',
  'custom.way.oven-new.until-then':
    'Heat it at the highest setting for two hours, and put food in it only covered or on an insert.',
  'custom.way.oven-new.answer-1': 'One hour is enough.',
  'custom.way.oven-new.answer-2': 'Two hours are enough.',
  'custom.way.oven-new.answer-3': 'Two hours, and food only covered or on an insert.',
  'custom.way.oven-new.answer-4':
    'It must glow, which this oven cannot: food only covered or on an insert.',
  'custom.way.oven-plain.reason':
    'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge). No code names the highest setting of an oven: they ask for heat until sparks fly.',
  'custom.way.oven-plain.would-change': 'Your rabbi may name other hours.',
  'custom.way.oven-plain.ask': 'Is the highest setting enough without a glow, and for how long?',
  'custom.way.oven-plain.why':
    'Views run from one hour to two; some want a glow, which such an oven does not reach.',
  'custom.way.oven-plain.until-then':
    'Heat it at the highest setting for two hours, and put food in it only covered or on an insert.',
  'custom.way.oven-plain.answer-1': 'One hour is enough.',
  'custom.way.oven-plain.answer-2': 'Two hours are enough.',
  'custom.way.oven-plain.answer-3': 'Two hours, and food only covered or on an insert.',
  'custom.way.oven-plain.answer-4':
    'It must glow, which this oven cannot: food only covered or on an insert.',
  'custom.way.oven-mix-up.reason':
    'Food burned in it without liquid. If that food was itself permitted, lighter heat is enough.',
  'custom.way.oven-mix-up.would-change': 'Tell us what was spilled in it.',
  'custom.way.oven-mix-up.ask':
    'Was the food permitted by itself (meat in a dairy place, or dairy in a meat place), or forbidden?',
  'custom.way.oven-mix-up.why': 'What was absorbed while it was permitted is purged by light heat.',
  'custom.way.oven-mix-up.until-then':
    'Heat it at the highest setting for two hours, and put food in it only covered or on an insert.',
  'custom.way.oven-mix-up.answer-1': 'It was permitted: one hour at the highest setting.',
  'custom.way.oven-mix-up.answer-2':
    'It was forbidden, or nobody knows: two hours, and food only covered or on an insert.',
} satisfies Section;
