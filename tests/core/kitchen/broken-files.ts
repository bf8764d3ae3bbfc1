import { demoJson } from './demos.ts';

/** One way a file can be wrong, and what must be said about it. */
export type Broken = {
  readonly what: string;
  readonly spoil: () => unknown;
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
  readonly advice: string;
};

// eslint-disable-next-line typescript/no-explicit-any
type Loose = any;

const COILS = 'flat-coils.kitchen.json';
const HALL = 'hall.kitchen.json';
const MOUNTAIN = 'mountain-gas.kitchen.json';
const GLASS = 'flat-glass-230.kitchen.json';

function broken(
  what: string,
  file: string,
  change: (kitchen: Loose) => void,
  path: string,
  found: string,
  allowed: string,
  advice: string,
): Broken {
  const spoil = (): unknown => {
    const kitchen = demoJson(file);
    change(kitchen);
    return kitchen;
  };
  return { what, spoil, path, found, allowed, advice };
}

/** Index of a fixture in a demo. */
function at(kitchen: Loose, id: string): Loose {
  return kitchen.fixtures.find((fixture: Loose) => fixture.id === id);
}

/** Gives a household a custom of its own with one changed row. */
function own(kitchen: Loose, change: object): void {
  const row = { row: 'burner-fire', method: 'glow', why: 'So we do.', saidBy: 'our rabbi', saidOn: '2027-03-01' };
  kitchen.household.ownCustom = { name: 'Ours', basedOn: 'sephardic', changedRows: [{ ...row, ...change }] };
} // prettier-ignore

/** Tells one line of utensils, changed. */
function spoon(kitchen: Loose, change: object): void {
  kitchen.utensils = [{ id: 'spoons', kind: 'cutlery', count: 6, material: 'silver', use: 'poured', condition: 'smooth', designation: 'meat', ...change }];
} // prettier-ignore

