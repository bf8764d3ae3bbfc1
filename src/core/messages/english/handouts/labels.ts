import type { Message, Section } from '../../model/message.ts';

/** Labels to cut out, and what they cannot settle. */
export const labels = {
  'handouts.labels.about':
    'Cut along the dashed lines. A letter, a word and a pattern each tell what it is: any printer will do.',
  'handouts.labels.paper': 'Paper',
  'handouts.labels.paper.a4': 'A4',
  'handouts.labels.paper.letter': 'Letter',
  'handouts.labels.head': (
    { kitchen, page, pages }: { kitchen: string; page: number; pages: number },
    f,
  ) => `${kitchen}: labels, page ${f.number(page)} of ${f.number(pages)}`,
  'handouts.labels.letter.meat': 'M',
  'handouts.labels.letter.dairy': 'D',
  'handouts.labels.letter.pareve': 'P',
  'handouts.labels.resting': 'RESTING',
  'handouts.labels.do-not-heat': 'do not heat, until',
  'handouts.labels.planned': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `Planned: ${f.shortMoment(wallMs, zone)}. Write the hour that the screen tells.`,
  'handouts.labels.write': 'Write the hour that the screen tells.',
  'handouts.labels.none': 'There is nothing to label yet.',
  'handouts.labels.undecided': ({ names }: { names: readonly string[] }, f) =>
    `No label, since nobody said what it is for: ${f.list(names)}. Tell it under Kitchen.`,
  'handouts.labels.clashes': 'What labels do not settle',
  'handouts.clash.only-one': (
    { kind, name, marking }: { kind: Message; name: string; marking: Message },
    f,
  ) =>
    `One ${f.say(kind)} for meat and dairy: ${name} (${f.say(marking)}). Ask your rabbi how both use it.`,
  'handouts.clash.none-for': (
    { kind, names, marking }: { kind: Message; names: readonly string[]; marking: Message },
    f,
  ) => `No ${f.say(kind)} is marked ${f.say(marking)}: ${f.list(names)}.`,
  'handouts.clash.one-range': ({ oven, cooktop }: { oven: string; cooktop: string }) =>
    `${oven} and ${cooktop} are one appliance, one for meat and one for dairy: ask your rabbi what that asks for.`,
} satisfies Section;
