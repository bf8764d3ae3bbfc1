import type { Message, Section } from '../../model/message.ts';
import { lower } from './lower.ts';

/** `isAhead`: what is expected has not come yet. */
type Ahead = { isAhead?: boolean };
type OfKettles = { kettle: number; of: number; fixture: string };
type Vessel = { vessel: Message };
type BurnerVessel = { burner: string; vessel: Message };

/** Kettles: boiled, poured, and purged themselves. */
export const water = {
  'steps.vessel.new': 'New electric kettle',
  /** One of several alike. */
  'steps.vessel.unit': ({ name, number }: { name: string; number: number }) => `${name} ${number}`,
  'steps.vessel.fill-on-burner': (
    { vessel, litres, burner }: BurnerVessel & { litres: number },
    f,
  ) =>
    `Fill the ${lower(f.say(vessel))} to ${f.fill(litres)} and turn the ${burner} burner on under it.`,
  'steps.vessel.fill-plugged': ({ vessel, litres }: Vessel & { litres: number }, f) =>
    `Fill the ${lower(f.say(vessel))} to ${f.fill(litres)} and switch it on.`,
  'steps.vessel.plug-into': ({ circuit }: { circuit: string }) =>
    `Plug it straight into ${circuit}; nothing runs there but what the plan runs.`,
  'steps.vessel.plug-anywhere': 'Plug it straight into a wall socket that nothing else uses.',
  'steps.vessel.safe-on-burner': ({ burner, vessel }: BurnerVessel, f) =>
    `Turn the ${burner} burner off and leave the ${lower(f.say(vessel))} standing on it.`,
  'steps.vessel.safe-plugged': ({ vessel }: Vessel, f) =>
    `Switch the ${lower(f.say(vessel))} off and leave it where nobody can knock it.`,

  'steps.boil.title': ({ kettle, of, fixture, vessel }: OfKettles & Vessel, f) =>
    `Boil kettle ${kettle} of ${of} for ${fixture}: ${lower(f.say(vessel))}.`,
  'steps.boil.fill-mark': 'Never past the mark.',
  'steps.boil.wait': 'Wait for a rolling boil.',
  'steps.boil.wait-here': ({ boilingC }: { boilingC: number }, f) =>
    `Wait for a rolling boil, ${f.measure(boilingC, '°C', 1)} here.`,
  'steps.boil.wait-low': ({ boilingC }: { boilingC: number }, f) =>
    `Wait for a rolling boil. Water boils at ${f.measure(boilingC, '°C')} here; that is boiling, and it gets no hotter.`,
  'steps.boil.again': ({ againS }: { againS: number }, f) =>
    `Switch it on again just before you lift it: it rolls again in ${f.about(againS)}. Then pour at once.`,
  'steps.boil.burner-off': ({ burner }: { burner: string }) =>
    `Turn the ${burner} burner off as you lift it, straight off the boil, and pour at once.`,
  'steps.boil.say': 'It boils',
  'steps.boil.ask': 'Did the kettle come to a rolling boil, and is the water still hot?',
  'steps.boil.expect': ({ isAhead }: Ahead) =>
    isAhead ? 'Until it boils (expected)' : 'Boils about now',

  'steps.boil-over.title': ({ vessel }: Vessel, f) => `Purge the ${lower(f.say(vessel))} itself.`,
  'steps.boil-over.overflow-on-burner': ({ burner }: { burner: string }) =>
    `Turn the ${burner} burner off. In the sink, slowly lower clean hot steel into the kettle until its whole rim runs over.`,
  'steps.boil-over.overflow-plugged':
    'Unplug it, stand it in the sink, and slowly lower clean hot steel into it until its whole rim runs over.',
  'steps.boil-over.steel':
    'By long tongs, at arm’s length: a piece of steel, heated on a burner meanwhile. No stone from outside: it can burst.',
  'steps.boil-over.base': 'Its base stays away from the water.',
  'steps.boil-over.spout':
    'A spout or a narrow neck is not reached so: ask about it, or buy a new kettle.',
  'steps.boil-over.overflow-say': 'It ran over',
  'steps.boil-over.overflow-ask': 'Did the boiling water run over the whole rim?',
  'steps.boil-over.cold': 'Empty it and rinse it with cold water.',
  'steps.cold.say-rinsed': 'Rinsed cold',

  'steps.dry.title': ({ fixture }: { fixture: string }) => `Dry ${fixture} all over.`,
  'steps.dry.reason':
    'Water left on it cools the stream before it reaches the surface: it is poured dry.',
  'steps.dry.seams': 'Seams and corners too.',
  'steps.dry.kettle-away': 'Kettle and base stand elsewhere, on a socket that no splash reaches.',
  'steps.dry.drain': 'Round the tap too. Leave the drain open.',
  'steps.dry.clear-to': ({ names, to }: { names: readonly Message[]; to: string }, f) =>
    `Take ${f.list(names.map((name) => f.say(name)))} off it and put it on ${to}; it stays there until this place is dry again.`,
  'steps.dry.clear': ({ names }: { names: readonly Message[] }, f) =>
    `Take ${f.list(names.map((name) => f.say(name)))} off it, out of the kitchen; it stays there until this place is dry again.`,
  'steps.dry.say': 'Dry',
  'steps.air-dry.title': ({ fixture }: { fixture: string }) =>
    `Wipe ${fixture} dry, then let it stand uncovered.`,
  'steps.air-dry.reason': 'A cover over water stays wet, slips and lifts the wood under it.',
  'steps.air-dry.timer': ({ name }: { name: Message }, f) => `Drying: ${f.say(name)}`,
  'steps.air-dry.timer-short': 'Drying',

  'steps.pour.title': ({ kettle, of, fixture }: OfKettles) =>
    `Pour kettle ${kettle} of ${of} over ${fixture}.`,
  'steps.pour.pour': ({ kettle, of, fixture }: OfKettles) =>
    `Pour kettle ${kettle} of ${of} over ${fixture}: every spot reached by the stream.`,
  'steps.pour.line': ({ kettle }: { kettle: number }) =>
    `Kettle ${kettle}: the blue part, from mark ${kettle} to mark ${kettle + 1}.`,
  'steps.pour.line-to-end': ({ kettle }: { kettle: number }) =>
    `Kettle ${kettle}: the blue part, from mark ${kettle} to its end.`,
  'steps.pour.dry-first': 'Swab dry what is still to be poured: water left on it cools the stream.',
  'steps.pour.drain-open': 'Drain open, so that what runs ahead runs off.',
  'steps.pour.wipe-floor':
    'Wipe walls and floor dry between kettles, before the stream comes to them.',
  'steps.pour.way.back-to-front':
    'From the back edge to the front, lane by lane; let the water run down the front.',
  'steps.pour.way.shortest':
    'Lane by lane as drawn: the shortest way, by your choice; let the water run down the front.',
  'steps.pour.way.far-to-near': 'Lane by lane toward yourself, the farthest first.',
  'steps.pour.stand': ({ sides }: { sides: readonly Message[] }, f) =>
    `Stand where the feet are drawn: ${sides.map((side) => f.say(side)).join(', then ')}.`,
  'steps.pour.side.far': 'the far side',
  'steps.pour.side.near': 'the near side',
  'steps.pour.side.left': 'the left side',
  'steps.pour.side.right': 'the right side',
  'steps.pour.unreached':
    'The hatched spot is out of reach from where you can stand: no kettle is planned for it. See the notices of the plan.',
  'steps.pour.round': ({ round, rounds }: { round: number; rounds: number }) =>
    `Time ${round} of ${rounds} over the whole of it.`,
  'steps.pour.stone': 'With long tongs, move the hot steel along in the stream, over every spot.',
  'steps.pour.say': 'Poured',
  'steps.pour.ask': 'Was this kettle poured to the end?',
  'steps.pour.expect': ({ isAhead }: Ahead) =>
    isAhead ? 'Until it is empty (expected)' : 'Empty about now',
  'steps.pour.cold': 'Pour cold water over the same place at once.',
  'steps.pour.cold-where': 'Only where the boiling water went.',
  'steps.pour.swab': 'Swab dry what is still to be poured.',
  'steps.pour.cold-say': 'Cold water poured',
  'steps.pour.cold-ask': 'Was cold water poured over it?',
  'steps.pour.cold-timer': 'Cold water now',
  'steps.pour.safe': 'Put the kettle down where nobody can knock it.',

  /** Why a plan was changed while it ran. */
  'steps.ran-out': ({ kettle }: { kettle: number }) =>
    `Kettle ${kettle} ran out early; what is left is shared out anew.`,

  'steps.pour.not-drawn': ({ why }: { why: Message }, f) =>
    `Where each kettle goes cannot be drawn (${f.say(why)}): its water is shared alike. See for yourself that every spot is reached.`,

  'steps.sink.spout-and-tap': 'Spout and tap',
  'steps.sink.handles': ({ count }: { count: number }, f) =>
    f.plural(count, { one: 'Handle', other: 'Handles' }),
  'steps.sink.deck': 'Deck round the bowls',
  'steps.sink.deck-and-drainboard': 'Deck and drainboard',
  'steps.sink.rim': 'Rim',
  'steps.sink.wall': 'Walls',
  'steps.sink.floor': 'Floor',
  'steps.sink.bowl.rim': ({ bowl }: { bowl: number }) => `Bowl ${bowl}: rim`,
  'steps.sink.bowl.wall': ({ bowl }: { bowl: number }) => `Bowl ${bowl}: walls`,
  'steps.sink.bowl.floor': ({ bowl }: { bowl: number }) => `Bowl ${bowl}: floor`,
  /** A part that two kettles share, and what of it is this one's. */
  'steps.sink.shared': ({ part, pieces }: { part: Message; pieces: readonly Message[] }, f) =>
    `${f.say(part)} (${pieces.map((piece) => f.say(piece)).join(', ')})`,
  'steps.sink.the-rest': ({ part }: { part: Message }, f) => `${f.say(part)}, the rest`,
  'steps.sink.piece.back': 'back',
  'steps.sink.piece.right': 'right',
  'steps.sink.piece.front': 'front',
  'steps.sink.piece.left': 'left',
  'steps.sink.piece.lane': ({ number }: { number: number }) => `lane ${number}`,
  'steps.sink.piece.handle': ({ number }: { number: number }) =>
    ['first', 'second', 'third', 'fourth'][number - 1] ?? String(number),
} satisfies Section;
