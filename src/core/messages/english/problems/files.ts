import type { Message, Section } from '../../model/message.ts';

type Closed = { open: string };
type Most = { found: number; most: number };

/** Files, imports and kept kitchens that cannot be read: told on the pages beside the run. */
export const files = {
  'shell.calibration-not-read': ({ why }: { why: Message }, f) =>
    `What earlier runs taught could not be read, so the plan does without it. ${f.say(why)}`,
  'shell.kitchens-not-read': ({ why }: { why: Message }, f) =>
    `The kitchens kept here could not be read. ${f.say(why)}`,

  'shell.unread': 'Not known yet',
  'shell.unread.about':
    'A run may be kept here: it is taken up by itself as soon as it can be read. If this lasts, close other pages of this app, then start browser and tablet anew. A kitchen can be planned meanwhile, but nothing of it is kept.',

  'shell.file.too-large': ({
    name,
    bytes,
    mostBytes,
  }: {
    name: string;
    bytes: number;
    mostBytes: number;
  }) => `${name} has ${bytes} bytes; allowed: up to ${mostBytes}. Choose a smaller file.`,
  'shell.file.unreadable': ({ name, why }: { name: string; why: string }) =>
    `${name} cannot be read (${why}). Choose it again.`,
  'shell.import.not-whole': ({ seq, problem }: { seq: number; problem: Message }, f) =>
    `Nothing was brought in: the file is not whole at record ${seq}. ${f.say(problem)} Save the run again on the other tablet, and choose that file.`,
  'shell.import.no-plan': 'The file does not begin with a plan. Choose another.',
  'shell.import.plan': ({ problem }: { problem: string }) =>
    `The plan in the file is not safe to follow: ${problem}. Make the plan anew.`,
  'shell.import.amendment': 'A change of the plan in the file cannot be read. Make the plan anew.',
  'shell.import.records': ({ found, most }: Most, f) =>
    `The file has ${f.number(found)} records; allowed: up to ${f.number(most)}. Choose a file that this app saved.`,
  'shell.import.steps': ({ found, most }: Most, f) =>
    `The plan in the file has ${f.number(found)} steps; allowed: up to ${f.number(most)}. Make the plan anew.`,
  'shell.import.more': ({ more }: { more: number }, f) =>
    `The plan in the file has ${f.number(more)} more such faults.`,
  'shell.import.stranger': ({ seq, name }: { seq: number; name: string }) =>
    `Record ${seq} in the file tells of “${name}”, which its run does not have. Save the run again on the other tablet, and choose that file.`,
  'shell.import.open-run': ({ open }: Closed) =>
    `The run in the file is not closed, and the run “${open}” is open here; allowed: one open run. Close it first, then bring the file in.`,
  'shell.kitchen.both-kept': ({ name, copy }: { name: string; copy: string }) =>
    `“${name}” was changed on another page meanwhile; that stays. What was changed here is kept as “${copy}”.`,
  'shell.recheck.run-open':
    'A run is open. Tell it there, with “Something happened”, or close it first.',
  'shell.plan.beyond-models': ({ why }: { why: string }) => `No plan can be made: ${why}`,
} satisfies Section;
