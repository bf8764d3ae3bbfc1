import type { Message, Section } from '../../model/message.ts';
import type { Range } from './range.ts';

/** Where a problem stands, what a value is and what one field may hold. Numbers are as the file writes them. */
export const fields = {
  'problems.told': (
    {
      where,
      found,
      allowed,
      advice,
    }: { where: Message; found: Message; allowed: Message; advice: Message },
    f,
  ) => `${f.say(where)}: found ${f.say(found)}; allowed: ${f.say(allowed)}. ${f.say(advice)}`,
  'problems.where.file': 'file',
  'problems.where.field': ({ path }: { path: string }) => path,
  'problems.where.line': ({ line, field }: { line: number; field: Message }, f) =>
    `Line ${line}, ${f.say(field)}`,
  'problems.where.letter': ({ line, column }: { line: number; column: number }) =>
    `line ${line}, column ${column}`,

  'problems.value': ({ json }: { json: string }) => json,
  'problems.found.missing': 'nothing (it is missing)',
  'problems.found.none': 'none',
  'problems.found.list': ({ count }: { count: number }) => `a list of ${count}`,
  'problems.found.object': 'an object in { }',
  'problems.did-you-mean': ({ name }: { name: string }) => `Did you mean "${name}"?`,

  'problems.number.allowed': ({ least, most }: Range) => `a number from ${least} to ${most}`,
  'problems.number.bare':
    'Write the number without quotes and without a unit, with a point for decimals.',
  'problems.number.add': 'Add this field.',
  'problems.number.plain': 'Write a plain number.',
  'problems.number.more': ({ least, most }: Range) =>
    `Enter more, in the unit at the end of the name (${least} to ${most}).`,
  'problems.number.less': ({ least, most }: Range) =>
    `Enter less, in the unit at the end of the name (${least} to ${most}).`,
  'problems.whole.allowed': ({ least, most }: Range) => `a whole number from ${least} to ${most}`,
  'problems.whole.round': ({ to }: { to: number }) => `Round it: ${to}.`,
  'problems.text.allowed': ({ least, most }: Range) =>
    `text of ${least} to ${most} letters in quotes`,
  'problems.text.seen': 'text without control codes and without marks that turn or pile up letters',
  'problems.text.look': 'It was read without them: look whether it says what it should.',
  'problems.text.write': 'Write some words in quotes.',
  'problems.text.shorten': ({ by }: { by: number }, f) =>
    `Shorten it by ${by} ${f.plural(by, { one: 'letter', other: 'letters' })}.`,
  'problems.text.blank': 'Write something here.',
  'problems.choice.advice': 'Choose one of these.',
  'problems.yes-no.allowed': 'true or false',
  'problems.yes-no.advice': 'Write true or false, without quotes.',
  'problems.unknown-field.found': ({ name }: { name: string }) => `the unknown field "${name}"`,
  'problems.unknown-field.more': ({ more }: { more: number }, f) =>
    `${f.number(more)} more unknown ${f.plural(more, { one: 'field', other: 'fields' })}`,
  'problems.unknown-field.allowed': ({ names }: { names: string }) => `the fields ${names}`,
  'problems.unknown-field.advice': 'Take it out; free words go into a comment field.',
  'problems.object.allowed': ({ names }: { names: string }) => `an object in { } with ${names}`,
  'problems.object.advice': 'Write the fields between { and }.',
  'problems.list.allowed': ({ least, most }: Range) => `a list in [ ] of ${least} to ${most}`,
  'problems.list.wrap': 'Put [ and ] round it.',
  'problems.list.write': 'Write a list in [ ].',
  'problems.list.add': ({ count }: { count: number }) => `Add ${count} more.`,
  'problems.list.take-out': 'Take some out.',
  'problems.pair.advice': 'Write two numbers in square brackets: [1, 2].',
  'problems.kind.object': 'an object in { } with a kind',
  'problems.kind.wrap': 'Write it between { and }.',
  'problems.kind.advice': 'Say what it is with one of these words.',
  'problems.id.allowed': ({ least, most }: Range) =>
    `${least} to ${most} letters a to z, digits, - or _, in quotes`,
  'problems.id.advice': 'Use a short name without spaces, such as "sink-left".',
  'problems.date.allowed': 'a date as "yyyy-mm-dd"',
  'problems.date.advice': 'Write the year, the month and the day, such as "2026-03-29".',
  'problems.date.days': ({ last }: { last: number }) => `day 1 to ${last} in that month`,
  'problems.date.look-up': 'Look the date up again.',
  'problems.local-time.allowed':
    'a local day and time as "yyyy-mm-ddThh:mm", of the years 1950 to 2099',
  'problems.local-time.advice':
    'Write the day and the time on the kitchen clock, such as "2026-03-29T20:00".',
  'problems.point.allowed': 'a corner [x, y] in metres',
  'problems.edge.allowed': 'two neighbouring corner numbers [from, to], counted from 0',
  'problems.country.allowed': 'a country as two capital letters (ISO 3166-1)',
  'problems.country.advice': 'Write the two-letter code, such as "US", "GB" or "IL".',
  'problems.zone.quoted': 'an IANA time-zone name in quotes',
  'problems.zone.allowed': 'an IANA time-zone name',
  'problems.zone.advice': 'Write it like "Europe/Paris": area, slash, city.',
  'problems.format.advice': 'This marks a kitchen file; without it the file is another kind.',
  'problems.version.advice': ({ version }: { version: number }) =>
    `Write ${version}: the version of this format.`,
} satisfies Section;
