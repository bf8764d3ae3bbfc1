import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { doorHandout, doorHandoutText } from '../../../src/core/handouts/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMO_TEXTS, demoKitchen } from '../kitchen/demos.ts';

const caseIds = (file: string) => {
  const { danger, later } = doorHandout(buildPlan(demoKitchen(file)));
  return [...danger, ...later].map(({ id }) => id);
};

describe('the page for the door', () => {
  it.each(DEMO_TEXTS.map(([file]) => file))('tells each case of %s in lines to act by', (file) => {
    const plan = buildPlan(demoKitchen(file));
    const { danger, later } = doorHandout(plan);
    expect(danger[0]?.id).toBe('burned');
    for (const { lines } of [...danger, ...later]) expect(lines.length).toBeGreaterThan(0);
    const text = doorHandoutText(plan, inEnglish);
    expect(text).not.toMatch(/undefined|\[object|handouts\.|cautions\./);
    expect(text).toContain('- Hold the burn under cool running water');
  });

  it('speaks of gas where gas is burned, and of leaven where it is Passover', () => {
    expect(caseIds('mountain-gas.kitchen.json')).toEqual(
      expect.arrayContaining(['gas-smell', 'co-alarm', 'leaven']),
    );
    const coils = caseIds('flat-coils.kitchen.json');
    expect(coils).not.toContain('gas-smell');
    expect(coils).not.toContain('leaven');
  });

  it('has the number of the country, or a line to write it on', () => {
    const kitchen = demoKitchen('hall.kitchen.json');
    expect(doorHandout(buildPlan(kitchen)).emergencyNumber).toMatch(/^\d+$/);
    const elsewhere = { ...buildPlan(kitchen), kitchen: { ...kitchen, country: 'AQ' } };
    expect(doorHandout(elsewhere).emergencyNumber).toBeUndefined();
    expect(doorHandoutText(elsewhere, inEnglish)).toContain('Call the local emergency number:');
  });
});
