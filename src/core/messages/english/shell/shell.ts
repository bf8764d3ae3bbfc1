import type { Message, Section } from '../../model/message.ts';

/** The frame of the app: pages, banners, what the device refuses, files. */
export const shell = {
  'shell.title': 'Glowpour',
  'shell.pages': 'Places',
  'shell.page.kitchen': 'Kitchen',
  'shell.page.plan': 'Plan',
  'shell.page.run': 'Run',
  'shell.page.record': 'Record',
  'shell.theme.night': 'Night colours',
  'shell.theme.day': 'Day colours',

  'shell.reading': 'Reading what is kept here …',
  'shell.save-run': 'Save the run as a file',

  'shell.other-lead': 'Another page on this tablet leads the run.',
  'shell.other-lead.took-over': 'Another page took this run over.',
  'shell.other-lead.beating': 'It leads, writes and sounds; this page only shows the run.',
  'shell.other-lead.unsure':
    'It has not been heard from just now; this page only shows the run, and sounds what is due.',
  'shell.other-lead.silent':
    'It no longer answers. This page sounds what is due; it can take the run over.',
  'shell.other-lead.arm': 'Touch to arm the sound',
  'shell.other-lead.lead': 'Lead it from here',
  'shell.other-lead.only-shows':
    'Another page leads the run; this one only shows it. Lead it from here first.',

  'shell.trouble.storage': 'Not saved.',
  'shell.trouble.read-only': 'Only showing.',
  'shell.trouble.taken-over': 'Only showing.',
  'shell.trouble.unreadable': 'What is stored cannot be read now. Nothing was deleted by this app.',
  'shell.broken': 'This part of the screen failed. The clocks and alarms go on.',
  'shell.broken.note': ({ part, why }: { part: string; why: string }) =>
    `The screen could not show a part of itself (${part}): ${why}`,
  'shell.failed.note': ({ why }: { why: string }) => `Something in the app failed: ${why}`,
  'shell.broken.again': 'Show it again',
  'shell.trouble.failed': 'Something in the app failed.',
  'shell.taken-over': 'Another page took this run over. This one only shows it.',

  'shell.storage.full': 'The device has no room left: free some, or save the run as a file.',
  'shell.storage.refused':
    'The browser does not let this page keep anything: leave private mode, or update.',
  'shell.storage.blocked': 'Another tab holds an older database: close it, then reload.',
  'shell.storage.held':
    'Another page of this app stands still in the midst of writing, and nothing can be read or written beside it: close that page, or the whole browser, then try again.',
  'shell.storage.timeout': 'The device did not answer in time: try again, or reload the page.',
  'shell.storage.lost': 'The database was closed from outside: try again, or reload the page.',
  'shell.storage.gone':
    'The stored run is gone: the browser’s data was cleared. Save the run as a file now.',
  'shell.storage.fenced': 'Another page writes the run now. This one only shows it.',
  'shell.storage.out-of-order':
    'What was to be written does not follow what is stored: reload the page.',
  'shell.storage.unknown': ({ why }: { why: string }) =>
    `The device could not write or read its storage: try again, or save the run as a file. (${why})`,
  'shell.failed': ({ why }: { why: string }) =>
    `The app failed at this: try again, or reload the page. (${why})`,
  'shell.choice-not-kept': ({ why }: { why: Message }, f) =>
    `This choice holds until the page is closed; it could not be kept. ${f.say(why)}`,
} satisfies Section;
