import type { Message, Section } from '../../model/message.ts';

type Name = { name: string };
type Fixture = { fixture: string };

/** What was done to a kitchen, as undo and redo call it. */
export const done = {
  'survey.done.changed': 'Changed',
  'survey.done.added': ({ what }: { what: Message }, f) => `${f.say(what)} added`,
  'survey.done.thing-changed': ({ name }: Name) => `${name} changed`,
  'survey.done.taken-out': ({ name }: Name) => `${name} taken out`,
  'survey.done.moved': ({ fixture }: Fixture) => `${fixture} moved`,
  'survey.done.resized': ({ fixture }: Fixture) => `${fixture} resized`,
  'survey.done.turned': ({ fixture }: Fixture) => `${fixture} turned`,
  'survey.done.copied': ({ fixture }: Fixture) => `${fixture} copied`,
  'survey.done.off-plan': ({ fixture }: Fixture) => `${fixture} off the plan`,
  'survey.done.onto-plan': ({ fixture }: Fixture) => `${fixture} onto the plan`,
  'survey.done.run-drawn': 'Counter along the walls drawn',
  /** A field of a fixture, by its name or by what was chosen: "Sink: granite". */
  'survey.done.told': ({ fixture, what }: { fixture: string; what: Message }, f) =>
    `${fixture}: ${f.say(what)}`,
  'survey.done.burner-changed': ({ cooktop, burner }: { cooktop: string; burner: string }) =>
    `${cooktop}, ${burner}: changed`,
  'survey.done.burner-told': 'Burner told',
  'survey.done.circuit-told': 'Circuit told',
  'survey.done.circuit-added': 'Circuit added',
  'survey.done.name': 'Name changed',
  'survey.done.country': ({ country }: { country: Message }, f) => `Country: ${f.say(country)}`,
  'survey.done.town': ({ town }: { town: string }) => `Place: ${town}`,
  'survey.done.land': 'Land changed',
  'survey.done.altitude': 'Altitude changed',
  'survey.done.tap': 'Tap water changed',
  'survey.done.mains': 'Mains changed',
  'survey.done.floor': 'Floor changed',
  'survey.done.ceiling': 'Ceiling changed',
  'survey.done.window': 'Window changed',
  'survey.done.hood-flow': 'Hood flow changed',
  'survey.done.people': 'People changed',
  'survey.done.rest-days': 'Rest days changed',
  'survey.done.lighting': 'Lighting changed',
  'survey.done.lanes': 'Lanes changed',
  'survey.done.own-custom': 'Our own custom changed',

  'survey.what.corner-added': 'corner added',
  'survey.what.corner-moved': 'corner moved',
  'survey.what.corner-taken-out': 'corner taken out',
  'survey.what.wall': 'wall',
  'survey.what.name': 'name',
  'survey.what.backsplash': 'backsplash',
  'survey.what.bowl': 'bowl',
  'survey.what.rim': 'rim',
  'survey.what.tap': 'tap',
  'survey.what.sprayer': 'sprayer',
  'survey.what.drainboard': 'drainboard',
  'survey.what.shelves': 'shelves',
  'survey.what.power': 'power',
  'survey.what.circuit': 'circuit',
  'survey.what.circuit-told': 'circuit told',
  'survey.what.cycle': 'cycle',
  'survey.what.racks': 'racks',
  'survey.what.range': 'range',
  'survey.what.burner-added': 'burner added',
  'survey.what.burner-taken-out': 'burner taken out',
} satisfies Section;
