import { describe, expect, it } from 'vitest';
import { fold, type Observation } from '../../../src/core/run/index.ts';
import { purgePlan } from './support/fixtures.ts';
import { glowing, Tablet } from './support/tablet.ts';

describe('what the device tells of an alarm', () => {
  it('is written down once for each cause', () => {
    // Verifies: I-09
    const tablet = glowing(purgePlan);
    const { id: timer, cause } = tablet.clock('/look');
    expect(cause).toBe(1);
    const handed = { kind: 'alarm-handed', timer, cause } as const;
    const failed = { kind: 'alarm-failed', timer, cause, text: 'Sound is off.' } as const;
    expect(tablet.tries(handed)).toBeNull();
    expect(tablet.tries(handed)).toBe('already-told');
    expect(tablet.tries(failed)).toBeNull();
    expect(tablet.tries({ ...failed, text: 'Again.' })).toBe('already-told');
    expect(tablet.facts.slice(-2).map(({ body }) => body)).toEqual([handed, failed]);
    expect(fold(tablet.facts)).toEqual(tablet.state);
    tablet.passes(310);
    tablet.does({ kind: 'acknowledge-timer', timer });
    // The next round is a new cause; the old one may still be told of.
    expect(tablet.clock('/look').cause).toBe(2);
    expect(tablet.tries({ ...handed, cause: 2 })).toBeNull();
    expect(tablet.tries(handed)).toBe('already-told');
  });

  it('shows the alarms that failed until somebody answers', () => {
    const tablet = glowing(purgePlan);
    const { id: timer, step, label } = tablet.clock('/look');
    expect(tablet.view.alarmsFailed).toEqual([]);
    tablet.does({ kind: 'alarm-failed', timer, cause: 1, text: 'Sound is off.' });
    expect(tablet.view.alarmsFailed).toEqual([
      { timer, cause: 1, step, label, text: 'Sound is off.' },
    ]);
    tablet.passes(310);
    expect(tablet.view.alarmsFailed).toHaveLength(1);
    tablet.does({ kind: 'acknowledge-timer', timer });
    expect(tablet.view.alarmsFailed).toEqual([]);
    // Handed on after all: the last word counts.
    const again = glowing(purgePlan);
    again.does(
      { kind: 'alarm-failed', timer, cause: 1, text: 'Sound is off.' },
      { kind: 'alarm-handed', timer, cause: 1 },
    );
    expect(again.view.alarmsFailed).toEqual([]);
  });

  it('changes nothing of the work', () => {
    const plain = glowing(purgePlan);
    const told = glowing(purgePlan);
    const { id: timer } = told.clock('/look');
    told.does(
      { kind: 'alarm-handed', timer, cause: 1 },
      { kind: 'alarm-failed', timer, cause: 1, text: 'x' },
    );
    const rest = ({ state }: Tablet): object => ({
      ...state,
      alarms: null,
      seq: 0,
      clock: { ...state.clock, lastAt: null },
    });
    expect(rest(told)).toEqual(rest(plain));
  });

  it('is refused by name when it fits nothing', () => {
    // Verifies: I-12
    const tablet = glowing(purgePlan);
    const { id: timer } = tablet.clock('/look');
    const cases: [Observation, string][] = [
      [{ kind: 'alarm-handed', timer: 'x', cause: 1 }, 'timer-closed'],
      [{ kind: 'alarm-failed', timer: 'x', cause: 1, text: '' }, 'timer-closed'],
      [{ kind: 'alarm-handed', timer, cause: 0 }, 'out-of-range'],
      [{ kind: 'alarm-handed', timer, cause: 2 }, 'out-of-range'],
      [{ kind: 'alarm-handed', timer, cause: 0.5 }, 'out-of-range'],
    ];
    for (const [seen, code] of cases) expect(tablet.tries(seen)).toBe(code);
  });
});
