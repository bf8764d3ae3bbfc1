import { asWritten } from '../../../../src/core/messages/index.ts';
import type {
  Plan,
  Resource,
  Stage,
  StageRole,
  Step,
  Work,
} from '../../../../src/core/plan/index.ts';
import { faults, gates } from './fixture-gates.ts';
import { kitchen } from './fixture-kitchen.ts';

/** A day, s. */
export const DAY_S = 24 * 3600;

/** A stage of the role that is its id. */
function stage(role: StageRole, title: string, more: Partial<Stage> = {}): Stage {
  return {
    id: role,
    role,
    title: asWritten(title),
    detail: [],
    timers: [],
    resumption: 'continue',
    hazards: [],
    ...more,
  };
}

function step(
  id: string,
  kind: Step['kind'],
  more: Partial<Step> & Pick<Step, 'stages' | 'phase'>,
): Step {
  return {
    id,
    kind,
    work: { on: 'fixture', method: kind === 'glow' || kind === 'cool' ? 'glow' : 'pour' },
    title: asWritten(id),
    reason: asWritten('For the test.'),
    sources: [],
    durationS: { low: 300, typical: 600, high: 900 },
    attention: 'hands',
    needs: [],
    startsBy: 'person',
    demands: {},
    gates: [],
    standing: [],
    after: [],
    ...more,
  };
}

function cleanAndRest(fixture: string): Step[] {
  return [
    step(`clean-${fixture}`, 'clean', {
      phase: 'clean',
      fixture,
      stages: [stage('clean', `Clean the ${fixture}.`, { say: asWritten('Clean') })],
      demands: { hands: 1 },
    }),
    step(`rest-${fixture}`, 'rest', {
      phase: 'rest',
      fixture,
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: `clean-${fixture}` }],
      durationS: { low: DAY_S, typical: DAY_S, high: DAY_S },
      stages: [
        stage('rest', 'Leave it unused.', {
          timers: [
            {
              id: 'rest',
              role: 'hold',
              purpose: 'at-least',
              lengthS: DAY_S,
              label: asWritten('Rest'),
            },
          ],
        }),
      ],
    }),
  ];
}

const KETTLES = 2;

/** Boil and pour of one kettle; the pour must begin within five minutes of the boil. */
function kettle(number: number): Step[] {
  const before = number === 1 ? [{ step: 'rest-sink' }] : [{ step: `pour-${number - 1}` }];
  const vessel = { id: 'kettle', unit: 'kettle', name: asWritten('The kettle') };
  const work: Work = { on: 'kettle', kettle: number, of: KETTLES, vessel, litres: 1.7 };
  return [
    step(`boil-${number}`, 'boil', {
      work,
      phase: 'purge',
      fixture: 'sink',
      attention: 'watch',
      needs: before,
      demands: { kettle: 1 },
      stages: [
        stage('boil', 'Boil the kettle.', {
          say: asWritten('It boils'),
          hazards: ['boiling-water'],
          resumption: 'ask',
          timers: [
            {
              id: 'boil',
              role: 'estimate',
              purpose: 'at-least',
              lengthS: 240,
              label: asWritten('Boils about now'),
            },
          ],
        }),
      ],
      durationS: { low: 200, typical: 240, high: 300 },
      makeSafe: asWritten('Switch the kettle off.'),
    }),
    step(`pour-${number}`, 'pour', {
      work,
      phase: 'purge',
      fixture: 'sink',
      needs: [{ step: `boil-${number}`, withinS: 300 }],
      demands: { hands: 1, kettle: 1 },
      gates: ['scald-dress'],
      durationS: { low: 60, typical: 120, high: 240 },
      stages: [
        stage('pour', 'Pour along the bowl.', {
          say: asWritten('Poured'),
          hazards: ['boiling-water'],
          resumption: 'ask',
          reviewAsk: asWritten('Was the water poured?'),
        }),
        stage('cold', 'Pour cold water over it.', { say: asWritten('Cold water done') }),
      ],
      makeSafe: asWritten('Put the kettle down.'),
    }),
  ];
}

