import type { Message, Section } from '../../model/message.ts';

type Step = { step: Message };
type Name = { name: string };

/** The survey's frame and its five pages but for the sheet of a fixture. */
export const pages = {
  'survey.title': 'Survey',
  'survey.all-kitchens': 'All kitchens',
  'survey.chapter.where': 'Where',
  'survey.chapter.fixtures': 'What stands in it',
  'survey.chapter.water': 'Water and power',
  'survey.chapter.air': 'Room and air',
  'survey.chapter.people': 'Household',
  'survey.next.where': 'Next: Where it is',
  'survey.next.fixtures': 'Next: What stands in it',
  'survey.next.water': 'Next: Water and power',
  'survey.next.air': 'Next: Room and air',
  'survey.next.people': 'Next: The household',
  'survey.see-plan': 'See the plan',
  'survey.undo': 'Undo',
  'survey.undo-step': ({ step }: Step, f) => `Undo: ${f.say(step)}`,
  'survey.redo': 'Redo',
  'survey.redo-step': ({ step }: Step, f) => `Redo: ${f.say(step)}`,
  'survey.back': 'Back',
  'survey.add': 'Add',
  'survey.take-out': 'Take out',
  'survey.take-out-named': ({ name }: Name) => `Take out ${name}`,
  'survey.not-told': 'Not told',
  'survey.refused': (
    { found, allowed, advice }: { found: Message; allowed: Message; advice: Message },
    f,
  ) => `Not taken: ${f.say(found)}. Allowed: ${f.say(allowed)}. ${f.say(advice)}`,

  'survey.still-to-tell': 'Still to tell',
  'survey.still-to-tell.count': ({ count }: { count: number }, f) =>
    `Still to tell: ${f.number(count)}`,
  'survey.still-to-tell.none': 'All is told',
  'survey.still-to-tell.note': 'Until it is told the plan takes the careful side and says so.',
  'survey.onward.open': ({ count }: { count: number }, f) =>
    `${count === 1 ? 'One thing is' : `${f.number(count)} things are`} still to tell; until then the plan takes the careful side.`,
  'survey.onward.kept': 'Kept on this tablet as you go.',
  'survey.onward.failed': 'The last change could not be kept on this tablet.',
  'survey.onward.keep': 'Keep it now',

  'survey.where.heading': 'Where is this kitchen?',
  'survey.where.name': 'Name of the kitchen',
  'survey.where.country': 'Country',
  'survey.where.note':
    'Five short pages, about ten minutes; everything is kept as you go. The country gives mains voltage, usual kettles, circuits and sizes. Change any of them later.',
  'survey.where.altitude': 'Altitude',
  'survey.where.altitude.hint': 'Water boils cooler higher up.',
  'survey.where.tap': 'Cold tap water',
  'survey.where.tap.hint': 'Colder water takes longer to boil.',
  'survey.where.mains': 'Mains',
  'survey.where.town': 'Town, or the largest one near',
  'survey.where.town.empty': 'Type its first letters',
  'survey.where.towns': 'Towns',
  'survey.where.town.tells': ({ country, altitude }: { country: Message; altitude: Message }, f) =>
    `${f.say(country)}, ${f.say(altitude)}`,
  'survey.where.town.none':
    'No town of that name is in the list. Type the altitude below, or a larger town near.',
  'survey.where.sun': (
    { latDeg, lonDeg, zone }: { latDeg: number; lonDeg: number; zone: string },
    f,
  ) =>
    `Sun times for ${f.shortNumber(latDeg, 6)}°, ${f.shortNumber(lonDeg, 6)}°, clock of ${zone}.`,
  'survey.where.land': 'Festival days kept as in',

  'survey.fixtures.first': 'What stands first at the wall?',
  'survey.fixtures.next': 'What else is there?',
  'survey.fixtures.note':
    'Go round the room once. Each comes in its usual size and to a likely place; put it right afterwards by finger or by typing.',
  'survey.fixtures.run': 'A counter round corners',
  'survey.fixtures.here': 'What stands here',
  'survey.fixtures.drawn': ({ what }: { what: Message }, f) => f.capital(f.say(what)),
  'survey.fixtures.not-drawn': ({ what }: { what: Message }, f) =>
    `${f.capital(f.say(what))}, not drawn`,
  'survey.offers.work': 'To work on',
  'survey.offers.water': 'Water',
  'survey.offers.heat': 'Fire and heat',
  'survey.offers.cold': 'Cold',
  'survey.offers.storage': 'To keep things in',
  'survey.offers.add': 'Add: ',
  'survey.run.heading': 'Counter along the walls',
  'survey.run.leave': 'Leave it',
  'survey.run.note':
    'Begin in the far left corner and walk with the wall at your left hand. In a corner of the room you turn right.',
  'survey.run.piece': ({ number }: { number: number }, f) => `Piece ${f.number(number)}`,
  'survey.run.then': 'then',
  'survey.run.crosses':
    'Such a counter would lie over itself. Make the pieces longer, or turn the other way.',
  'survey.run.more': 'One more piece',
  'survey.run.less': 'One piece less',
  'survey.run.draw': 'Draw it',

  'survey.water.kettles': 'Kettles',
  'survey.water.kettles.heading': 'What boils the water?',
  'survey.water.kettles.note': 'Read volume and watts off the plate under each.',
  'survey.water.circuits': 'Circuits',
  'survey.water.circuits.heading': 'Which of these go off together when you switch the breaker?',
  'survey.water.circuits.note':
    'Two kettles on one breaker trip it. Switch each breaker off in turn and mark what goes dead.',
  'survey.water.circuits.add': 'Add a circuit',
  'survey.water.name': 'Name',
  'survey.water.fill': 'To its mark',
  'survey.water.power': 'Power',
  'survey.water.made-for': 'Made for',
  'survey.water.count': 'How many',
  'survey.water.body': 'Body',
  'survey.water.stands-on': 'Stands on',
  'survey.water.burner': ({ cooktop, burner }: { cooktop: string; burner: string }) =>
    `${cooktop}, ${burner}`,
  'survey.water.breaker': 'Breaker',
  'survey.water.rating': 'Rating',
  'survey.water.voltage': 'Voltage',
  'survey.water.go-off': ({ name }: Name) => `Go off with ${name}`,
  'survey.water.circuit': 'Circuit',
  'survey.water.circuit.named': ({ name, ratingA }: { name: string; ratingA: number }, f) =>
    `${name}, ${f.shortNumber(ratingA)} A`,

  'survey.air.hood': 'Hood',
  'survey.air.hood.heading': 'Where does the air go?',
  'survey.air.over-stove': 'Over the stove there is',
  'survey.air.flow': 'Flow by its manual',
  'survey.air.room': 'Room and window',
  'survey.air.room.heading': 'How large is the room?',
  'survey.air.floor': 'Floor',
  'survey.air.floor.hint': 'With whatever is open to it.',
  'survey.air.ceiling': 'Ceiling',
  'survey.air.window': 'The window',
  'survey.air.window.opens': 'One that opens',
  'survey.air.window.none': 'None opens',
  'survey.air.window.note': 'Only what opens counts.',
  'survey.air.outdoor.heading': 'How warm is it outside?',
  'survey.air.outdoor': 'Outside, on the day',
  'survey.air.outdoor.expected': 'by place and season',
  'survey.air.outdoor.hint': 'Empty: a usual afternoon at your place on the day you begin.',

  'survey.air.opening': 'Opening',
  'survey.air.height': 'Its height',

  'survey.people.purpose': 'Purpose and custom',
  'survey.people.purpose.heading': 'Why is it purged, and by which custom?',
  'survey.people.why': 'Why',
  'survey.people.custom': 'Custom',
  'survey.people.customs-differ':
    'Customs differ. The plan follows the custom you chose; your rabbi’s word replaces it.',
  'survey.people.own-custom': 'Make a custom of our own',
  'survey.people.own-custom.change': ({ name }: Name) => `Change “${name}”`,
  'survey.people.days': 'Hands and days',
  'survey.people.days.heading': 'Who works, and when not?',
  'survey.people.working': 'People working at once',
  'survey.people.rest-days': 'Sabbath and festivals',
  'survey.people.lighting': 'Candles lit before sunset',
  'survey.people.lanes': 'Lanes of a pour',
  'survey.people.pour-until': 'Pour until',
  'survey.people.arm': 'Reach over a counter’s edge, pouring',
} satisfies Section;