/** Wrong fields: schema and reader both refuse them. */
export const BROKEN_SHAPES: readonly Broken[] = [
  broken('another format', COILS, (k) => (k.format = 'recipe-book'), 'format', '"recipe-book"', '"glowpour-kitchen"', 'another kind of file'),
  broken('no format', COILS, (k) => delete k.format, 'format', 'missing', '"glowpour-kitchen"', 'marks a kitchen file'),
  broken('a newer version', COILS, (k) => (k.version = 2), 'version', '2', '1 or lower', 'newer app wrote this file'),
  broken('version as text', COILS, (k) => (k.version = '1'), 'version', '"1"', '1', 'Write 1'),
  broken('a misspelt field', COILS, (k) => { k.altitudM = k.altitudeM; delete k.altitudeM; }, 'altitudM', 'unknown field "altitudM"', 'altitudeM', 'Did you mean "altitudeM"?'),
  broken('a field without its unit', COILS, (k) => { k.fixtures[2].bowls[0].depth = 0.2; delete k.fixtures[2].bowls[0].depthM; }, 'fixtures[2].bowls[0].depth', 'unknown field "depth"', 'lengthM, widthM, depthM', 'Did you mean "depthM"?'),
  broken('a field nobody knows', COILS, (k) => (k.room.colour = 'green'), 'room.colour', 'unknown field "colour"', 'floorAreaM2', 'comment field'),
  broken('a field with a strange name', COILS, (k) => (k['my note'] = 'x'), '["my note"]', 'unknown field "my note"', 'comment', 'comment'),
  broken('no name', COILS, (k) => delete k.name, 'name', 'missing', 'text of 1 to 80', 'Write some words'),
  broken('a blank name', COILS, (k) => (k.name = '  '), 'name', '"  "', 'text of 1 to 80', 'Write something'),
  broken('a name too long', COILS, (k) => (k.name = 'long '.repeat(20)), 'name', '…', '80', 'Shorten it by 20 letters'),
  broken('a country in small letters', COILS, (k) => (k.country = 'us'), 'country', '"us"', 'two capital letters', 'two-letter code'),
  broken('a country of nowhere without its voltage', COILS, (k) => { k.country = 'XX'; delete k.supplyV; }, 'supplyV', '"XX"', '90 to 440', '120 or 230'),
  broken('a height above all mountains', MOUNTAIN, (k) => (k.altitudeM = 21000), 'altitudeM', '21000', '-430 to 5000', 'Enter less'),
  broken('a number as text', MOUNTAIN, (k) => (k.altitudeM = '2100 m'), 'altitudeM', '"2100 m"', 'a number', 'without quotes'),
  broken('a frozen tap', COILS, (k) => (k.tapColdC = -3), 'tapColdC', '-3', '0.5 to 40', 'Enter more'),
  broken('null', COILS, (k) => (k.tapColdC = null), 'tapColdC', 'null', 'a number', 'plain number'),
  broken('a purpose nobody knows', COILS, (k) => (k.household.purpose = 'pesach'), 'household.purpose', '"pesach"', '"passover"', 'Choose one'),
  broken('a custom misspelt', COILS, (k) => (k.household.custom = 'sefardic'), 'household.custom', '"sefardic"', '"ashkenazic"', 'Did you mean "sephardic"?'),
  broken('nobody to work', COILS, (k) => (k.household.people = 0), 'household.people', '0', '1 to 8', 'Enter more'),
  broken('half a person', COILS, (k) => (k.household.people = 1.5), 'household.people', '1.5', 'a whole number', 'Round it: 2'),
  broken('yes for true', COILS, (k) => (k.household.keepsRestDays = 'yes'), 'household.keepsRestDays', '"yes"', 'true or false', 'without quotes'),
  broken('a method misspelt', HALL, (k) => (k.household.overrides[0].method = 'self clean'), 'household.overrides[0].method', '"self clean"', '"self-clean"', 'Did you mean "self-clean"?'),
  broken('a date the other way round', HALL, (k) => (k.household.overrides[0].saidOn = '02.03.2026'), 'household.overrides[0].saidOn', '"02.03.2026"', 'yyyy-mm-dd', 'the year, the month and the day'),
  broken('a last hot use without its hour', COILS, (k) => (at(k, 'sink').lastHotAt = '2026-03-29'), 'fixtures[2].lastHotAt', '"2026-03-29"', 'yyyy-mm-ddThh:mm', 'such as "2026-03-29T20:00"'),
  broken('a last hot use of another age', COILS, (k) => (k.household.lastHotAt = '1926-03-29T20:00'), 'household.lastHotAt', '"1926-03-29T20:00"', '1950 to 2099', 'on the kitchen clock'),
  broken('an own custom without a name', COILS, (k) => (k.household.ownCustom = { basedOn: 'sephardic', changedRows: [] }), 'household.ownCustom.name', 'missing', 'text of 1 to 80', 'Write some words'),
  broken('an own custom of a custom misspelt', COILS, (k) => (k.household.ownCustom = { name: 'Ours', basedOn: 'sefardic', changedRows: [] }), 'household.ownCustom.basedOn', '"sefardic"', '"ashkenazic"', 'Did you mean "sephardic"?'),
  broken('an own row that nobody said', COILS, (k) => { own(k, {}); delete k.household.ownCustom.changedRows[0].saidBy; }, 'household.ownCustom.changedRows[0].saidBy', 'missing', 'text of 1 to 80', 'Write some words'),
  broken('an own row of endless minutes', COILS, (k) => own(k, { minutes: 9000 }), 'household.ownCustom.changedRows[0].minutes', '9000', '1 to 600', 'Enter less'),
  broken('a utensil of no kind', COILS, (k) => spoon(k, { kind: 'spoon' }), 'utensils[0].kind', '"spoon"', '"wooden-spoon"', 'Choose one'),
  broken('utensils of no number', COILS, (k) => spoon(k, { count: 0 }), 'utensils[0].count', '0', '1 to 500', 'Enter more'),
  broken('a utensil with half a size', COILS, (k) => spoon(k, { size: { lengthM: 0.2, widthM: 0.03 } }), 'utensils[0].size.heightM', 'missing', '0.001 to 2', 'Add this field'),
  broken('an answer that nobody gave', COILS, (k) => spoon(k, { answer: { method: 'immerse', saidOn: '2027-03-01' } }), 'utensils[0].answer.saidBy', 'missing', 'text of 1 to 80', 'Write some words'),
  broken('a comment that is a number', COILS, (k) => (k.vessels[0].comment = 7), 'vessels[0].comment', '7', 'text of 1 to 2000', 'Write some words'),
  broken('a latitude off the globe', COILS, (k) => (k.place.latDeg = 140), 'place.latDeg', '140', '-90 to 90', 'Enter less'),
  broken('a land nobody asked for', COILS, (k) => (k.place.land = 'america'), 'place.land', '"america"', '"israel", "diaspora"', 'Choose one'),
  broken('no room', COILS, (k) => delete k.room, 'room', 'missing', 'floorAreaM2', 'between { and }'),
  broken('a low ceiling', COILS, (k) => (k.room.heightM = 244), 'room.heightM', '244', '1.8 to 10', 'Enter less'),
  broken('circuits not in a list', COILS, (k) => (k.circuits = k.circuits[0]), 'circuits', 'an object', 'a list', 'Put [ and ] round it'),
  broken('a circuit without amperes', COILS, (k) => delete k.circuits[1].ratingA, 'circuits[1].ratingA', 'missing', '1 to 200', 'Add this field'),
  broken('a kettle of a bucket', COILS, (k) => (k.vessels[0].maxFillL = 1700), 'vessels[0].maxFillL', '1700', '0.2 to 200', 'Enter less'),
  broken('a vessel of an unknown kind', COILS, (k) => (k.vessels[0].kind = 'kettle'), 'vessels[0].kind', '"kettle"', '"electric-kettle"', 'Choose one'),
  broken('fixtures no list', COILS, (k) => (k.fixtures = 'none'), 'fixtures', '"none"', 'a list in [ ] of 0 to 300', 'Write a list in [ ].'),
  broken('a fixture of an unknown kind', COILS, (k) => (k.fixtures[2].kind = 'snik'), 'fixtures[2].kind', '"snik"', '"sink"', 'Did you mean "sink"?'),
  broken('a fixture that is a word', COILS, (k) => (k.fixtures[2] = 'sink'), 'fixtures[2]', '"sink"', 'an object', 'between { and }'),
  broken('a material misspelt', COILS, (k) => (k.fixtures[0].material = 'granit'), 'fixtures[0].material', '"granit"', '"granite"', 'Did you mean "granite"?'),
  broken('an id with a space', COILS, (k) => (k.fixtures[0].id = 'left counter'), 'fixtures[0].id', '"left counter"', 'letters a to z', 'without spaces'),
  broken('an outline of two corners', COILS, (k) => k.fixtures[0].outline.splice(2), 'fixtures[0].outline', 'a list of 2', '3 to 500', 'Add 1 more'),
  broken('a corner of three numbers', COILS, (k) => k.fixtures[0].outline[1].push(0), 'fixtures[0].outline[1]', 'a list of 3', '[x, y]', 'two numbers'),
  broken('a corner in millimetres', COILS, (k) => (k.fixtures[0].outline[1][0] = 1520), 'fixtures[0].outline[1][0]', '1520', '-200 to 200', 'Enter less'),
  broken('a sink without bowls', COILS, (k) => (k.fixtures[2].bowls = []), 'fixtures[2].bowls', 'a list of 0', '1 to 6', 'Add 1 more'),
  broken('a bowl in centimetres', COILS, (k) => (k.fixtures[2].bowls[0].depthM = 18), 'fixtures[2].bowls[0].depthM', '18', '0.03 to 1', 'Enter less'),
  broken('a burner without power', COILS, (k) => (k.fixtures[3].burners[1].ratedW = 0), 'fixtures[3].burners[1].ratedW', '0', '200 to 60000', 'Enter more'),
  broken('a burner of an unknown type', COILS, (k) => (k.fixtures[3].burners[0].type = 'coil'), 'fixtures[3].burners[0].type', '"coil"', '"electric-coil"', 'Choose one'),
  broken('an oven that cleans itself somehow', COILS, (k) => (k.fixtures[4].cleaning = true), 'fixtures[4].cleaning', 'true', '"pyrolytic"', 'Choose one'),
  broken('a cycle in hours', COILS, (k) => (k.fixtures[4].cycleMin = 4), 'fixtures[4].cycleMin', '4', '30 to 600', 'Enter more'),
]; // prettier-ignore

