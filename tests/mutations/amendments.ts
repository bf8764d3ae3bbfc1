import { promise, run, type Mutation } from './types.ts';

/** A plan changed in the run guards no less than before. */
export const amendmentMutations: readonly Mutation[] = [
  {
    id: 'amendment-drops-the-cold',
    breaks: ['I-18'],
    file: 'src/core/run/decide/amend-guards.ts',
    find: 'place < 0 || place <= (order[i - 1] ?? -1)',
    replace: 'place < -9 || i < 0',
    why: 'A changed plan pours without cold water.',
    tests: [run('amend')],
  },
  {
    id: 'amendment-in-a-circle',
    breaks: ['I-13'],
    file: 'src/core/run/decide/amend-guards.ts',
    find: '    if (above.has(id)) return id;',
    replace: '    if (above.has(id)) return undefined;',
    why: 'Two steps wait for each other for ever.',
    tests: [run('amend')],
  },
  {
    id: 'amendment-of-what-has-begun',
    breaks: ['I-04'],
    file: 'src/core/run/decide/amend.ts',
    find: "  if (before && state.steps[step.id]?.status !== 'waiting') {",
    replace: "  if (before && state.steps[step.id]?.status === 'unwinding') {",
    why: 'Work in progress is changed under the hand.',
    tests: [run('amend')],
  },
  {
    id: 'amendment-needs-nothing-fresh',
    breaks: ['I-11'],
    file: 'src/core/run/decide/amend-guards.ts',
    find: '  if (shortestS(step) > freshest)',
    replace: '  if (shortestS(step) < freshest)',
    why: 'An added kettle is poured whenever.',
    tests: [run('amend')],
  },
  {
    id: 'amendment-adds-unguarded',
    breaks: ['I-11'],
    file: 'src/core/run/decide/amend-guards.ts',
    find: '  for (const sibling of siblings) {',
    replace: '  for (const sibling of siblings.slice(0, 0)) {',
    why: 'An added kettle is poured without gloves asked for.',
    tests: [run('amend')],
  },
  {
    id: 'ran-out-gives-to-what-is-over',
    breaks: ['I-29'],
    file: 'src/core/plan/amend/ran-out.ts',
    find: 'const isAgain = later.some((one) => hasBegun(one.pour.id));',
    replace: 'const isAgain = hasBegun(fixture.id);',
    why: 'What a kettle poured again leaves dry is given to kettles that are over, and nobody pours it.',
    tests: [promise('plans/ran-out'), 'tests/core/plan/ran-out.test.ts'],
  },
];
