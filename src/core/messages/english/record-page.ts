import type { Formatter, Message, Section } from '../model/message.ts';

type Measured = { name: string; takesS: number; plannedS: number };

function from(count: number, f: Formatter): string {
  return `from ${f.number(count)} ${f.plural(count, { one: 'report', other: 'reports' })}`;
}

/** The Record page around the report itself. */
export const recordPage = {
  'record-page.title': 'Record',
  'record-page.none': 'No run yet. What you do in a run is kept here.',
  'record-page.list-zone': ({ zone }: { zone: string }) =>
    `Begun, by the clock of this tablet (${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}):`,
  'record-page.run-status': (
    { openedWallMs, zone, status }: { openedWallMs: number; zone: string; status: string },
    f,
  ) => `${f.shortMoment(openedWallMs, zone)}, ${status}`,
  'record-page.status.open': 'open',
  'record-page.status.closed': 'closed',
  'record-page.status.completed': 'completed',
  'record-page.status.failed': 'failed',
  'record-page.status.stopped': 'stopped',
  'record-page.region': 'Record of the run',
  'record-page.print': 'Print',
  'record-page.save-text': 'Save as text',
  'record-page.save-calendar': 'Save what lies ahead for a calendar',
  'record-page.save-run': 'Save the run as a file',
  'record-page.import': 'Bring in a run from a file',
  'record-page.history': 'What happened to a place over the runs',
  'record-page.history.reading': 'Reading the runs of this kitchen…',
  'record-page.history.place': 'Place',
  'record-page.history.nothing': 'No run did anything with it.',
  'record-page.history.run': (
    {
      wallMs,
      zone,
      purpose,
      status,
    }: { wallMs: number; zone: string; purpose: string; status: string },
    f,
  ) => `${f.date(wallMs, zone)}, ${purpose}, ${status}`,
  'record-page.history.rested': ({ rest }: { rest: Message }, f) => `Rested: ${f.say(rest)}`,
  'record-page.everything': 'Everything in one file',
  'record-page.everything.about':
    'All kitchens, runs, ticks and choices of this tablet, to keep elsewhere. What is brought back is added: nothing that is here is changed.',
  'record-page.everything.save': 'Save everything to one file',
  'record-page.everything.bring-back': 'Bring it back from such a file',
  'record-page.restored': (
    { kitchens, runs, same }: { kitchens: number; runs: number; same: number },
    f,
  ) =>
    `Brought back: ${f.number(kitchens)} ${f.plural(kitchens, { one: 'kitchen', other: 'kitchens' })} and ${f.number(runs)} ${f.plural(runs, { one: 'run', other: 'runs' })}.${same > 0 ? ` ${f.number(same)} ${f.plural(same, { one: 'was', other: 'were' })} here already.` : ''}`,
  'record-page.restored.left': ({ count }: { count: number }, f) =>
    `Not brought back, ${f.number(count)}:`,
  'record-page.restored.run': (
    { path, name, why }: { path: string; name: string; why: Message },
    f,
  ) => `${path} (${name}): ${f.say(why)}`,

  'record-page.damaged': 'The journal is damaged; what follows in it is not told.',
  'record-page.no-digest': 'No digest: this browser works one out on a safe connection only.',
  'record-page.moments': 'Everything, moment by moment',
  'record-page.picture': ({ places }: { places: readonly Message[] }, f) =>
    `The kitchen from above. ${places.map((place) => f.say(place)).join('; ')}.`,
  'record-page.picture.place': (
    { number, name, state }: { number: number; name: string; state: Message },
    f,
  ) => `${f.number(number)} ${name}: ${f.say(state)}`,
  'record-page.state.heated': 'purged by heat',
  'record-page.state.poured': 'purged by boiling water',
  'record-page.state.steamed': 'purged by steam',
  'record-page.state.covered': 'covered or lined',
  'record-page.state.cleaned': 'washed and cleaned',
  'record-page.state.closed-up': 'closed up, not in use',
  'record-page.state.not-purged': 'not purged',
  'record-page.state.not-done': 'not finished',
  'record-page.state.not-yet': 'still to come',
  'record-page.state.untouched': 'nothing planned',
  'record-page.covered-too': 'covered as well',
  'record-page.letter.heated': 'H',
  'record-page.letter.poured': 'B',
  'record-page.letter.steamed': 'S',
  'record-page.letter.covered': 'C',
  'record-page.letter.cleaned': 'W',
  'record-page.letter.closed-up': 'U',
  'record-page.letter.not-purged': 'X',
  'record-page.letter.not-done': 'O',
  'record-page.letter.not-yet': '…',
  'record-page.letter.untouched': '–',
  'record-page.mark.meat': 'M',
  'record-page.mark.dairy': 'D',
  'record-page.mark.pareve': 'N',
  'record-page.table': 'Place by place',
  'record-page.column.place': 'Place, and what it is now',
  'record-page.column.how': 'What was done',
  'record-page.column.when': 'When',
  'record-page.column.rested': 'Rested',
  'record-page.column.source': 'By which source, whose word',

  'record-page.recheck.region': 'Something happened since',
  'record-page.recheck.title': 'Something happened since?',
  'record-page.recheck.about':
    'Say what it touches. A small plan for that alone asks first whether it must be purged again; until then, nothing hot there.',
  'record-page.recheck.open': 'Something happened',
  'record-page.recheck.what': 'What happened?',
  'record-page.recheck.touches': 'What does it touch?',
  'record-page.recheck.make-plan': 'Make a small plan for it',
  'record-page.recheck.back': 'Back',

  'record-page.calibration.title': 'What this run taught',
  'record-page.calibration.used':
    'By your reports. The next plan expects it; rests, holds and limits stay as they are.',
  'record-page.calibration.not-used':
    'By your reports. The next plan does not use it yet; rests, holds and limits stay as they are.',
  'record-page.calibration.boil': ({ name, takesS, plannedS }: Measured, f) =>
    `${name}: boils in ${f.duration(takesS)} (planned ${f.duration(plannedS)})`,
  'record-page.calibration.glow': ({ name, takesS, plannedS }: Measured, f) =>
    `${name}: glows after ${f.duration(takesS)} (planned ${f.duration(plannedS)})`,
  'record-page.calibration.heat-up': ({ name, takesS, plannedS }: Measured, f) =>
    `${name}: is at its highest after ${f.duration(takesS)} (planned ${f.duration(plannedS)})`,
  'record-page.calibration.cool': ({ name, takesS, plannedS }: Measured, f) =>
    `${name}: may be touched after ${f.duration(takesS)} (planned ${f.duration(plannedS)})`,
  'record-page.calibration.pour': ({ flowLMin }: { flowLMin: number }, f) =>
    `Your pour: ${f.measure(flowLMin, 'L', 1)} a minute`,
  'record-page.calibration.reach': ({ percent }: { percent: number }, f) =>
    `One kettle reaches ${f.number(percent)} % as far as reckoned`,
  'record-page.calibration.grounds': (
    { count, spreadPercent }: { count: number; spreadPercent: number },
    f,
  ) => `${from(count, f)}, ±${f.number(spreadPercent)} %`,
  'record-page.calibration.grounds-longest': ({ count }: { count: number }, f) =>
    `${from(count, f)}; the longest counts`,
  'record-page.calibration.set-apart': (
    { grounds, count }: { grounds: Message; count: number },
    f,
  ) => `${f.say(grounds)}; ${f.number(count)} set apart as too far off`,
  'record-page.calibration.leave-out': 'Leave out the last report',
  'record-page.calibration.count': 'Count the last report',
} satisfies Section;
