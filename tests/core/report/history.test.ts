import { describe, expect, it } from 'vitest';
import { historyOf, placesInRuns, reportOf } from '../../../src/core/report/index.ts';
import { simulateRun, type RunView } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import { planOfDemo } from '../plan/support/plans.ts';

const FIRST_MS = Date.UTC(2026, 2, 1, 15);
const YEAR_MS = 365 * 24 * 3_600_000;
const plan = planOfDemo('flat-coils');
const played = (
  startWallMs: number,
  script: (seen: RunView) => readonly [] | ReturnType<typeof skip>,
) => reportOf(simulateRun(plan, { startWallMs, script }).facts);

const skip = (seen: RunView) => {
  const glow = seen.steps.find(({ step, status }) => step.kind === 'glow' && status !== 'settled');
  return glow && seen.status === 'running'
    ? [{ kind: 'skip-step' as const, step: glow.step.id, reason: 'The element is broken' }]
    : [];
};

describe('the history of a place', () => {
  const whole = played(FIRST_MS, () => []);
  const broken = played(FIRST_MS + YEAR_MS, skip);
  const zone = 'America/New_York';

  it('has what each run did with it, the first run first', () => {
    const cooktop = whole.fixtures.find(({ kind }) => kind === 'cooktop')?.id ?? '';
    const history = historyOf([broken, whole], cooktop, zone);
    expect(history.map(({ row }) => row.place.state)).toEqual(['heated', 'not-purged']);
    expect(history.map(({ draftedWallMs }) => draftedWallMs)).toEqual([
      whole.draftedWallMs,
      broken.draftedWallMs,
    ]);
    expect(history.map(({ outcome }) => outcome)).toEqual(['completed', 'completed']);
    const said = history[1]?.lacks.map((line) => inEnglish.say(line)).join(' ');
    expect(said).toContain('The element is broken');
  });

  it('is there for each place that a run treated, and empty for one that none knows', () => {
    const places = placesInRuns([whole, broken]);
    expect([...places.keys()]).toEqual(
      whole.fixtures.filter(({ method }) => method).map(({ id }) => id),
    );
    expect(historyOf([whole], 'nowhere', zone)).toEqual([]);
  });
});
