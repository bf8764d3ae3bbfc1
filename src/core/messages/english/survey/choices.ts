import type { Section } from '../../model/message.ts';

/**
 * What a household chooses among, and how to know each by eye, fingernail or
 * magnet; most names are in the common section. Common practice, no published source.
 */
export const choices = {
  'survey.material.stainless-steel': 'Grey metal through and through; rings when knocked.',
  'survey.material.cast-iron': 'Black, heavy, rough; a magnet holds fast.',
  'survey.material.enamelled-steel': 'Glassy coat on metal; a magnet holds, chips show dark metal.',
  'survey.material.porcelain': 'White, glassy and thick; no magnet holds.',
  'survey.material.ceramic': 'Fired clay with a glaze; a chip shows a dull inside.',
  'survey.material.glass': 'Clear or tinted, cold to the hand, a green edge.',
  'survey.material.glass-ceramic': 'Dark flat glass of a hob.',
  'survey.material.granite': 'Speckled stone, no two spots alike; a key leaves no scratch.',
  'survey.material.marble': 'Veined stone; dulls where lemon juice stood.',
  'survey.material.soapstone': 'Grey and silky; a fingernail nearly marks it.',
  'survey.material.concrete': 'Cast grey with fine pores; drinks water unless sealed.',
  'survey.material.quartz-composite': 'Even grains in resin; the underside is smooth and the same.',
  'survey.material.acrylic': 'Warm to the hand, no seams, sands like hard plastic.',
  'survey.material.laminate': 'Thin printed sheet on board; a brown line at the edge.',
  'survey.material.wood': 'Varnished or oiled; a water drop stands on it.',
  'survey.material.raw-wood': 'A water drop sinks in and leaves a dark spot.',
  'survey.material.tile': 'Glazed squares with lines of grout between.',
  'survey.material.plastic': 'Light, warm to the hand, gives under a nail.',
  'survey.material.silicone': 'Soft and rubbery.',
  'survey.material.unknown': 'The plan takes the stricter way and writes the question down.',

  'survey.condition.smooth': 'A fingernail drawn across it never catches.',
  'survey.condition.scratched': 'The nail catches in lines you can see.',
  'survey.condition.cracked': 'A line goes in deep, or a chip is out.',
  'survey.condition.porous': 'A drop of water left a minute darkens it.',
  'survey.condition.unknown': 'Look before the plan: it may change the way.',

  'survey.burner-type.electric-coil': 'A bare spiral that turns red.',
  'survey.burner-type.solid-plate': 'A closed iron disc; does not turn red.',
  'survey.burner-type.radiant-glass': 'Glows red through dark glass.',
  'survey.burner-type.induction': 'Never glows; heats only a pan that holds a magnet.',
  'survey.burner-type.gas-sealed': 'Flame over a closed top.',
  'survey.burner-type.gas-open': 'You can look down past the burner.',
  'survey.burner-type.gas-wok': 'One large ring, often two flames in each other.',
  'survey.burner-type.commercial-open': 'Heavy cast heads of a hall range.',
  'survey.burner-type.portable-plate': 'Stands on the counter with its own plug.',

  'survey.cleaning.pyrolytic.name': 'Self-clean with heat',
  'survey.cleaning.pyrolytic.tell': (_: unknown, f) =>
    `Locks its door and heats for hours; the manual says “pyrolytic” or “self-clean”, about ${f.measure(450, '°C')} and more.`,
  'survey.cleaning.steam.name': 'Steam clean',
  'survey.cleaning.steam.tell':
    'Water on the floor, half an hour, no lock. Steam clean is not a purge.',
  'survey.cleaning.catalytic.name': 'Catalytic lining',
  'survey.cleaning.catalytic.tell':
    'Rough grey walls that “clean themselves” while baking. That is not a purge either.',
  'survey.cleaning.none.name': 'None',
  'survey.cleaning.none.tell': 'Cleaned by hand only.',

  'survey.hood.none.name': 'No hood',
  'survey.hood.none.tell': 'Nothing draws over the stove.',
  'survey.hood.recirculating.name': 'Recirculating',
  'survey.hood.recirculating.tell':
    'Blows back into the room through a filter. It removes no gas and no heat.',
  'survey.hood.vented.name': 'To the outside',
  'survey.hood.vented.tell': 'A duct leads out; on a cold day you feel it at the wall.',

  'survey.vessel-kind.electric-kettle': 'Electric kettle',
  'survey.vessel-kind.stove-kettle': 'Stove kettle',
  'survey.vessel-kind.urn': 'Urn',
  'survey.vessel-kind.pot': 'Pot',

  'survey.body.steel': 'Steel',
  'survey.body.plastic': 'Plastic',
  'survey.body.glass': 'Glass',
  'survey.body.double-wall': 'Double wall',
  'survey.body.enamel': 'Enamel',

  'survey.surface.metal': 'Metal',
  'survey.surface.enamel': 'Enamel',
  'survey.surface.glass-ceramic': 'Glass',

  'survey.purpose.new-kitchen': 'It was not kosher, or nobody knows.',
  'survey.purpose.passover': 'It is kosher and turns over for the festival.',
  'survey.purpose.mix-up': 'Meat and dairy met, or something doubtful was cooked.',

  'survey.heat.electric': 'Electricity',
  'survey.heat.gas': 'Gas',
  'survey.racks.out': 'They come out',
  'survey.racks.in': 'They may stay in',
  'survey.turn.left': 'turn left',
  'survey.turn.straight': 'straight on',
  'survey.turn.right': 'turn right',
  'survey.land.israel': 'the land of Israel',
  'survey.land.diaspora': 'the diaspora',
  'survey.rest-days.yes': 'No work, no sound',
  'survey.rest-days.no': 'Plan through them',
  'survey.yes': 'Yes',
  'survey.no': 'No',
} satisfies Section;
