import type { Section } from '../../model/message.ts';

type FixtureName = { fixture: string };
type Held = { fixture: string; lengthS: number };

/** Steam, and what a household's answer asks for that is done by hand. */
export const byHand = {
  'steps.steam.title': ({ fixture, lengthS }: Held, f) =>
    `Boil water inside for ${f.duration(lengthS)}: ${fixture}.`,
  'steps.steam.start':
    'Half fill a wide cup with water, stand a wooden stick in it, put it in and switch it on.',
  'steps.steam.cup-on': 'Stand the cup on something new: a paper towel folded four times.',
  'steps.steam.start-detail':
    'The stick lets it boil quietly: still water can leap out of the cup when it is moved.',
  'steps.steam.start-ask': 'Is it on now?',
  'steps.steam.hold': 'Let it fill with steam.',
  'steps.steam.hold-detail':
    'Never let the cup run dry: an empty microwave burns. To top it up: off, shut for a minute, gloves on; then put the cup in another place.',
  'steps.steam.hold-ask': 'Did it go on boiling?',
  'steps.steam.timer': 'Steam',
  'steps.steam.top-up': 'Is there water in the cup?',
  'steps.steam.open':
    'Switch it off and leave it shut for five minutes; then wipe it with cold water.',
  'steps.steam.open-detail':
    'Open it away from you, gloves on, the cup out first. Plate and ring go back dry.',
  'steps.steam.open-say': 'Wiped',
  'steps.steam.open-ask': 'Is it off and wiped?',
  'steps.steam.off-timer': 'Switch it off',
  'steps.steam.safe': 'Switch it off and leave it shut.',

  'steps.by-hand.pour': ({ fixture }: FixtureName) =>
    `Pour boiling water over every spot, by hand: ${fixture}.`,
  'steps.by-hand.pour-kettle': 'Straight from the kettle that boiled, at a rolling boil.',
  'steps.by-hand.pour-stream': 'Every spot reached by the stream itself, a kettle at a time.',
  'steps.by-hand.pour-say': 'Every spot was poured',
  'steps.by-hand.pour-ask': 'Was every spot reached by boiling water?',
  'steps.by-hand.immerse': ({ fixture }: FixtureName) =>
    `Immerse in boiling water, part by part: ${fixture}.`,
  'steps.by-hand.immerse-boils': 'The water boils before and while each part is in it.',
  'steps.by-hand.immerse-under': 'Every part wholly under.',
  'steps.by-hand.immerse-say': 'All parts were in',
  'steps.by-hand.immerse-ask': 'Were all parts in the boiling water?',
  'steps.by-hand.cold': 'Rinse every part with cold water at once.',
  'steps.by-hand.heat': ({ fixture, lengthS }: Held, f) =>
    `Heat as your answer says, ${f.duration(lengthS)}: ${fixture}.`,
  'steps.by-hand.run-empty': ({ fixture, lengthS }: Held, f) =>
    `Run it empty, hottest cycle, ${f.duration(lengthS)}: ${fixture}.`,
  'steps.by-hand.heat-say': 'The time is over',
  'steps.by-hand.heat-ask': 'Did the heat go on without a break?',
  'steps.by-hand.heat-timer': 'Heat',
  'steps.by-hand.look': 'Look at what is heated',
  'steps.by-hand.off': 'Turn the heat off and leave it untouched until it is cool.',
  'steps.by-hand.off-say': 'It is off and cool',
  'steps.by-hand.off-ask': 'Is the heat off?',
  'steps.by-hand.off-timer': 'Turn the heat off',
  'steps.by-hand.safe': 'Turn the heat off and keep everybody away from it.',
} satisfies Section;
