import { execFileSync, spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { answer } from '../../src/cli/reckon/answer.ts';
import { MODELS } from '../../src/cli/reckon/registry.ts';

type Printed = {
  readonly model?: string;
  readonly inputs?: Readonly<Record<string, unknown>>;
  readonly result?: Readonly<Record<string, unknown>>;
  readonly low?: Readonly<Record<string, number>>;
  readonly high?: Readonly<Record<string, number>>;
  readonly sources?: readonly string[];
  readonly error?: Readonly<Record<'input' | 'found' | 'allowed' | 'message', unknown>>;
};

function ask(words: string): Printed & { readonly code: number } {
  const { print, code } = answer(words.split(' '));
  return { ...(JSON.parse(JSON.stringify(print)) as Printed), code };
}

/** One call of every model, with the names of its results. */
const CALLS = [
  ['standard-pressure altitudeM=1000', ['pressurePa']],
  ['outdoor-temp latDeg=40.6 altitudeM=4 dayOfYear=197', ['afternoonC', 'meanC']],
  [
    'burners-at-once kitchen=demo-kitchens/hall.kitchen.json dayOfYear=105',
    ['atOnce', 'limitedBy', 'withinLimits', 'peakC', 'outdoorC'],
  ],
  ['boiling-temp altitudeM=800', ['tempC']],
  ['boiling-temp pressurePa=101325', ['tempC']],
  ['saturation-pressure tempC=100', ['pressurePa']],
  [
    'water tempC=25',
    ['densityKgM3', 'heatCapacityJKgK', 'viscosityPaS', 'conductivityWMK', 'surfaceTensionNM'],
  ],
  ['heat-needed volumeL=1', ['energyJ']],
  [
    'boil-time volumeL=1.7 ratedW=3000 ratedV=240 supplyV=230 startC=15 altitudeM=0 bodyWaterL=0.2 lossWK=1.5',
    ['timeS', 'energyKWh'],
  ],
  ['kettle-cooling volumeL=1 lossWK=1.8 evaporationW=10 roomC=20 dropK=5 altitudeM=0', ['timeS']],
  ['gas-power btuH=9500', ['powerW']],
  ['immersion-drop waterL=10 waterC=99.9 itemKg=2 itemMaterial=steel itemC=20', ['mixedC']],
  [
    'immersion-recovery waterL=10 waterC=99.9 itemKg=2 itemMaterial=steel itemC=20 powerW=3000 efficiency=0.5 lossW=300 altitudeM=0',
    ['mixedC', 'recoverS', 'boilingC'],
  ],
  ['pot-loss diameterM=0.28 heightM=0.2 lid=true', ['lossW']],
  ['puddle-depth tempC=95 contactDeg=60', ['depthMm']],
  ['wetting-rate tempC=20 contactDeg=60', ['rateKgMS']],
  ['film-jump flowLMin=2 tempC=20 contactDeg=45', ['radiusMm']],
  ['level-jump flowLMin=2 tempC=20', ['radiusMm']],
  ['jet-loss flowLMin=2 spoutC=99.9', ['lossK']],
  [
    'poured-spot flowLMin=2 impactC=97.5 handSpeedMS=0.037 material=granite',
    ['firstTouchC', 'hottestC', 'surfaceC', 'runOffC'],
  ],
  ['hand-speed flowLMin=2 impactC=98', ['reachedMS', 'heatedMS', 'heatedDwellS', 'quickestMS']],
  ['contact-temp hotTempC=95 hotEffusivity=1654 bodyTempC=20 bodyEffusivity=2385', ['tempC']],
  [
    'surface-after bodyTempC=20 fluidTempC=95 filmWM2K=2000 conductivityWMK=2.79 diffusivityM2S=1.37e-6 depthM=0 timeS=5',
    ['tempC'],
  ],
  ['sheet-equilibrium sheetMm=1 waterDepthMm=2.5 waterC=95 sheetC=20', ['tempC']],
  ['thermal-shock material=glass surfaceC=250 waterC=20', ['verdict', 'differenceK']],
  [
    'glow-time powerW=2400 areaM2=0.05 emissivity=0.85 heatCapacityJK=290 filmWM2K=12 roomC=20',
    ['timeS', 'steadyC'],
  ],
  ['glow-time burner=gas-sealed', ['timeS', 'steadyC']],
  ['free-convection shape=horizontal-cylinder sizeM=0.1 surfaceC=150', ['filmWM2K']],
  ['cool-to-touch burner=electric-coil fromC=650 material=metal', ['timeS']],
  ['glow-luminance tempC=600', ['luminanceCdM2']],
  ['draper-point lux=200', ['tempC']],
  ['oven-stages cycle=normal', ['heatMin', 'holdMin', 'coolMin', 'totalMin']],
  ['oven-stages holdMin=120 roomC=25', ['heatMin', 'holdMin', 'coolMin', 'totalMin']],
  [
    'air volumeM3=50 airChangesPerH=1 emissionMgH=1000 outdoorMgM3=0 startMgM3=0 depositionPerH=0 timeH=1',
    ['concentrationMgM3', 'steadyMgM3'],
  ],
  ['burn-time tempC=55', ['secondDegreeS', 'thirdDegreeS']],
  ['touch-threshold material=granite contactS=60', ['touchC']],
  ['heat-index tempC=30 humidityPct=80', ['heatIndexC']],
  ['window-flow areaM2=0.5 heightM=1 differenceK=10', ['flowM3S']],
  ['admittance effusivity=1683 periodS=86400', ['admittanceWM2K']],
  ['circuit-load supplyV=120 ratingA=15 loadsW=1500,1500', ['loadA', 'spareA', 'allowed']],
] as const;

describe('reckon', () => {
  it.each(CALLS)('%s', (words, names) => {
    const { code, model, inputs, result, sources } = ask(words);
    expect(code).toBe(0);
    expect(model).toBe(words.split(' ')[0]);
    expect(inputs).toBeDefined();
    expect(sources?.length).toBeGreaterThan(0);
    for (const name of names) {
      expect(result, name).toHaveProperty(name);
      const value = result?.[name];
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      else expect(['string', 'boolean']).toContain(typeof value);
    }
  });

  it('prints a band as low and high beside the result', () => {
    const { result, low, high } = ask('level-jump flowLMin=2 tempC=20');
    expect(low?.radiusMm).toBeCloseTo(41.6, 1);
    expect(high?.radiusMm).toBeCloseTo(49.2, 1);
    expect(result?.radiusMm).toBeGreaterThan(low?.radiusMm ?? Infinity);
  });

  it('uses and prints its usual values', () => {
    const { inputs } = ask('boil-time volumeL=1 ratedW=2000');
    expect(inputs).toMatchObject({ startC: 15, altitudeM: 0, bodyWaterL: 0.23, lossWK: 1.8 });
  });

  it('tells the truth about two kettles on one circuit', () => {
    expect(ask('circuit-load supplyV=120 ratingA=15 loadsW=1500,1500').result).toEqual({
      loadA: 25,
      spareA: -10,
      allowed: false,
    });
  });

  it.each([
    ['boiling-tmp', 'model', /Did you mean boiling-temp\?/],
    ['zzz', 'model', /Choose one of these/],
    ['boiling-temp altitude=5', 'altitude', /Did you mean altitudeM\?/],
    ['boiling-temp', 'altitudeM', /altitudeM is not given/],
    ['boiling-temp altitudeM=high', 'altitudeM', /allowed: -500 to 11000 m/],
    ['boiling-temp altitudeM=99999', 'altitudeM', /99999/],
    ['boiling-temp altitudeM=', 'altitudeM', /number/],
    ['boiling-temp altitudeM=1 altitudeM=2', 'altitudeM', /given twice/],
    ['boiling-temp 800', 'word', /name=value/],
    ['burn-time tempC=95', 'tempC', /45 to 60/],
    ['glow-time burner=induction', 'burner', /heats only a pan/],
    ['glow-time powerW=2000', 'areaM2', /not given/],
    ['oven-stages cycle=turbo', 'cycle', /light, normal, heavy/],
    ['oven-stages', 'cycle', /not given/],
    ['circuit-load supplyV=230 ratingA=16 loadsW=2000,x', 'loadsW', /number/],
    [
      'circuit-load supplyV=230 ratingA=16 loadsW=1 continuous=maybe',
      'continuous',
      /true or false/,
    ],
    ['schedule', 'file', /one file/],
    ['lanes no-such-file.json', 'file', /./],
  ])('refuses %s', (words, input, message) => {
    const { code, error } = ask(words);
    expect(code).toBe(2);
    expect(error?.input).toBe(input);
    expect(error).toHaveProperty('found');
    expect(error).toHaveProperty('allowed');
    expect(error?.message).toMatch(message);
  });

  it('lists every model with inputs, units and ranges', () => {
    const { print, code } = answer(['list']);
    expect(code).toBe(0);
    const { models } = print as {
      models: readonly { name: string; inputs: readonly { name: string; unit: string }[] }[];
    };
    expect(models.map(({ name }) => name)).toEqual(MODELS.map(({ name }) => name));
    for (const { inputs } of models) for (const { unit } of inputs) expect(unit).not.toBe('');
  });

  it('calls every model above', () => {
    const called = new Set(CALLS.map(([words]) => words.split(' ')[0]));
    const physical = MODELS.filter(({ sources }) => sources.length > 0).map(({ name }) => name);
    // Models that other tests call by name are theirs to prove.
    const elsewhere = new Set([
      'pour-need',
      'room',
      'sun-times',
      'rest-days',
      'leaven-hours',
      'cuts',
    ]);
    for (const name of physical) if (!elsewhere.has(name)) expect(called).toContain(name);
  });
});

describe('from the terminal', () => {
  const TSX = ['node_modules/tsx/dist/cli.mjs', 'src/cli/reckon.ts'];

  it('prints one object on one line', () => {
    const out = execFileSync(process.execPath, [...TSX, 'boiling-temp', 'altitudeM=0'], {
      encoding: 'utf8',
    });
    expect(out.trim().split('\n')).toHaveLength(1);
    expect((JSON.parse(out) as Printed).result?.tempC).toBeCloseTo(99.974, 3);
  });

  it('ends with 2 when it refuses', () => {
    const { status, stdout } = spawnSync(process.execPath, [...TSX, 'boiling-temp', 'x=1'], {
      encoding: 'utf8',
    });
    expect(status).toBe(2);
    expect((JSON.parse(stdout) as Printed).error?.input).toBe('x');
  });
});
