import { describe, expect, it } from 'vitest';
import { SOURCE_KEYS } from '../../../../src/core/custom/index.ts';
import { buildPlan, type Plan } from '../../../../src/core/plan/index.ts';
import { CAUTIONS, FAULTS, type CautionKind } from '../../../../src/core/plan/cautions/index.ts';
import { BY_AIR } from '../../../../src/core/plan/cautions/messages.ts';
import { faultLines } from '../../../../src/core/messages/english/cautions/fault-lines.ts';
import { hazards } from '../../../../src/core/messages/english/cautions/hazards.ts';
import { cautions } from '../../../../src/core/messages/english/cautions/index.ts';
import { utensils } from '../../../../src/core/messages/english/utensils/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { cooling } from '../../../../src/core/messages/english/run/cooling.ts';
import { DEMOS, kitchenOf, noticeKeys, planOfDemo, step, stepsOf } from '../support/plans.ts';

/** Words of the cautions and faults; what threatens comes with a plan, what to do for a burn with the sheets of the run, for utensils with them. */
const english = {
  ...faultLines,
  ...cautions,
  ...hazards,
  ...Object.fromEntries(
    Object.entries({ ...cooling, ...utensils }).filter(([key]) => key.startsWith('cautions.')),
  ),
};

/** What the work needs, and how each must meet the person: asked first, kept on the screen, or said after. */
const NEEDED: Readonly<Record<string, readonly CautionKind[]>> = {
  'scald-dress': ['gate'],
  'scald-carry': ['standing'],
  'pour-stance': ['standing'],
  'pour-power': ['gate'],
  'pour-material': ['gate'],
  'pour-drain': ['standing'],
  splash: ['standing'],
  'dip-pot': ['standing'],
  'hot-refill': ['standing'],
  'steam-leap': ['standing'],
  'tap-chrome': ['standing'],
  'wash-unplugged': ['standing'],
  'sand-dust': ['standing'],
  'cold-where': ['gate'],
  'wet-floor': ['after'],
  'burner-clear': ['gate'],
  'burner-air': ['gate'],
  'burner-attend': ['standing'],
  'burner-sheet': ['gate'],
  'glass-top': ['standing'],
  'hot-after': ['timer'],
  'oven-pre': ['gate'],
  'oven-birds': ['gate'],
  'oven-attend': ['standing'],
  'oven-late': ['plan'],
  'chem-mix': ['gate'],
  'range-move': ['gate'],
  'electric-load': ['gate', 'plan'],
  climb: ['standing'],
  'heat-stress': ['standing'],
  'child-pet': ['gate'],
  alone: ['standing'],
  labels: ['after'],
};

const coils = planOfDemo('flat-coils');
const gas = planOfDemo('mountain-gas');
const glass = planOfDemo('flat-glass-230');

/** Entries of the cautions are fixed, but for a temperature that is told in the household's degrees. */
const texts: Readonly<Record<string, string>> = Object.fromEntries(
  Object.keys(english).map((key) => [key, inEnglish.say({ key, params: {} })]),
);

