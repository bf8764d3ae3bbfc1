import { promise, run, type Mutation } from './types.ts';

/** A burn's clock, made short, forgotten or left behind. */
export const burnMutations: readonly Mutation[] = [
  {
    id: 'cooling-by-the-wall',
    breaks: ['I-30'],
    file: 'src/core/run/timers/cooling.ts',
    find: 'COOLING_S - elapsed(cooling.span, now).atLeastS);',
    replace: 'COOLING_S - elapsed(cooling.span, now).atMostS);',
    why: 'A clock set forward ends the cooling of a burn after minutes.',
    tests: [run('timers/cooling')],
  },
  {
    id: 'cooling-forgotten-in-a-gap',
    breaks: ['I-30'],
    file: 'src/core/run/timers/map-spans.ts',
    find: 'coolings: state.coolings.map((one) => ({ ...one, span: alone(one.span) })),',
    replace: 'coolings: [],',
    why: 'A reload ends the cooling of a burn.',
    tests: [run('timers/cooling')],
  },
  {
    id: 'closed-over-a-burn',
    breaks: ['I-30'],
    file: 'src/core/run/engine/turn.ts',
    find: 'if (facts.length > 0 || open || state.coolings.length > 0) return facts;',
    replace: 'if (facts.length > 0 || open) return facts;',
    why: 'Stop takes the clock of a burn away.',
    tests: [run('timers/cooling')],
  },
  {
    id: 'burn-by-the-plan',
    breaks: ['I-30'],
    file: 'src/core/run/rules/faults.ts',
    find: "  if (kind === 'burned') return BURNED;\n",
    replace: '',
    why: 'A plan from a file says that a burn halts nothing.',
    tests: [promise('burned')],
  },
  {
    id: 'burner-left-on',
    breaks: ['I-30'],
    file: 'src/core/run/apply/faults.ts',
    find: "step.attention !== 'none' &&",
    replace: "step.attention === 'none' &&",
    why: 'A burner glows on while everybody is at the tap.',
    tests: [promise('burned')],
  },
  {
    id: 'heat-begun-beside-a-burn',
    breaks: ['I-30'],
    file: 'src/core/run/decide/steps.ts',
    find: ' || heatsWhileCooling(state, step, one.stage + 1)',
    replace: '',
    why: 'A kettle is switched on while a burn is cooled.',
    tests: [promise('burned')],
  },
];
