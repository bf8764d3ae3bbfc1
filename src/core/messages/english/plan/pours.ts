import type { Formatter, Message, Section } from '../../model/message.ts';

type Spot = {
  fixture: string;
  firstTouchC: number;
  surfaceC: number;
  leastC: number;
  mostC: number;
};
type Amount = { litres: number; kettles: number };

function amount(
  { litres, kettles }: Amount,
  f: Pick<Formatter, 'number' | 'shortMeasure'>,
): string {
  return `${f.shortMeasure(litres, 'L', 1)}, ${f.number(kettles)} ${kettles === 1 ? 'kettle' : 'kettles'}`;
}

/** What boiling water does where it is poured, and what the litres rest on. */
export const pours = {
  'plan.section.pours': 'What the water does',
  'plan.pour.reached': ({ fixture, firstTouchC, surfaceC, mostC }: Spot, f) =>
    `${fixture}: the stream meets even the worst-placed spot at about ${f.measure(firstTouchC, '°C')}, hotter than the highest opinion on the heat a hand recoils from (yad soledet bo, ${f.measure(mostC, '°C')}); the surface itself gets to about ${f.measure(surfaceC, '°C')}.`,
  'plan.pour.reached-by-some': (
    { fixture, lowC, surfaceC, leastC, mostC }: Spot & { lowC: number },
    f,
  ) =>
    `${fixture}: the stream meets the worst-placed spot at about ${f.measure(lowC, '°C')}, within the opinions on the heat a hand recoils from (yad soledet bo, ${f.first(leastC, '°C')} to ${f.measure(mostC, '°C')}) and not above the highest: ask which you follow; the surface itself gets to about ${f.measure(surfaceC, '°C')}.`,
  'plan.pour.heated': ({ fixture, surfaceC, firstTouchC }: Spot, f) =>
    `${fixture}: the surface has time to follow the water, to about ${f.measure(surfaceC, '°C')} even at the worst-placed spot, which the stream first meets at about ${f.measure(firstTouchC, '°C')}.`,
  'plan.pour.amounts': (
    { until, reached, heated }: { until: Message; reached: Message; heated: Message },
    f,
  ) =>
    `Until every spot is reached: ${f.say(reached)}. Until it is heated through: ${f.say(heated)}. Planned: ${f.say(until)}.`,
  'plan.pour.amount': (of: Amount, f) => amount(of, f),
  'plan.pour.until.reached': 'until reached',
  'plan.pour.until.heated': 'until heated through',
  'plan.pour.wet': ({ wetFirstTouchC }: { wetFirstTouchC: number }, f) =>
    `Dry it first: where water is left standing the stream first touches at about ${f.measure(wetFirstTouchC, '°C')}.`,
  'plan.pour.run-off': ({ runOffC, belowC }: { runOffC: number; belowC: number }, f) =>
    `Run-off does not do it: it leaves the stream at about ${f.measure(runOffC, '°C')} and brings what lies below to about ${f.measure(belowC, '°C')}.`,
  'plan.pour.moves': 'What moves these figures (all that is poured):',
  'plan.pour.move': ({ what, less, more }: { what: Message; less: Message; more: Message }, f) =>
    `${f.say(what)}: ${f.say(less)} or ${f.say(more)}`,
  'plan.pour.move.flow': (_: unknown, f) =>
    `Stream of ${f.first(1.5, 'L', 1)} or ${f.measure(2.5, 'L', 1)}/min`,
  'plan.pour.move.fall': (_: unknown, f) =>
    `Poured from ${f.first(10, 'cm')} or from ${f.measure(50, 'cm')}`,
  'plan.pour.move.thickness': 'Sheet or slab as thin or as thick as is made',
  'plan.pour.move.overlap': 'Each lane covers 5 or 30 % of the one before',
  'plan.pour.move.loss': 'Nothing or 15 % splashes and stays in the kettle',
  'plan.pour.move.fresh': (_: unknown, f) =>
    `Poured at once, or when it has lost ${f.measure(5, 'K')}`,
  'plan.pour.move.touch': (_: unknown, f) =>
    `Hand recoils at ${f.first(45, '°C')} or at ${f.measure(71, '°C')}`,
  'plan.pour.move.wet': 'Dry, or a millimetre of water left on it',
} satisfies Section;
