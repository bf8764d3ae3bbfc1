import type { Message, Section } from '../../model/message.ts';

/** Round the pages, where no run is open: what is told above them, and what stands in their place. */
export const frame = {
  'shell.open-run': 'A run is open; its clocks go on.',
  'shell.open-run.back': 'Back to the run',
  'shell.update': 'A newer version is ready.',
  'shell.update.take': 'Use it now',
  'shell.update.run-open':
    'A run is open on this tablet. The newer version can be used once it is closed.',
  'shell.lost-run': ({ name, when }: { name: string; when: Message }, f) =>
    `The run “${name}” of ${f.say(when)} is gone from this browser.`,
  'shell.lost-run.about':
    'The browser emptied what it kept for this app. If the run was saved as a file, bring it in under Record. If not, note now what was done and when each rest began.',
  'shell.lost-run.dismiss': 'I have read it',
  'shell.put-aside.about':
    'This run cannot go on here. Save it as a file first. Put aside, it counts as ended by a fault: what is written of it stays as it is, under Record, and a new run can begin.',
  'shell.put-aside.hot':
    'Turn off by hand whatever is hot: burners, oven, kettles. No press is taken here, not even Stop; once it is put aside, nothing tells what is hot and no clock calls.',
  'shell.put-aside': 'Put this run aside',
  'shell.put-aside.sure': 'Put this run aside? It is not led here any more.',
  'shell.put-aside.keep': 'Leave it open',
  'shell.put-aside.do': 'Put it aside',
  'shell.working': 'Working out the plan …',
  'shell.working.here': 'The page may stand still for a moment.',
  'shell.no-page.kitchen': 'No kitchen yet',
  'shell.no-page.kitchen.about': 'Choose a kitchen first; its plan is worked out at once.',
  'shell.no-page.kitchen.go': 'Go to the kitchen',
  'shell.no-page.run': 'No run yet',
  'shell.no-page.run.about': 'A run starts from the plan of a kitchen.',
  'shell.no-page.run.go': 'Go to the plan',
} satisfies Section;
