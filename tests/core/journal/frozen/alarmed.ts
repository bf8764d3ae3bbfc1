import { asWritten } from '../../../../src/core/messages/index.ts';
import { purgePlan } from '../../run/support/fixtures.ts';
import { glowing, NEW_YEAR_MS, type Tablet } from '../../run/support/tablet.ts';

const HOUR_MS = 3_600_000;

/** A glow whose reminder was handed on, then failed; a rest day; a pour after it; all else left out. */
export function alarmed(): Tablet {
  const tablet = glowing({
    ...purgePlan,
    days: {
      startWallMs: NEW_YEAR_MS,
      restDays: [
        {
          name: asWritten('the Sabbath'),
          fromWallMs: NEW_YEAR_MS + HOUR_MS,
          toWallMs: NEW_YEAR_MS + 26 * HOUR_MS,
        },
      ],
    },
  });
  const { id: timer } = tablet.clock('/look');
  tablet.does({ kind: 'alarm-handed', timer, cause: 1 });
  tablet.passes(320);
  tablet.does({ kind: 'alarm-failed', timer, cause: 1, text: 'The sound is off.' });
  tablet.does({ kind: 'acknowledge-timer', timer }, { kind: 'alarm-handed', timer, cause: 2 });
  tablet.passes(290);
  tablet.says('glow');
  tablet.says('glow');
  tablet.passes(26 * 3600 - tablet.trueS + 60);
  for (const { id, alerting } of tablet.view.timers)
    if (alerting) tablet.does({ kind: 'acknowledge-timer', timer: id });
  tablet.does({ kind: 'start-step', step: 'boil-1' });
  tablet.passes(250);
  tablet.says('boil-1');
  tablet.opens('scald-dress');
  tablet.does({ kind: 'start-step', step: 'pour-1' });
  tablet.says('pour-1');
  tablet.says('pour-1');
  for (const step of ['boil-2', 'pour-2', 'cover-sink'])
    tablet.does({ kind: 'skip-step', step, reason: 'The bowl is small.' });
  return tablet;
}
