import { describe, expect, it } from 'vitest';
import { encodeEntries, followProblem } from '../../../../src/core/journal/index.ts';
import { perform, type Heartbeat } from '../../../../src/core/run/index.ts';
import { smallPlan } from '../support/fixtures.ts';
import { resting, type Tablet } from '../support/tablet.ts';

const HOUR_S = 3600;

/** Opens a page half an hour later with this heartbeat in the store. */
function opens(tablet: Tablet, lastHeartbeat: unknown): ReturnType<typeof perform> {
  const now = tablet.readings();
  return perform(
    tablet.state,
    { kind: 'session-opened', lastHeartbeat: lastHeartbeat as Heartbeat, tornRecords: 0 },
    { wallMs: now.wallMs + HOUR_S * 500, monoMs: 0, session: 'page-9' },
  );
}

function provedS(done: ReturnType<typeof perform>): number {
  if ('refusal' in done) return NaN;
  return Object.values(done.state.timers)[0]?.span.atLeastS ?? NaN;
}

describe('a heartbeat', () => {
  it('that is whole proves life', () => {
    const tablet = resting(smallPlan);
    tablet.passes(HOUR_S);
    expect(provedS(opens(tablet, tablet.readings()))).toBeCloseTo(HOUR_S, -1);
  });

  it('that is damaged proves nothing', () => {
    // Verifies: I-28, I-05
    const tablet = resting(smallPlan);
    tablet.passes(HOUR_S);
    const beat = tablet.readings();
    const damaged = [
      { ...beat, monoMs: beat.monoMs + 90_000_000 },
      { ...beat, wallMs: beat.wallMs + 90_000_000 },
      { ...beat, monoMs: Infinity },
      { ...beat, wallMs: NaN },
      { ...beat, monoMs: String(beat.monoMs + 90_000_000) },
      { ...beat, session: 7 },
      'torn',
    ];
    for (const one of damaged) {
      const done = opens(tablet, one);
      expect(provedS(done), JSON.stringify(one)).toBeLessThanOrEqual(1);
      expect(JSON.parse(JSON.stringify(done))).toBeTruthy();
      if ('facts' in done) expect(done.facts[0]?.body).toMatchObject({ lastHeartbeat: null });
    }
  });
});

describe('a journal cut at its end', () => {
  it('is noticed where the heartbeat knows more, and a person says when to go on', () => {
    // Verifies: I-28
    const tablet = resting(smallPlan);
    tablet.passes(60);
    const done = opens(tablet, { ...tablet.readings(), seq: tablet.state.seq + 3 });
    if ('refusal' in done) throw new Error(done.refusal.code);
    expect(done.facts[0]?.body).toMatchObject({ kind: 'session-opened', missingRecords: 3 });
    expect(done.state.faults).toMatchObject([{ kind: 'undefined', cleared: false }]);
    expect(done.state.status).toBe('reviewing');
    expect(done.state.reviewFrom).toBe('suspended');
  });

  it('is not suspected where the heartbeat knows as much', () => {
    const tablet = resting(smallPlan);
    tablet.passes(60);
    const done = opens(tablet, { ...tablet.readings(), seq: tablet.state.seq });
    if ('refusal' in done) throw new Error(done.refusal.code);
    expect(done.state.faults).toEqual([]);
  });
});

describe('a record', () => {
  const records = encodeEntries(resting(smallPlan).facts);

  it('follows the one before it by number and sum', () => {
    // Verifies: I-28, I-02
    for (const [i, record] of records.entries())
      expect(followProblem(records[i - 1], record)).toBeUndefined();
  });

  it('with a wrong predecessor is refused when it is written', () => {
    // Verifies: I-28, I-02
    const [first, second, third] = records;
    if (!first || !second || !third) throw new Error('too short');
    expect(followProblem(first, { ...second, prev: '00000000' })).toContain('prev is 00000000');
    expect(followProblem(second, second)).toContain('seq is 2');
    expect(followProblem(first, third)).toContain('seq is 3');
    expect(followProblem(undefined, second)).toContain('seq is 2');
    expect(followProblem('torn', second)).toBeDefined();
    expect(() => encodeEntries(resting(smallPlan).facts.slice(1), 'no sum')).toThrow(/prev is/);
  });
});
