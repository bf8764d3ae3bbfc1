import type { Message, Section } from '../../model/message.ts';

/** Names of customs, covers and terms, and how answers and lists of questions are told. */
export const told = {
  'custom.name.ashkenazic': 'Ashkenazic',
  'custom.name.sephardic': 'Sephardic',
  'custom.name.own': ({ name, base, rows }: { name: string; base: Message; rows: number }, f) =>
    rows === 0
      ? `${name} (${f.say(base)}, unchanged)`
      : `${name} (${f.say(base)}, with ${f.number(rows)} ${f.plural(rows, { one: 'row', other: 'rows' })} of our own)`,
  'custom.cover.rack-in-bowls': 'a rack on the floor of each bowl',
  'custom.cover.basin-on-rack': 'a basin standing on a rack',
  'custom.cover.adhesive-paper': 'washable adhesive paper on shelves, plastic sheet in drawers',
  'custom.cover.shelf-paper': 'shelf paper or plastic sheet',
  'custom.cover.liner-with-holes': 'shelf liner with holes, so that cold air can pass',
  'custom.cover.insert': 'an insert for the food, or keep all food in it covered',
  'custom.cover.plastic-sheet': 'thick plastic sheet, cut to size',
  'custom.cover.heat-proof-liner': 'heat-proof liner the maker allows',
  'custom.cover.cut-to-size': 'a liner or cover cut to size',
  'custom.term.hagalah': 'hagalah',
  'custom.term.hagalah-by-steam': 'hagalah by steam',
  'custom.term.irui': 'irui',
  'custom.term.libun-gamur': 'libun gamur',
  'custom.term.libun-kal': 'libun kal',
  'custom.term.milui-v-irui': 'milui v’irui',
  'custom.sources': ({ sources }: { sources: readonly Message[] }, f) =>
    sources.map((source) => f.say(source)).join('; '),
  'custom.state.read': 'read in the text',
  'custom.state.inference': 'no text says it in so many words',
  'custom.state.later-authorities': 'later authorities, not read here',
  'custom.state.common-practice': 'as it is done',
  'custom.state.memory': 'cited from memory, not yet checked',
  'custom.state.said': 'said to this household',
  'custom.rest.ask': 'Must it rest 24 hours before a heat that burns out what was absorbed?',
  'custom.rest.why':
    'Water would be taken up again; fire consumes and draws nothing out (inferred from the Siftei Kohen, Yoreh Deah 121:17). Without the rest the plan may be a day shorter.',
  'custom.rest.until-then': 'Let it rest 24 hours first.',
  'custom.rest.answer-1': 'Let it rest 24 hours.',
  'custom.rest.answer-2': 'No rest is needed before such heat.',
  'custom.reasons': ({ row, rule }: { row: Message; rule: Message }, f) =>
    `${f.say(row)} ${f.say(rule)}`,
  'custom.said-by': ({ saidBy, saidOn }: { saidBy: string; saidOn: string }) =>
    `${saidBy}, ${saidOn}`,
  'custom.own-row.said-by': ({
    custom,
    saidBy,
    saidOn,
  }: {
    custom: string;
    saidBy: string;
    saidOn: string;
  }) => `a row of our own custom “${custom}”: ${saidBy}, ${saidOn}`,
  'custom.said.reason': 'So it was said for this fixture, in place of the row of the custom.',
  'custom.said.would-change': 'Another answer to the same question changes it.',
  'custom.own-row.would-change': 'Take this row of your own custom back to change it.',
  'custom.own-row.burners': ({ burners, why }: { burners: readonly Message[]; why: string }, f) =>
    `Burners of the type ${burners.map((burner) => f.say(burner)).join(', ')}, by your own custom: ${why}`,

  'custom.inside-passover.reason':
    'It is Passover: nothing is purged by water until it is over. Cleaned, then covered or closed up.',
  'custom.inside-passover.would-change': 'Purge it before Passover, or after it.',
  'custom.inside-passover.ask':
    'It has rested 24 hours: may it be purged by water inside Passover?',
  'custom.inside-passover.why':
    'Rema 452:1 lets nothing be purged by water in Passover. Some later authorities let it be after a rest of 24 hours.',
  'custom.inside-passover.until-then': 'Until then it is covered or closed up.',
  'custom.pour-order.ask':
    'In which order is the sink poured: spout, rim, walls, floor, or the floor first and then upwards?',
  'custom.pour-order.why':
    'Those who do it differ. From the top down nothing runs over a place that is done; but what runs down reaches the floor cooled, before its own stream does.',
  'custom.pour-order.until-then':
    'From the top down, the drain open, walls and floor wiped dry before the stream comes to them.',
  'custom.pour-order.down': 'From the top down: spout, rim, walls, floor.',
  'custom.pour-order.upwards': 'The floor first, then upwards: walls, rim, spout.',
  'custom.questions.title': ({ kitchen }: { kitchen: string }) =>
    `Questions for our rabbi: ${kitchen}`,
  'custom.questions.custom': ({ custom }: { custom: Message }, f) => `Custom: ${f.say(custom)}`,
  'custom.questions.standing':
    'Customs differ. The plan follows the custom we chose; the answers below replace it.',
  'custom.questions.to-ask': 'To ask',
  'custom.questions.to-look': 'We look ourselves',
  'custom.questions.answered': 'Answered',
  'custom.questions.numbered': (
    { number, fixture, ask }: { number: number; fixture: string; ask: Message },
    f,
  ) => `${f.number(number)}. ${fixture}: ${f.say(ask)}`,
  'custom.questions.until-then': ({ untilThen }: { untilThen: Message }, f) =>
    `Until it is answered: ${f.say(untilThen)}`,
  'custom.questions.answer-line': 'Answer: ______________________________',
  'custom.questions.said-line': 'Said by: ________________  on: ________',
  'custom.questions.look': ({ fixture, ask }: { fixture: string; ask: Message }, f) =>
    `- ${fixture}: ${f.say(ask)}`,
  'custom.questions.answered-line': (
    {
      fixture,
      ask,
      answer,
      saidBy,
      saidOn,
    }: { fixture: string; ask: Message; answer: string; saidBy: string; saidOn: string },
    f,
  ) => `- ${fixture}: ${f.say(ask)} ${answer} (${saidBy}, ${saidOn})`,
} satisfies Section;
