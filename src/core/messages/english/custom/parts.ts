import type { Section } from '../../model/message.ts';

/** Parts of fixtures: how each is treated, what is asked. */
export const parts = {
  'custom.part.racks-in-cycle.reason':
    'They stay in during the cycle, as the manual allows, and are purged with the oven.',
  'custom.part.racks-new.reason':
    'Food burns on them without liquid, so they need fire or new ones.',
  'custom.part.racks-new.ask': 'Are the oven racks replaced, or purged by fire?',
  'custom.part.racks-new.why':
    'What dough is baked on needs a glow; the heat of an oven does not make them glow.',
  'custom.part.racks-new.until-then': 'Buy new racks; the old ones stay out.',
  'custom.part.racks-new.answer-1': 'New racks.',
  'custom.part.racks-new.answer-2':
    'They are brought to a glow by somebody who has the fire for it.',
  'custom.part.racks.reason': 'Food burns on them without liquid, so they need fire or new ones.',
  'custom.part.racks.ask': 'Are the oven racks replaced, or purged by fire?',
  'custom.part.racks.why':
    'What dough is baked on needs a glow. Some are content with the oven’s highest heat.',
  'custom.part.racks.until-then': 'Buy new racks; the old ones stay out.',
  'custom.part.racks.answer-1': 'New racks.',
  'custom.part.racks.answer-2': 'They are brought to a glow by somebody who has the fire for it.',
  'custom.part.racks.answer-3': 'An hour in the oven at its highest is enough.',
  'custom.part.side-rails.reason': 'They are treated as the racks.',
  'custom.part.trays.reason':
    'What is baked on needs a glow, which a thin sheet does not bear: buy new ones.',
  'custom.part.door-rim.reason': 'No food lies on it: it is cleaned to the bare metal.',
  'custom.part.grates-new.reason':
    'Food burned on them without liquid: full flame until they glow where the flame reaches.',
  'custom.part.grates-new.ask': 'How are the grates of the gas burners purged?',
  'custom.part.grates-new.why':
    'They may glow on the flame, go through an oven’s self-clean cycle where the maker allows it, or be replaced. In a kitchen that was not kosher light heat does not serve.',
  'custom.part.grates-new.until-then': 'Full flame until they glow where the flame reaches.',
  'custom.part.grates-new.answer-1': 'To a glow on the flame.',
  'custom.part.grates-new.answer-2': 'In the self-clean cycle of the oven.',
  'custom.part.grates-new.answer-3': 'New grates.',
  'custom.part.grates.reason':
    'Food burned on them without liquid: full flame until they glow where the flame reaches.',
  'custom.part.grates.ask': 'How are the grates of the gas burners purged?',
  'custom.part.grates.why':
    'They may glow on the flame, go through an oven’s self-clean cycle where the maker allows it, or be replaced. The Mishnah Berurah is content with light heat.',
  'custom.part.grates.until-then': 'Full flame until they glow where the flame reaches.',
  'custom.part.grates.answer-1': 'To a glow on the flame.',
  'custom.part.grates.answer-2': 'In the self-clean cycle of the oven.',
  'custom.part.grates.answer-3': 'New grates.',
  'custom.part.grates.answer-4': 'Light heat: full flame for 30 minutes.',
  'custom.part.grates.answer-5': 'Light heat: full flame for 15 minutes.',
  'custom.part.caps.reason': 'They stay in their places and take the full flame with their burner.',
  'custom.part.drip-bowls.reason': 'Food burns in them, and new ones cost less than the work.',
  'custom.part.surface-glass-rinsed.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.part.surface-glass.reason':
    'The glass between the zones stays cooler than the zones and is not purged.',
  'custom.part.surface-glass.ask': 'How is the glass between the zones to be treated?',
  'custom.part.surface-glass.why':
    'Some cover it while the hob is cold, some keep everything off it.',
  'custom.part.surface-glass.until-then':
    'Put no pot, spoon or food on the glass between the zones.',
  'custom.part.surface-glass.answer-1': 'Keep everything off it.',
  'custom.part.surface-glass.answer-2': 'Cover it while the hob is cold.',
  'custom.part.surface-sephardic.reason':
    'Spills fry on the surface round the burners: clean it and put nothing down on it.',
  'custom.part.surface.reason':
    'A stove top is judged as clay: clean it and put nothing down on it. A metal sheet between is allowed where its maker lets it lie there.',
  'custom.part.knobs.reason': 'No food lies on them: off, soaked and dried.',
  'custom.part.hood-filter.reason':
    'Grease and steam hang in its mesh, which is judged as a sieve: buy a new one.',
  'custom.part.sieve.reason': 'A sieve is not purged: buy a new one.',
  'custom.part.not-reached.reason':
    'Its fixture is not purged by heat or water, so it is only cleaned.',
  'custom.part.overflow.reason': 'The stream is led into its mouth with the pour of the sink.',
  'custom.part.sprayer-hose.reason':
    'Only clean water ran inside it; a narrow hose is not purged by water.',
  'custom.part.sprayer-hose.ask': 'Is the outside of the sprayer enough, or is it replaced?',
  'custom.part.sprayer-hose.why':
    'Only clean water ran inside. What has a narrow neck or tubes is not purged.',
  'custom.part.sprayer-hose.until-then': 'Keep it out of use, or fit a new one.',
  'custom.part.sprayer-hose.answer-1': 'Pour over its head and hose from outside.',
  'custom.part.sprayer-hose.answer-2': 'A new sprayer and hose.',
  'custom.part.instant-hot-tap.reason':
    'Only clean water ran inside it; narrow tubes are not purged by water.',
  'custom.part.instant-hot-tap.ask':
    'May the spout of the hot-water tap be poured over, or is it kept out of use?',
  'custom.part.instant-hot-tap.why':
    'Only clean water ran inside. Steam of food reached the spout from outside.',
  'custom.part.instant-hot-tap.until-then': 'Keep it out of use.',
  'custom.part.instant-hot-tap.answer-1': 'Pour over its spout from outside.',
  'custom.part.instant-hot-tap.answer-2': 'A new one.',
  'custom.part.instant-hot-tap.answer-3': 'It stays out of use.',
  'custom.part.disposer.reason':
    'Its splash guard holds food between its leaves: buy a new guard. Nothing is eaten out of the disposer itself.',
  'custom.part.plate-rinsed.reason': 'Glass does not absorb: rinsing is enough by this custom.',
  'custom.part.plate.reason': 'By this custom glass is not purged: buy a new plate.',
  'custom.part.plate-ring.reason': 'No food lies on it: wash it.',
} satisfies Section;
