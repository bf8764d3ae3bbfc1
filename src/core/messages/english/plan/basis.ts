import type { Section } from '../../model/message.ts';

/** What the figures of a plan rest on where no published figure holds them. */
export const basis = {
  'plan.basis.title': 'What this rests on',
  'plan.basis.about':
    'Boiling points, water, kettles, steady heat, still air, heat index and gas are held against published figures or other people’s programs, each with its tolerance. What follows is not.',
  'plan.basis.kind.judgement': 'Judgement: no published figure was found',
  'plan.basis.kind.computed':
    'Worked out twice: a published formula, no published figure to hold it against',
  'plan.basis.hand-speed': (_: unknown, f) =>
    `Until when a spot is poured: until the first water on its worst-placed spot is hotter than the highest opinion on what a hand draws back from, ${f.measure(71, '°C')}. By the other aim, until the surface is within a twentieth of the water. Stone then takes ten times as long.`,
  'plan.basis.pour-litres':
    'How much of the water is lost, and how far strips overlap. A tenth more loss is a tenth more water.',
  'plan.basis.radial-film':
    'How the film under the stream thins outwards. It sets the strip’s width, and so the litres.',
  'plan.basis.burner-bodies':
    'Size, weight and share of the heat of burners, grates and glass are from memory; within a fifth to a quarter, a portable plate up to double.',
  'plan.basis.glow-limit':
    'No glow is called a fault after twice the latest it is expected, never before five minutes.',
  'plan.basis.touch-thresholds': (_: unknown, f) =>
    `The temperature at which a touch of one minute burns (metal ${f.measure(51, '°C')}, glass ${f.measure(56, '°C')}) is quoted from memory of ISO 13732-1.`,
  'plan.basis.oven-cooling':
    'A shut oven loses two thirds of its heat in 70 to 115 minutes. Manuals say about an hour to the open lock; this gives 30 to 72 minutes, and the clock takes the 72.',
  'plan.basis.highest-heat': (_: unknown, f) =>
    `An oven at its highest is taken to reach ${f.first(230, '°C')} to ${f.measure(290, '°C')} in 12 to 30 minutes, and shut to cool in 40 to 90 minutes by two thirds.`,
  'plan.basis.room-heat':
    'How much heat walls take up. It moves the warmest moment of the kitchen by several degrees.',
  'plan.basis.air-curve':
    'How fast what a burner gives off settles on walls, and how poorly the hood may catch it.',
  'plan.basis.burners-at-once':
    'How many burners may be lit together follows from the room and the air above, and moves with them by one or two. The second reckoning was a tenth away.',
  'plan.basis.glow': (_: unknown, f) =>
    `When a burner glows. Coils that were looked at by a thermal imager stayed at ${f.measure(550, '°C')} bare and ${f.measure(750, '°C')} covered; the band was made to hold both.`,
  'plan.basis.safe-to-touch':
    'When it may be touched: radiation and still air. A second reckoning was 12 to 22 % away; the clock takes the slow end, and you try it before you touch.',
  'plan.basis.kettle-cooling':
    'How fast boiled water cools in the kettle: losses are guessed, and your own reports replace them.',
  'plan.basis.voltage': 'Power goes with the square of the voltage.',
  'plan.basis.wetting': 'The least flow that keeps a wall wet.',
  'plan.basis.level-jump':
    'How far the fast film of the stream reaches on a level surface: two schools, both shown as a band.',
  'plan.basis.contact': 'What two bodies share at the first touch.',
  'plan.basis.surface-after': 'How hot a thick surface is after some seconds under water.',
  'plan.basis.sheet': 'How hot a thin sheet gets under a puddle.',
  'plan.basis.thermal-shock': 'What sudden heat or cold may crack.',
  'plan.basis.window': 'How much air an open window brings: three formulas, up to twice apart.',
  'plan.basis.admittance': 'How much heat a wall takes up over hours.',
  'plan.basis.air': 'How what is given off gathers in one room of mixed air.',
  'plan.basis.poured-spot':
    'How hot water and surface get where the stream passes. A second reckoning of a granite top was 2.5 K cooler.',
  'plan.basis.heated-through': 'How long a spot takes until it is heated through.',
  'plan.basis.jet-loss':
    'What the stream loses on its way down. From half a metre a smooth stream was half a kelvin off the second reckoning.',
} satisfies Section;