describe('the table of cautions', () => {
  it.each(Object.entries(NEEDED))('has %s, of at least the kinds %j', (id, kinds) => {
    const row = CAUTIONS.find((one) => one.id === id);
    expect(row?.kinds).toEqual(expect.arrayContaining([...kinds]));
  });

  it('guards against death where gas, air or poison is at stake, and there only', () => {
    const danger = CAUTIONS.filter(({ signal }) => signal === 'DANGER');
    expect(danger.map(({ id }) => id).toSorted()).toEqual(['burner-air', 'chem-mix', 'range-move']);
    // A DANGER that is not asked would not hold anything back.
    for (const { kinds } of danger) expect(kinds).toContain('gate');
  });

  it.each(CAUTIONS)('$id says what to do and why, in one sentence with a source', (row) => {
    const say = texts[`cautions.${row.id}.say`] ?? '';
    expect(say).toMatch(/^[A-Z].*: .+\.$/);
    expect(say.slice(0, -1)).not.toContain('. ');
    expect(texts[`cautions.${row.id}.hazard`]).toMatch(/^[a-z]/);
    expect(SOURCE_KEYS).toContain(row.source);
    expect(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']).toContain(row.signal);
    if (row.kinds.includes('gate')) expect(texts[`cautions.${row.id}.ask`]).toMatch(/\?$/);
  });

  it('has in the catalogue what its rows say, and nothing else', () => {
    const ofCautions = CAUTIONS.flatMap(({ id, kinds }) => [
      ...['hazard', 'say'].map((field) => `cautions.${id}.${field}`),
      ...(kinds.includes('gate') ? ['ask', 'make-safe'] : []).map((f) => `cautions.${id}.${f}`),
      ...(BY_AIR[id] ?? []).flatMap((way) =>
        ['say', 'ask'].map((f) => `cautions.${id}.${f}-${way}`),
      ),
    ]);
    const ofFaults = FAULTS.flatMap(({ name, doThis }) => [name, ...doThis].map(({ key }) => key));
    expect(Object.keys(english).toSorted()).toEqual([...ofCautions, ...ofFaults].toSorted());
  });

  it('says what fits the air of the kitchen in one sentence too, and asks it', () => {
    for (const [key, text] of Object.entries(texts)) {
      if (/\.say-/.test(key)) expect(text, key).toMatch(/^[A-Z].*: .+\.$/);
      if (/\.ask-/.test(key)) expect(text, key).toMatch(/\?$/);
      if (/\.(say|ask)-(hood|way-out)$/.test(key)) expect(text, key).not.toMatch(/window/i);
      if (/\.ask-(window|way-out)$/.test(key)) expect(text, key).not.toMatch(/hood/i);
    }
  });

  it('has a policy for every fault that trips a gate', () => {
    const kinds = FAULTS.map(({ kind }) => kind);
    for (const row of CAUTIONS)
      for (const kind of row.trippedBy ?? []) expect(kinds, row.id).toContain(kind);
  });

  it('has a policy for every kind of fault', () => {
    expect(FAULTS.map(({ kind }) => kind).toSorted()).toEqual(
      [
        'burned',
        'no-glow',
        'flame-out',
        'power-cut',
        'smoke',
        'fire',
        'co-alarm',
        'gas-smell',
        'unwell',
        'kettle-failed',
        'oven-lock',
        'breaker-tripped',
        'cracked',
        'undefined',
      ].toSorted(),
    );
    expect(FAULTS.find(({ kind }) => kind === 'undefined')?.policy).toBe('suspend');
    expect(FAULTS.find(({ kind }) => kind === 'fire')?.policy).toBe('stop-run');
  });
});

describe('a caution stands at its step', () => {
  const at = (plan: Plan, id: string) => {
    const { gates, standing, after } = step(plan, id);
    return { gates, standing, after };
  };

  it('at each pour', () => {
    const pour = at(coils, 'pour-sink-1');
    expect(pour.gates).toEqual(['child-pet', 'scald-dress', 'cold-where']);
    expect(pour.standing).toEqual(['scald-carry', 'splash', 'pour-drain', 'alone']);
    expect(pour.after).toEqual(['wet-floor']);
    expect(at(coils, 'pour-counter-left-1').gates).toEqual(
      expect.arrayContaining(['pour-power', 'pour-material']),
    );
  });

  it('at a gas burner and not at a coil', () => {
    expect(at(gas, 'glow-gas-back-left').gates).toEqual(
      expect.arrayContaining(['burner-air', 'burner-clear', 'burner-sheet', 'child-pet']),
    );
    expect(at(coils, 'glow-coil-back-left').gates).not.toContain('burner-air');
    expect(at(coils, 'glow-coil-back-left').gates).toContain('heat-air');
    expect(at(gas, 'boil-counter-corner-1').gates).toContain('burner-air');
  });

  it('at glass and not at enamel', () => {
    expect(at(glass, 'glow-zone-back-left').standing).toContain('glass-top');
    expect(at(coils, 'glow-coil-back-left').standing).not.toContain('glass-top');
  });

  it('at the oven', () => {
    expect(at(coils, 'heat-oven').gates).toEqual(
      expect.arrayContaining(['oven-pre', 'oven-birds']),
    );
    expect(at(coils, 'heat-oven').standing).toContain('oven-attend');
    expect(noticeKeys(coils)).toContain('cautions.oven-late.say');
    expect(noticeKeys(gas)).not.toContain('cautions.oven-late.say');
  });

  it('at the cleaning', () => {
    expect(at(gas, 'clean-oven').gates).toEqual(['chem-mix', 'range-move']);
    expect(at(coils, 'clean-oven').gates).toEqual(['chem-mix', 'range-tip']);
    expect(at(coils, 'clean-wall-cupboard').standing).toContain('climb');
    expect(at(coils, 'clean-sink').after).toContain('labels');
    expect(at(coils, 'clean-sink').standing).toEqual(['tap-chrome']);
    expect(at(coils, 'clean-fridge').after).toEqual([]);
    expect(at(coils, 'clean-fridge').standing).toContain('wash-unplugged');
    expect(at(gas, 'clean-table').standing).toContain('sand-dust');
    expect(at(gas, 'clean-pantry').standing).not.toContain('sand-dust');
  });

  it('at every cool-down', () => {
    for (const { standing } of stepsOf(coils, 'cool')) expect(standing).toContain('hot-after');
  });

  it('for who works alone', () => {
    expect(at(glass, 'heat-oven').standing).not.toContain('alone');
    expect(at(coils, 'heat-oven').standing).toContain('alone');
  });
});

describe('the gates', () => {
  it('are asked once a run, once a fixture, or each time, as the table says', () => {
    const scopes = Object.fromEntries(gas.gates.map(({ id, scope }) => [id, scope]));
    expect(scopes).toMatchObject({
      'child-pet': 'run',
      'scald-dress': 'run',
      'pour-power': 'fixture',
    });
    expect(gas.gates.find(({ id }) => id === 'scald-dress')?.lapsesS).toBe(1800);
  });

  it('all lapse when people come back after hours', () => {
    for (const demo of DEMOS)
      for (const { id, lapsesS = Infinity } of planOfDemo(demo).gates)
        expect(lapsesS, id).toBeLessThanOrEqual(4 * 3600);
    expect(gas.gates.find(({ id }) => id === 'pour-power')?.lapsesS).toBe(7200);
  });

  it('about the air is a condition that faults trip and time settles', () => {
    expect(gas.gates.find(({ id }) => id === 'burner-air')).toMatchObject({
      kind: 'condition',
      signal: 'DANGER',
      trippedBy: expect.arrayContaining(['co-alarm', 'unwell', 'smoke']),
      settleS: 900,
    });
  });

  it('are no wall of ticks: at most a handful for any step', () => {
    for (const demo of DEMOS)
      for (const one of planOfDemo(demo).steps)
        expect(one.gates.length, one.id).toBeLessThanOrEqual(6);
  });

  it('warn of heat only where the room is expected to be hot', () => {
    const cool = kitchenOf('hall');
    expect(buildPlan(cool).steps.some(({ standing }) => standing.includes('heat-stress'))).toBe(
      false,
    );
    const hot = {
      ...kitchenOf('mountain-gas'),
      room: {
        floorAreaM2: 5,
        heightM: 2.3,
        hood: { kind: 'none', flowLS: 0 },
        window: { areaM2: 0, heightM: 0 },
      } as const,
    };
    expect(buildPlan(hot).steps.some(({ standing }) => standing.includes('heat-stress'))).toBe(
      true,
    );
  });
});
