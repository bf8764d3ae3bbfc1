import { describe, expect, it } from 'vitest';
import { encodeEntries, openJournal } from '../../../src/core/journal/index.ts';
import { reportOf, reportText, rowsOf, type Report } from '../../../src/core/report/index.ts';
import type { Fact } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import type { Tablet } from '../run/support/tablet.ts';
import { recorded, rested, stepOf, toldPlan } from './runs.ts';

const crewPlan = {
  ...toldPlan,
  kitchen: {
    ...toldPlan.kitchen,
    household: { ...toldPlan.kitchen.household, people: 3, names: ['Dana', 'Yael'] },
  },
};

/** Boils and pours the first kettle, at these cards. */
function pours(tablet: Tablet, boils: number, takes: number, cools = takes): void {
  tablet.does({ kind: 'start-step', step: 'boil-1', person: boils });
  tablet.passes(240);
  tablet.says('boil-1');
  tablet.opens('scald-dress');
  tablet.does({ kind: 'start-step', step: 'pour-1', person: takes });
  tablet.passes(60);
  for (const stage of ['pour', 'cold'])
    tablet.does({
      kind: 'confirm',
      step: 'pour-1',
      stage: stageAt(tablet),
      person: stage === 'cold' ? cools : takes,
    });
}

function stageAt({ view }: Tablet): string {
  const pour = view.steps.find(({ step }) => step.id === 'pour-1');
  return pour?.step.stages[pour.stage]?.id ?? '';
}

const sinkRow = (report: Report) =>
  rowsOf(report, 'UTC')[0]?.how.map((line) => inEnglish.say(line)) ?? [];
const personOf = ({ body }: Fact) => ('person' in body ? body.person : undefined);

describe('who did which step', () => {
  it('is kept in the facts of a crew, and through the saved journal', () => {
    const tablet = rested(crewPlan);
    pours(tablet, 1, 0);
    const again = openJournal(JSON.parse(JSON.stringify(encodeEntries(tablet.facts))) as unknown[]);
    expect(again.problem).toBeUndefined();
    expect(again.facts.map(personOf).filter((person) => person !== undefined)).toEqual([
      1, 0, 0, 0,
    ]);
  });

  it('stands in the row of the place, in the moments and in the text', () => {
    const tablet = rested(crewPlan);
    pours(tablet, 1, 0, 2);
    const report = recorded(tablet);
    expect(stepOf(report, 'pour-1').attempts[0]?.by.map((one) => inEnglish.say(one))).toEqual([
      'Dana',
      'helper 2',
    ]);
    expect(sinkRow(report)).toContain('by Dana and helper 2');
    const text = reportText(report, inEnglish, 'UTC');
    expect(text).toMatch(/pour-1: done, .* By Dana and helper 2\./u);
    expect(text).toMatch(/boil-1: done, .* By Yael\./u);
  });

  it('is not asked of one who works alone, and of no number that the household has not', () => {
    const alone = rested();
    pours(alone, 0, 0);
    expect(alone.facts.map(personOf).every((person) => person === undefined)).toBe(true);
    expect(sinkRow(recorded(alone)).join(' ')).not.toMatch(/\bby\b/u);
    const crew = rested(crewPlan);
    pours(crew, 3, -1, 0.5);
    expect(crew.facts.map(personOf).every((person) => person === undefined)).toBe(true);
  });

  it('is left out where a changed record names nobody', () => {
    const tablet = rested(crewPlan);
    pours(tablet, 1, 0);
    const facts = tablet.facts.map((fact) =>
      personOf(fact) === undefined
        ? fact
        : ({ ...fact, body: { ...fact.body, person: 99 } } as Fact),
    );
    expect(stepOf(reportOf(facts), 'pour-1').attempts[0]?.by).toEqual([]);
  });
});
