import type { Message, Section } from '../model/message.ts';

/** What the plan command says beside the plan it prints. Names of options and files stay as they are typed. */
export const terminal = {
  'terminal.use':
    'Use: npm run --silent plan -- FILE [--json | --calendar | --covers | --utensils | --advice [--json]] [--start=2026-03-29T18:00]',
  'terminal.option.unknown': ({ option }: { option: string }) =>
    `${option} is no option; allowed: --json, --calendar, --covers, --utensils, --advice, --start=TIME, --version.`,
  'terminal.starts': ({ found }: { found: number }, f) =>
    `Found ${f.number(found)} starts; allowed: one. Remove the others.`,
  'terminal.files': ({ found }: { found: number }, f) =>
    `Found ${f.number(found)} files; allowed: one.`,
  'terminal.several-forms': ({ forms }: { forms: string }) =>
    `Found ${forms}; allowed: one of them.`,
  'terminal.start.empty': '--start has no time; allowed: --start=TIME.',
  'terminal.calendar.start': '--calendar has no start; allowed: with --start=TIME.',
  'terminal.calendar.place': ({ file }: { file: string }) =>
    `${file} has no calendar: place: found none; allowed: latitude, longitude, zone, land. Tell where the kitchen is.`,
  'terminal.no-place':
    'The kitchen file tells no place: from --start come no times of day, no rest days and no deadline, and all counts from the beginning. An hour that advice names is UTC. Add place to the file.',
  'terminal.calendar.empty': ({ file }: { file: string }) =>
    `${file} has no calendar: nothing in it rests or is purged. Leave --calendar away.`,
  'terminal.refused.problems': ({ file, problems }: { file: string; problems: number }, f) =>
    `${file} cannot be planned: ${f.number(problems)} ${f.plural(problems, { one: 'problem', other: 'problems' })}.`,
  'terminal.refused.empty': ({ file }: { file: string }) =>
    `${file} cannot be planned: fixtures: found none; allowed: at least one. Describe what is in the kitchen.`,
  'terminal.refused': ({ file, why }: { file: string; why: string }) =>
    `${file} cannot be planned: ${why}`,
  'terminal.warning': ({ warning }: { warning: Message }, f) => `Look at this: ${f.say(warning)}`,
  'terminal.unsound': ({ problem }: { problem: string }) => `The plan does not hold: ${problem}.`,
  'terminal.file.missing': 'no such file',
  'terminal.file.folder': 'a folder',
  'terminal.file.forbidden': 'a file that may not be read',
  'terminal.file.allowed': 'a *.kitchen.json file that can be read',
  'terminal.file.unreadable': (
    { path, found, allowed }: { path: string; found: Message; allowed: Message },
    f,
  ) => `${path}: found ${f.say(found)}; allowed: ${f.say(allowed)}. Check the name.`,
} satisfies Section;
