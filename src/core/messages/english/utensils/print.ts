import type { Band } from '../../../units/index.ts';
import type { Message, Section } from '../../model/message.ts';

/** How the utensils are told in print. */
export const print = {
  'utensils.title': ({ kitchen }: { kitchen: string }) => `Utensils of ${kitchen}`,
  'utensils.none': 'No utensils are told in this kitchen.',
  'utensils.section.methods': 'What is done with each',
  'utensils.section.questions': 'To ask or to look at',
  'utensils.section.rules': 'How it is done',
  'utensils.section.batches': 'In the pot',
  'utensils.section.put-away': 'Put away or replace',
  'utensils.section.mikveh': 'To the mikveh afterwards',

  'utensils.count': ({ count, name }: { count: number; name: Message }, f) =>
    `${f.number(count)} × ${f.say(name)}`,
  'utensils.line': ({ what, method, term }: { what: Message; method: Message; term: string }, f) =>
    `${f.say(what)}: ${f.say(method)}${term === '' ? '' : ` (${term})`}.`,
  'utensils.why': (
    { reason, source, state }: { reason: Message; source: Message; state: Message },
    f,
  ) => `${f.say(reason)} [${f.say(source)}; ${f.say(state)}]`,
  'utensils.use-assumed': 'How it was used is not told: taken for the usual use.',
  'utensils.question': ({ what, ask }: { what: Message; ask: Message }, f) =>
    `${f.say(what)}: ${f.say(ask)}`,
  'utensils.answers': ({ answers }: { answers: readonly Message[] }, f) =>
    answers.map((answer) => f.say(answer)).join(' / '),
  'utensils.rule': ({ text, source }: { text: Message; source: Message }, f) =>
    `${f.say(text)} [${f.say(source)}]`,

  'utensils.pot': (
    {
      name,
      volumeL,
      boilingC,
      firstS,
    }: {
      name: Message;
      volumeL: number;
      boilingC: number;
      firstS: Band;
    },
    f,
  ) =>
    `${f.say(name)}, ${f.shortMeasure(volumeL, 'L')}; water boils at ${f.measure(boilingC, '°C', 1)} here, after ${f.about(firstS.typical)}.`,
  'utensils.no-pot':
    'No pot on a burner is told that boils water for this: borrow or buy one that is only for the purge.',
  'utensils.unfit': ({ what, leastPotL }: { what: Message; leastPotL: number }, f) =>
    `${f.say(what)}: does not go under in it, not even by halves. It needs a pot of about ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.pot-needed': ({ what, leastPotL }: { what: Message; leastPotL: number }, f) =>
    `${f.say(what)}: a pot of at least ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.boil-over': ({ what, leastPotL }: { what: Message; leastPotL: number }, f) =>
    `${f.say(what)}: does not go under in it. Fill it to the brim, boil it and let it boil over its rim; where its outside touched hot food it needs a pot of about ${f.measure(leastPotL, 'L', 0, 'up')}.`,
  'utensils.fresh-water': 'Pour the water away, purge the pot again, boil fresh water.',
  'utensils.batch': (
    {
      number,
      group,
      items,
      fillL,
    }: {
      number: number;
      group: Message;
      items: readonly Message[];
      fillL: number;
    },
    f,
  ) =>
    `Batch ${f.number(number)}, ${f.say(group)}: ${f.list(items.map((item) => f.say(item)))}. Fill ${f.fill(fillL)}.`,
  'utensils.batch.tongs': ({ dips }: { dips: number }, f) =>
    `One by one with tongs: under, out, turned, under again (${f.number(dips)} dips).`,
  'utensils.batch.net': 'Loose in a net, shaken under the water so that it comes everywhere.',
  'utensils.batch.halves': ({ dips }: { dips: number }, f) =>
    `One by one, held at one end: one half under a little past the middle, then the other (${f.number(dips)} dips).`,
  'utensils.batch.wait': ({ mixedC, recoverS }: { mixedC: Band; recoverS: Band }, f) =>
    `The water falls to about ${f.measure(mixedC.typical, '°C', 1)}; it boils again after ${f.about(recoverS.typical)}. Wait for that with the things under water.`,
} satisfies Section;