function glow(): Step[] {
  return [
    step('glow', 'glow', {
      phase: 'purge',
      fixture: 'hob',
      needs: [{ step: 'rest-hob' }],
      demands: { 'burners-lit': 1 },
      attention: 'watch',
      gates: ['burner-clear', 'air'],
      durationS: { low: 600, typical: 900, high: 1200 },
      stages: [
        stage('light', 'Turn the burner to high.', {
          say: asWritten('It is on'),
          hazards: ['element'],
        }),
        stage('warm-up', 'Watch it until it glows.', {
          say: asWritten('It glows'),
          hazards: ['element'],
          resumption: 'restart',
          reviewAsk: asWritten('Did the burner stay on?'),
          timers: [
            {
              id: 'expect',
              role: 'estimate',
              purpose: 'at-least',
              lengthS: 240,
              label: asWritten('Glows about now'),
            },
            {
              id: 'limit',
              role: 'limit',
              purpose: 'at-most',
              lengthS: 720,
              label: asWritten('It should have glowed'),
              fault: 'no-glow',
            },
          ],
        }),
        stage('hold', 'Leave it glowing.', {
          say: asWritten('Go on to turn it off'),
          hazards: ['element'],
          resumption: 'restart',
          reviewAsk: asWritten('Did the burner keep glowing?'),
          timers: [
            {
              id: 'hold',
              role: 'hold',
              purpose: 'unbroken',
              lengthS: 600,
              label: asWritten('Glow'),
            },
            {
              id: 'look',
              role: 'reminder',
              purpose: 'at-most',
              lengthS: 300,
              label: asWritten('Look at the burner'),
              repeats: true,
            },
          ],
        }),
        stage('off', 'Turn the burner off.', { say: asWritten('It is off'), hazards: ['element'] }),
      ],
      makeSafe: asWritten('Turn the burner off.'),
    }),
    step('cool', 'cool', {
      phase: 'cool',
      fixture: 'hob',
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: 'glow' }],
      durationS: { low: 1800, typical: 1800, high: 1800 },
      stages: [
        stage('cool', 'Let it cool.', {
          hazards: ['hot-surface'],
          timers: [
            {
              id: 'cool',
              role: 'hold',
              purpose: 'at-least',
              lengthS: 1800,
              label: asWritten('Safe to touch'),
            },
          ],
        }),
      ],
    }),
  ];
}

const resources: Resource[] = [
  { id: 'hands', kind: 'hands', name: asWritten('Hands'), capacity: 1, unit: asWritten('people') },
  {
    id: 'kettle',
    kind: 'vessel',
    name: asWritten('The kettle'),
    capacity: 1,
    unit: asWritten('kettles'),
  },
  {
    id: 'burners-lit',
    kind: 'burners-lit',
    name: asWritten('Burners lit'),
    capacity: 1,
    unit: asWritten('burners'),
  },
];

export const steps: readonly Step[] = [
  ...cleanAndRest('sink'),
  ...cleanAndRest('hob'),
  ...kettle(1),
  ...kettle(2),
  ...glow(),
  step('cover-sink', 'cover', {
    phase: 'cover',
    fixture: 'sink',
    needs: [{ step: 'pour-2' }],
    demands: { hands: 1 },
    stages: [stage('cover', 'Put the rack in.', { say: asWritten('Covered') })],
  }),
];

/** A plan over these steps; the resources, gates and faults are the same for all. */
export function planOf(some: readonly Step[], more: Partial<Plan> = {}): Plan {
  const none = { low: 0, typical: 0, high: 0 };
  return {
    format: 'glowpour-plan',
    version: 2,
    kitchen,
    purpose: 'new-kitchen',
    custom: 'ashkenazic',
    boilingC: 100,
    methods: [],
    steps: some,
    resources,
    gates,
    cautions: [],
    faults,
    questions: [],
    shopping: [],
    totals: { hotL: none, coldL: none, kettles: none, electricityKWh: 0, gasKWh: 0, handsOnS: 0 },
    timetable: { startS: {}, finishS: 0, lowerBoundS: 0 },
    notices: [],
    ...more,
  };
}

export const smallPlan: Plan = planOf(steps);

/** The same without the rests, for tests about the purge alone. */
export const purgePlan: Plan = planOf(
  steps
    .filter(({ phase }) => phase !== 'clean' && phase !== 'rest')
    .map((one) => ({
      ...one,
      needs: one.needs.filter((need) => !need.step.startsWith('rest-')),
    })),
);