/** Fields that are each in order and do not fit together: only the reader sees it. */
export const BROKEN_SENSE: readonly Broken[] = [
  broken('one id for a utensil and a fixture', COILS, (k) => spoon(k, { id: 'counter-left' }), 'utensils[0].id', 'fixtures[0].id has already', 'nothing else', 'another id'),
  broken('an answer of no day', COILS, (k) => spoon(k, { answer: { method: 'immerse', saidBy: 'our rabbi', saidOn: '2027-02-30' } }), 'utensils[0].answer.saidOn', '"2027-02-30"', '28', ''),
  broken('a last hot use on no day', COILS, (k) => (k.vessels[0].lastHotAt = '2027-02-29T20:00'), 'vessels[0].lastHotAt', '"2027-02-29T20:00"', '1 to 28', 'Look the date up'),
  broken('one id for two fixtures', COILS, (k) => (k.fixtures[1].id = 'counter-left'), 'fixtures[1].id', 'fixtures[0].id has already', 'nothing else', 'another id'),
  broken('one id for a circuit and a burner', COILS, (k) => (k.fixtures[3].burners[0].id = 'sockets-left'), 'fixtures[3].burners[0].id', 'circuits[0].id has already', 'nothing else', 'another id'),
  broken('a kettle on a circuit misspelt', COILS, (k) => (k.vessels[0].circuit = 'sockets-rigth'), 'vessels[0].circuit', '"sockets-rigth"', '"sockets-right"', 'Did you mean "sockets-right"?'),
  broken('a burner on a circuit that is not there', COILS, (k) => (k.fixtures[3].burners[2].circuit = 'x9'), 'fixtures[3].burners[2].circuit', '"x9"', '"range-supply"', 'Use one of these'),
  broken('a microwave on no circuit at all', COILS, (k) => { k.circuits = []; delete k.vessels[0].circuit; for (const f of k.fixtures) { delete f.burners; if (f.kind === 'oven') delete f.circuit; } k.fixtures = k.fixtures.filter((f: Loose) => f.kind !== 'cooktop' && f.kind !== 'oven'); }, 'fixtures[5].circuit', '"sockets-left"', 'this file has none', 'Describe the circuit first'),
  broken('a pot on a burner that is not there', MOUNTAIN, (k) => (k.vessels[1].burner = 'gas-front-rigt'), 'vessels[1].burner', '"gas-front-rigt"', '"gas-front-right"', 'Did you mean "gas-front-right"?'),
  broken('a stove kettle on no burner', MOUNTAIN, (k) => delete k.vessels[0].burner, 'vessels[0].burner', 'missing', '"gas-front-left"', 'Name the burner'),
  broken('an electric kettle on a burner', COILS, (k) => (k.vessels[0].burner = 'coil-front-left'), 'vessels[0].burner', 'electric-kettle', 'no burner', 'Take the burner out'),
  broken('a stove kettle with a plug', MOUNTAIN, (k) => (k.vessels[0].circuit = 'counter'), 'vessels[0].circuit', 'stove-kettle', 'no circuit', 'Take the circuit out'),
  broken('an electric kettle without power', COILS, (k) => (k.vessels[0].ratedW = 0), 'vessels[0].ratedW', 'no power', 'at least 100 W', 'plate under it'),
  broken('an oven in a range that is not there', COILS, (k) => (k.fixtures[4].sharesRangeWith = 'sink'), 'fixtures[4].sharesRangeWith', '"sink"', '"range-top"', 'Use one of these'),
  broken('an answer about a fixture that is not there', HALL, (k) => (k.household.overrides[0].fixture = 'serving-tabel'), 'household.overrides[0].fixture', '"serving-tabel"', '"serving-table"', 'Did you mean "serving-table"?'),
  broken('two answers about one fixture', HALL, (k) => k.household.overrides.push({ ...k.household.overrides[0] }), 'household.overrides[1].fixture', 'second answer', 'one answer', 'Keep the later'),
  broken('an own row that the custom has not', COILS, (k) => own(k, { row: 'burner-fires' }), 'household.ownCustom.changedRows[0].row', '"burner-fires"', '"burner-gas"', 'Did you mean "burner-fire"?'),
  broken('an own row of another custom', COILS, (k) => own(k, { row: 'cold-passover' }), 'household.ownCustom.changedRows[0].row', '"cold-passover"', 'a row of the sephardic custom', 'Did you mean "cold"?'),
  broken('an own row changed twice', COILS, (k) => { own(k, {}); k.household.ownCustom.changedRows.push(k.household.ownCustom.changedRows[0]); }, 'household.ownCustom.changedRows[1].row', 'a second time', 'each row once', 'Keep the later'),
  broken('an induction zone that is to glow', COILS, (k) => own(k, { row: 'burner-induction' }), 'household.ownCustom.changedRows[0].method', '"glow"', '"pour"', 'Use one of these methods'),
  broken('a cover without a cover', COILS, (k) => own(k, { row: 'top-made', method: 'cover', cover: false }), 'household.ownCustom.changedRows[0].cover', 'false', 'true', 'choose another method'),
  broken('an own row on a date its month has not', COILS, (k) => own(k, { saidOn: '2027-04-31' }), 'household.ownCustom.changedRows[0].saidOn', '"2027-04-31"', 'day 1 to 30', 'Look the date up'),
  broken('a date its month has not', HALL, (k) => (k.household.overrides[0].saidOn = '2026-02-29'), 'household.overrides[0].saidOn', '"2026-02-29"', 'day 1 to 28', 'Look the date up'),
  broken('a time zone that is none', COILS, (k) => (k.place.zone = 'America/Newyork'), 'place.zone', '"America/Newyork"', 'IANA', 'Europe/Paris'),
  broken('an outline that crosses itself', COILS, (k) => k.fixtures[0].outline.splice(0, 4, [0, 0], [1, 1], [1, 0], [0, 1.2]), 'fixtures[0].outline', 'cross or touch', 'does not cross itself', 'walking round'),
  broken('an outline closed twice', COILS, (k) => k.fixtures[0].outline.push([0.8, 1.76]), 'fixtures[0].outline', 'corners 4 and 0', 'each corner once', 'closes by itself'),
  broken('a corner twice', COILS, (k) => k.fixtures[0].outline.splice(1, 0, [0.8, 1.76]), 'fixtures[0].outline', 'corners 0 and 1', 'each corner once', 'Take out corner 1'),
  broken('an outline without a surface', COILS, (k) => (k.fixtures[11].outline = [[0, 0], [1, 0], [2, 0]]), 'fixtures[11].outline', '0.0000\u00a0m²', 'at least 0.0025', 'in metres'),
  broken('an outline with a spike', COILS, (k) => (k.fixtures[11].outline = [[0, 0], [1, 0], [2, 0], [1, 0.0], [1, 1], [0, 1]]), 'fixtures[11].outline', 'turns back', 'once round', 'corner 2'),
  broken('a cut-out outside its counter', COILS, (k) => { for (const p of k.fixtures[1].holes[0]) p[0] += 0.8; }, 'fixtures[1].holes[0]', 'x 3.44\u00a0m', 'inside the counter', 'same corner'),
  broken('a cut-out that crosses itself', COILS, (k) => (k.fixtures[1].holes[0] = [[2.6, 1.9], [3.2, 2.3], [3.2, 1.9], [2.6, 2.2]]), 'fixtures[1].holes[0]', 'cross or touch', 'does not cross', 'walking round'),
  broken('cut-outs over each other', GLASS, (k) => { for (const p of k.fixtures[0].holes[1]) p[0] -= 1.1; k.fixtures[0].holes[0] = [[0.1, 2.3], [0.5, 2.3], [0.5, 2.5], [0.1, 2.5]]; }, 'fixtures[0].holes[1]', 'lies over holes[0]', 'apart', 'one cut-out for both'),
  broken('a back edge across the counter', GLASS, (k) => (k.fixtures[0].backEdges[0] = [1, 4]), 'fixtures[0].backEdges[0]', '[1, 4]', 'neighbouring corners', 'After corner 1 comes corner 2'),
  broken('a back edge past the corners', COILS, (k) => (k.fixtures[0].backEdges[0] = [3, 4]), 'fixtures[0].backEdges[0]', '[3, 4]', '0 to 3', 'The first corner'),
  broken('bowls larger than the sink', COILS, (k) => (k.fixtures[2].bowls[0].lengthM = 1.1), 'fixtures[2].bowls', '0.44\u00a0m²', '0.30\u00a0m²', 'Measure'),
  broken('a door past the end of its wall', COILS, (k) => (k.room.openings[0].atM = 1.7), 'room.openings[0].widthM', '0.8', 'at most 0.70\u00a0m: the wall is 2.40\u00a0m long', 'left end of the wall'),
  broken('a door across the room', COILS, (k) => (k.room.openings[0].wall = [1, 3]), 'room.openings[0].wall', '[1, 3]', 'neighbouring corners', 'After corner 1 comes corner 2'),
  broken('a hood on a wall without walls', COILS, (k) => { delete k.room.outline; delete k.room.openings; k.fixtures = k.fixtures.filter((f: Loose) => !f.wallPlace || f.id === 'hood'); }, 'fixtures[5].wallPlace.wall', 'a list', 'not told', 'Tell the corners of the room'),
  broken('a window with its head under its sill', COILS, (k) => (k.room.openings[1].heights.toM = 1), 'room.openings[1].heights.toM', '1', 'more than 1.10\u00a0m', 'from the floor'),
  broken('a room that crosses itself', COILS, (k) => (k.room.outline = [[0, 0], [3, 2], [3, 0], [0, 2.5]]), 'room.outline', 'cross or touch', 'does not cross', 'walking round'),
  broken('one id for a door and a counter', COILS, (k) => (k.room.openings[0].id = 'counter-left'), 'room.openings[0].id', 'fixtures[0].id has already', 'nothing else', 'another id'),
  broken('a burner beside its cooktop', COILS, (k) => (at(k, 'range-top').burners[3].at = [2.4, 2.2]), 'fixtures[3].burners[3].at', '[2.4, 2.2]', 'x 1.52\u00a0m to 2.28\u00a0m', 'same plan view'),
]; // prettier-ignore
