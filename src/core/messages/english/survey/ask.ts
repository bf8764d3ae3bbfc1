import type { Section } from '../../model/message.ts';

type Fixture = { fixture: string };
type Vessel = { vessel: string };

/** What is still to tell, and why the plan wants to know. */
export const ask = {
  'survey.ask.material': ({ fixture }: Fixture) => `${fixture}: what is it made of?`,
  'survey.ask.material.why': 'Whether it can be purged at all, and how, depends on it.',
  'survey.ask.lining': ({ fixture }: Fixture) => `${fixture}: what is it lined with inside?`,
  'survey.ask.lining.why': 'Whether it can be purged at all depends on it.',
  'survey.ask.condition': ({ fixture }: Fixture) => `${fixture}: is it smooth under a fingernail?`,
  'survey.ask.condition.why':
    'Water does not reach into cracks and deep scratches; the plan asks until it is told.',
  'survey.ask.cycle': ({ fixture }: Fixture) =>
    `How many minutes does the cleaning cycle of ${fixture} take?`,
  'survey.ask.cycle.why': 'It stands in the manual; until then a usual length is planned.',
  'survey.ask.circuit': ({ fixture }: Fixture) => `Which circuit feeds ${fixture}?`,
  'survey.ask.circuit.why': 'Its load is not watched until the breaker is known.',
  'survey.ask.vessels': 'What boils the water?',
  'survey.ask.vessels.why': 'Nothing can be poured without a kettle, urn or pot.',
  'survey.ask.burner': ({ vessel }: Vessel) => `Which burner does ${vessel} stand on?`,
  'survey.ask.burner.why': 'It boils only as fast as its burner heats.',
  'survey.ask.sockets': ({ vessel }: Vessel) => `Which sockets is ${vessel} plugged into?`,
  'survey.ask.sockets.why': 'Two strong kettles on one breaker trip it.',
  'survey.ask.place': 'Where is the kitchen?',
  'survey.ask.place.why': 'Water boils cooler in the mountains, and the day has its times.',
  'survey.ask.hood': ({ hood }: { hood: string }) => `Does ${hood} blow outside?`,
  'survey.ask.hood.why':
    'How many burners may glow at once depends on the air; until then it counts as no hood.',
  'survey.ask.any-hood': 'Is there a hood over the stove, and does it blow outside?',
  'survey.ask.window': 'Is there a window that opens?',
  'survey.ask.window.why':
    'Until it is told the plan reckons without one, and may find the room too hot or its air too bad.',
  'survey.ask.hood-flow': 'How much air does the hood move?',
  'survey.ask.hood-flow.why': 'It stands in the manual; until then it counts as no hood.',
  'survey.ask.open-sides': ({ fixture }: { fixture: string }) =>
    `At which sides of ${fixture} can you stand?`,
  'survey.ask.open-sides.why': 'It is poured from there; until then all its sides count as open.',
  'survey.ask.fixtures': 'What stands in the kitchen?',
  'survey.ask.fixtures.why': 'There is nothing to purge yet.',
} satisfies Section;
