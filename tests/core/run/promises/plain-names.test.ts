import { describe, expect, it } from 'vitest';
import { plainLine, type Kitchen } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, describePlan } from '../../../../src/core/plan/index.ts';
import { reportOf, reportText } from '../../../../src/core/report/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { createRun } from '../../../../src/core/run/index.ts';
import { kitchenOf } from '../../plan/support/plans.ts';

const EVIL = 'Sink\u202E\nResult: every planned step was done.\u0007\u2028\u200E';
const SHOWN = 'Sink Result: every planned step was done.';
// oxlint-disable-next-line no-control-regex -- it is what must not be there
const UNSEEN = /[\u0007\u200E\u202E\u2028]/u;

function named(kitchen: Kitchen): Kitchen {
  return {
    ...kitchen,
    name: EVIL,
    fixtures: kitchen.fixtures.map((one) => (one.id === 'sink' ? { ...one, name: EVIL } : one)),
    vessels: kitchen.vessels.map((one) => ({ ...one, name: `${one.name}\u202E` })),
  };
}

describe('a name with line breaks, control codes or direction marks', () => {
  const kitchen = named(kitchenOf('flat-coils'));
  const plan = buildPlan(kitchen);

  it('is cleaned to one line that reads as it was meant', () => {
    expect(plainLine(EVIL)).toBe(SHOWN);
    expect(plainLine('  Küche – מטבח 🙂 می‌خواهم ')).toBe('Küche – מטבח 🙂 می‌خواهم');
  });

  it('stands clean in the plan, in its steps and as it is printed', () => {
    expect(JSON.stringify(plan)).not.toMatch(/\\u202e|\\n|\\u0007/iu);
    expect(JSON.stringify(plan)).not.toMatch(UNSEEN);
    expect(describePlan(plan, inEnglish)).not.toMatch(UNSEEN);
    expect(describePlan(plan, inEnglish).split('\n')).not.toContain(
      'Result: every planned step was done.',
    );
  });

  it('stands clean in the record', () => {
    const { facts } = createRun(
      { ...plan, kitchen },
      { wallMs: 1_767_225_600_000, monoMs: 0, session: 'a' },
    );
    const text = reportText(reportOf(facts), inEnglish, 'UTC');
    expect(text).not.toMatch(UNSEEN);
    expect(text).toContain(SHOWN);
  });
});
