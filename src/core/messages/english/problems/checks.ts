import type { Message, Section } from '../../model/message.ts';
import type { Range } from './range.ts';

type Ids = { ids: Message };
type Rows = { rows: Message };

/** Fields that are each in order and do not fit together. */
export const checks = {
  'problems.mains.found': ({ country }: { country: string }) =>
    `nothing, and no usual mains voltage for "${country}"`,
  'problems.mains.allowed': ({ least, most, countries }: Range & { countries: string }) =>
    `a number from ${least} to ${most}, or one of the countries ${countries}`,
  'problems.mains.advice': 'Write the mains voltage, such as 120 or 230.',
  'problems.vessel-power.none': 'no power (0 or missing)',
  'problems.vessel-power.allowed': ({ leastW }: { leastW: number }) =>
    `at least ${leastW} W for an electric one`,
  'problems.vessel-power.advice': 'Read the watts on the plate under it.',

  'problems.reference.circuit.none': 'the id of a circuit; this file has none',
  'problems.reference.burner.none': 'the id of a burner; this file has none',
  'problems.reference.cooktop.none': 'the id of a cooktop; this file has none',
  'problems.reference.part.none': 'a part of the fixture; this one has none',
  'problems.reference.part.describe': 'Leave the part out: the answer is for the whole fixture.',
  'problems.reference.part.allowed': ({ ids }: Ids, f) => `a part of the fixture: ${f.say(ids)}`,
  'problems.reference.fixture.none': 'the id of a fixture; this file has none',
  'problems.reference.circuit.describe': 'Describe the circuit first.',
  'problems.reference.burner.describe': 'Describe the burner first.',
  'problems.reference.cooktop.describe': 'Describe the cooktop first.',
  'problems.reference.fixture.describe': 'Describe the fixture first.',
  'problems.reference.circuit.allowed': ({ ids }: Ids, f) => `the id of a circuit: ${f.say(ids)}`,
  'problems.reference.burner.allowed': ({ ids }: Ids, f) => `the id of a burner: ${f.say(ids)}`,
  'problems.reference.cooktop.allowed': ({ ids }: Ids, f) => `the id of a cooktop: ${f.say(ids)}`,
  'problems.reference.fixture.allowed': ({ ids }: Ids, f) => `the id of a fixture: ${f.say(ids)}`,
  'problems.reference.use-one': 'Use one of these ids.',

  'problems.id-twice.found': ({ id, earlier }: { id: string; earlier: string }) =>
    `"${id}", which ${earlier} has already`,
  'problems.id-twice.allowed': 'an id that nothing else in the file has',
  'problems.id-twice.advice': ({ example }: { example: string }) =>
    `Give it another id, such as "${example}".`,

  'problems.stove.burners': ({ ids }: Ids, f) => `the id of the burner it stands on: ${f.say(ids)}`,
  'problems.stove.no-burners': 'the id of the burner it stands on: none is described',
  'problems.stove.name': 'Name the burner it is heated on.',
  'problems.stove.circuit': ({ kind }: { kind: string }) =>
    `a circuit for one on the stove (${kind})`,
  'problems.stove.no-circuit': 'no circuit',
  'problems.stove.advice': 'Take the circuit out, or make it an "electric-kettle" or an "urn".',
  'problems.electric.burner': ({ kind }: { kind: string }) =>
    `a burner for an electric one (${kind})`,
  'problems.electric.no-burner': 'no burner',
  'problems.electric.advice': 'Take the burner out, or make it a "stove-kettle" or a "pot".',

  'problems.answers.found': ({ fixture, earlier }: { fixture: string; earlier: number }) =>
    `a second answer about "${fixture}" (the first is overrides[${earlier}])`,
  'problems.answers.allowed': 'one answer a fixture',
  'problems.answers.advice': 'Keep the later answer only.',

  'problems.own-row.sephardic': ({ rows }: Rows, f) =>
    `a row of the sephardic custom: ${f.say(rows)}`,
  'problems.own-row.ashkenazic': ({ rows }: Rows, f) =>
    `a row of the ashkenazic custom: ${f.say(rows)}`,
  'problems.own-row.use-one': 'Use one of these rows.',
  'problems.own-row.use-method': 'Use one of these methods for this row.',
  'problems.own-row-twice.found': ({ row, earlier }: { row: string; earlier: number }) =>
    `"${row}" a second time (the first is changedRows[${earlier}])`,
  'problems.own-row-twice.allowed': 'each row once',
  'problems.own-row-twice.advice': 'Keep the later change only.',
  'problems.own-cover.allowed': ({ method }: { method: string }) =>
    `true beside the method "${method}"`,
  'problems.own-cover.advice': 'Take "cover" out, or choose another method.',

  'problems.corner-twice.found': ({ corner, next }: { corner: number; next: number }) =>
    `corners ${corner} and ${next} at one place`,
  'problems.corner-twice.allowed': 'each corner once',
  'problems.corner-twice.closes': 'Take out the last corner: the outline closes by itself.',
  'problems.corner-twice.take-out': ({ corner }: { corner: number }) =>
    `Take out corner ${corner}.`,
  'problems.spike.found': ({ corner }: { corner: number }) =>
    `an outline that turns back on itself at corner ${corner}`,
  'problems.spike.allowed': 'corners listed once round the surface',
  'problems.spike.advice': ({ corner }: { corner: number }) =>
    `Look at corner ${corner} and the ones beside it.`,
  'problems.crossing.found': ({ first, second }: { first: number; second: number }) =>
    `edges from corner ${first} and from corner ${second} that cross or touch`,
  'problems.crossing.allowed': 'an outline that does not cross itself',
  'problems.crossing.advice':
    'List the corners in the order you meet them walking round the surface.',
  'problems.surface.found': ({ surfaceM2 }: { surfaceM2: number }, f) =>
    `a surface of ${f.measure(surfaceM2, 'm²', 4)}`,
  'problems.surface.allowed': ({ leastM2 }: { leastM2: number }, f) =>
    `at least ${f.shortMeasure(leastM2, 'm²', 4, 'up')}`,
  'problems.surface.advice': 'Lengths are in metres and the corners go once round the surface.',

  'problems.box': (
    { xMinM, xMaxM, yMinM, yMaxM }: { xMinM: number; xMaxM: number; yMinM: number; yMaxM: number },
    f,
  ) =>
    `x ${f.tape(xMinM, { decimals: 3, isShort: true })} to ${f.tape(xMaxM, { decimals: 3, isShort: true })}, y ${f.tape(yMinM, { decimals: 3, isShort: true })} to ${f.tape(yMaxM, { decimals: 3, isShort: true })}`,
  'problems.hole.found': ({ box }: { box: Message }, f) => `a cut-out at ${f.say(box)}`,
  'problems.hole.allowed': ({ box }: { box: Message }, f) =>
    `inside the counter's outline (${f.say(box)})`,
  'problems.hole.advice': 'Measure it from the same corner as the counter.',
  'problems.holes-overlap.found': ({ earlier }: { earlier: number }) =>
    `a cut-out that lies over holes[${earlier}]`,
  'problems.holes-overlap.allowed': 'cut-outs apart from each other',
  'problems.holes-overlap.advice': 'Draw one cut-out for both.',
  'problems.back-edge.corners': ({ last }: { last: number }) => `corner numbers 0 to ${last}`,
  'problems.back-edge.first': 'The first corner of the outline is 0.',
  'problems.back-edge.neighbours': 'two neighbouring corners of the outline',
  'problems.back-edge.next': ({ from, next }: { from: number; next: number }) =>
    `After corner ${from} comes corner ${next}.`,
  'problems.bowls.found': ({ bowlsM2 }: { bowlsM2: number }, f) =>
    `bowls of ${f.measure(bowlsM2, 'm²', 2)} together`,
  'problems.bowls.allowed': ({ outlineM2 }: { outlineM2: number }, f) =>
    `no more than the outline of the sink, ${f.measure(outlineM2, 'm²', 2)}`,
  'problems.bowls.advice': 'Measure bowls and outline again, in metres.',
  'problems.burner-place.allowed': ({ box }: { box: Message }, f) =>
    `a point on the cooktop (${f.say(box)})`,
  'problems.burner-place.advice':
    'Measure the middle of the burner in the same plan view as the cooktop.',
  'problems.heights.allowed': ({ fromM }: { fromM: number }, f) =>
    `more than ${f.tape(fromM)}, its lower edge`,
  'problems.heights.advice': 'Measure both edges from the floor.',
  'problems.wall.needs-outline': 'a wall of room.outline, which is not told',
  'problems.wall.tell-outline': 'Tell the corners of the room as room.outline, or leave this out.',
  'problems.wall.fits': (
    { leftM, lengthM, atM }: { leftM: number; lengthM: number; atM: number },
    f,
  ) =>
    `at most ${f.tape(leftM)}: the wall is ${f.tape(lengthM)} long, and this begins at ${f.tape(atM)}`,
  'problems.wall.shorten':
    'Measure from the left end of the wall, as you see it from inside the room.',

  'problems.lon-zone.found': ({ lonDeg, zone }: { lonDeg: number; zone: string }) =>
    `${lonDeg} with the zone "${zone}"`,
  'problems.lon-zone.allowed': 'a longitude in its zone, east positive, west negative',
  'problems.lon-zone.advice': ({ meaning }: { meaning: Message }, f) =>
    `${f.say(meaning)} Check its sign and the zone.`,
  'problems.lon-zone.wrong-hour': 'Rest days would begin at a wrong hour.',
  'problems.lon-zone.sabbath': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `The Sabbath would begin on ${f.shortMoment(wallMs, zone)}.`,
} satisfies Section;
