import type { Section } from '../../model/message.ts';

type Bracket = { bracket: string };

/** A text that is no kitchen file: another kind of file, or JSON that breaks off. */
export const text = {
  'problems.file.one-object': 'one object in { }',
  'problems.file.open': 'Open a *.kitchen.json file.',
  'problems.file.other-kind': 'This is another kind of file: open a *.kitchen.json file.',
  'problems.file.versions': ({ version }: { version: number }) => `${version} or lower`,
  'problems.file.newer-app': ({ version }: { version: number }) =>
    `A newer app wrote this file: bring this app up to date, or save the kitchen there as version ${version}.`,
  'problems.file.megabytes': ({ megabytes }: { megabytes: number }, f) =>
    `${f.number(megabytes, 1)} MB`,
  'problems.file.one-megabyte': 'at most 1 MB',
  'problems.file.words-only': 'A kitchen file holds words and numbers only.',
  'problems.file.empty': 'an empty file',
  'problems.file.kitchen': 'a kitchen file',
  'problems.file.choose': 'Choose another file, or begin with a demo kitchen.',
  'problems.twice.found': 'this field a second time',
  'problems.twice.allowed': 'each field once',
  'problems.twice.advice': 'Take one of the two out.',

  'problems.json.end': 'the end of the file',
  'problems.json.one-kitchen': 'One kitchen a file: take out what stands after the last }.',
  'problems.json.deepest': ({ most }: { most: number }) =>
    `at most ${most} brackets inside each other`,
  'problems.json.close-brackets': 'Close brackets that were left open.',
  'problems.json.number': 'a plain number',
  'problems.json.plain-number': 'Write it like 12 or 0.5, without a unit or a leading zero.',
  'problems.json.value': 'a value: "text", a number, true, false, [ or {',
  'problems.json.breaks-off': 'The file breaks off: close every { and [ that was opened.',
  'problems.json.comma-or-value': 'Take out the comma before it, or write the missing value.',
  'problems.json.notes': 'Notes go into a "comment" field.',
  'problems.json.straight-quotes': 'Use straight double quotes " round text.',
  'problems.json.zero': 'Write a zero before the point: 0.5.',
  'problems.json.plus': 'Leave the plus sign out.',
  'problems.json.quote-text': 'Put text between double quotes ".',
  'problems.json.name': 'the name of a field in quotes',
  'problems.json.colon': 'a colon :',
  'problems.json.put-colon': ({ name }: { name: string }) =>
    `Put a colon between "${name}" and its value.`,
  'problems.json.comma': 'Take out the comma before it.',
  'problems.json.decimals': 'Write decimals with a point, not a comma: 1.5.',
  'problems.json.quote-name': 'Put the name of the field between double quotes ".',
  'problems.json.comma-or-bracket': ({ bracket }: Bracket) => `a comma or ${bracket}`,
  'problems.json.close-list': 'The file breaks off: close the list with ].',
  'problems.json.close-object': 'The file breaks off: close the object with }.',
  'problems.json.next-item': 'Put a comma before it, or close the list with ].',
  'problems.json.next-field': 'Put a comma before it, or close the object with }.',
  'problems.json.closing-quote': 'the closing quote "',
  'problems.json.close-text': 'Text ends on the line it began: close it with a ".',
  'problems.json.escape': '\\" \\\\ \\/ \\n \\t or \\u with four digits',
  'problems.json.backslash': 'Write a backslash as \\\\.',
} satisfies Section;
