/**
 * Made the frozen journals once, when the format was released, and once more
 * when it gained kinds of facts: run with `npx tsx tests/core/journal/frozen/make.ts`.
 * What is frozen is not made again; a change of format gets new files beside
 * these, and an upgrader.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { encodeEntries, exportJournal } from '../../../../src/core/journal/index.ts';
import { fold } from '../../../../src/core/run/index.ts';
import { purgePlan } from '../../run/fixtures.ts';
import { glowing, type Tablet } from '../../run/tablet.ts';
import { alarmed } from './alarmed.ts';
import { summary } from './summary.ts';

/** A disturbed but finished run: a glow with a gap, a sleep, a fault, a doubt, a pour, and a stop. */
function disturbed(): Tablet {
  const tablet = glowing(purgePlan);
  tablet.passes(320);
  tablet.does({ kind: 'acknowledge-timer', timer: tablet.clock('/look').id });
  tablet.restarts(90, undefined, 1);
  for (const { id } of tablet.view.review)
    tablet.does({ kind: 'answer-review', question: id, answer: 'went-on' });
  if (tablet.view.askClock) tablet.does({ kind: 'answer-clock', right: true });
  tablet.passes(400);
  tablet.says('glow');
  tablet.says('glow');
  tablet.does({ kind: 'pause' }, { kind: 'note', text: 'Tea – שבע דקות.' });
  tablet.sleeps(2400);
  tablet.does({ kind: 'answer-clock', right: true }, { kind: 'resume' });
  tablet.does({ kind: 'start-step', step: 'boil-1' });
  tablet.passes(250);
  tablet.says('boil-1');
  tablet.opens('scald-dress');
  tablet.does({ kind: 'start-step', step: 'pour-1' });
  tablet.says('pour-1');
  tablet.passes(60);
  tablet.says('pour-1');
  tablet.does({ kind: 'report-fault', fault: 'cracked', text: 'A hair line in the rim.' });
  tablet.does({ kind: 'skip-step', step: 'boil-2', reason: 'The bowl is small.' });
  tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'A cup was washed.' });
  tablet.does({ kind: 'stop-run', reason: 'Late.' });
  return tablet;
}

const folder = import.meta.dirname;

function keep(name: string, text: string): void {
  const path = join(folder, name);
  if (existsSync(path)) console.log(`${name} is frozen already, and stays.`);
  else writeFileSync(path, text);
}

const { facts } = disturbed();
const records = encodeEntries(facts);
keep('good-v1.json', exportJournal(records));
keep('good-v1.result.json', `${JSON.stringify(summary(fold(facts)), null, 2)}\n`);

const middle = Math.floor(records.length / 2);
const corrupt: unknown[] = [...records];
corrupt[middle] = JSON.stringify(records[middle]).slice(0, 60);
keep('corrupt-v1.json', exportJournal(corrupt));

// Somebody turns a no into a yes, a waiting step into a done one: the sum tells.
const altered = records.map((record) =>
  record.fact.body.kind === 'step-settled' && record.fact.body.step === 'boil-2'
    ? { ...record, fact: { ...record.fact, body: { ...record.fact.body, outcome: 'done' } } }
    : record,
);
keep('altered-v1.json', exportJournal(altered));

const later = alarmed().facts;
keep('alarms-v1.json', exportJournal(encodeEntries(later)));
keep('alarms-v1.result.json', `${JSON.stringify(summary(fold(later)), null, 2)}\n`);
