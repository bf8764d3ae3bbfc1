import type { Section } from '../../model/message.ts';

/** A file with everything in it that cannot be read, or not all of it. */
export const backup = {
  'problems.backup.allowed': ({ format }: { format: string }) =>
    `a file in which this app saved everything (“${format}”)`,
  'problems.backup.no-json': ({ why }: { why: string }) => `a text that breaks off (${why})`,
  'problems.backup.cut':
    'The file is not whole. Choose another, or copy it again from where it was saved.',
  'problems.backup.choose': 'Choose another file.',
  'problems.backup.is-kitchen': 'This is one kitchen: open it under Kitchen.',
  'problems.backup.is-run': 'This is one run: bring it in with the button for a run.',
  'problems.backup.newer-app': 'A newer app wrote this file: bring this app up to date first.',
  'problems.backup.letters': ({ letters }: { letters: number }, f) =>
    `${f.number(letters)} letters`,
  'problems.backup.list': 'a list',
  'problems.backup.most': ({ most }: { most: number }, f) => `at most ${f.number(most)}`,
  'problems.backup.object': 'an object in { }',
  'problems.backup.text': 'a text',
  'problems.backup.moment': 'a moment in milliseconds, from 1970 to 9999',
  'problems.backup.choice': 'a text, a number, true or false',
  'problems.backup.broken': 'It stays out; all that is whole is brought back.',
} satisfies Section;
