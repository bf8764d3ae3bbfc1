import { purgePlan } from '../../run/support/fixtures.ts';
import { glowing, type Tablet } from '../../run/support/tablet.ts';

/** A disturbed but finished run: a glow with a gap, a sleep, a fault, a doubt, a pour, and a stop. */
export function disturbed(): Tablet {
  const tablet = glowing(purgePlan);
  tablet.passes(320);
  tablet.does({ kind: 'acknowledge-timer', timer: tablet.clock('/look').id });
  tablet.restarts(90, undefined, 1);
  for (const { id } of tablet.view.review)
    tablet.does({ kind: 'answer-review', question: id, answer: 'went-on' });
  if (tablet.view.askClock) tablet.does({ kind: 'answer-clock', right: true, passed: true });
  tablet.passes(400);
  tablet.says('glow');
  tablet.says('glow');
  tablet.does({ kind: 'pause' }, { kind: 'note', text: 'Tea – שבע דקות.' });
  tablet.sleeps(2400);
  tablet.does({ kind: 'answer-clock', right: true, passed: true }, { kind: 'resume' });
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
