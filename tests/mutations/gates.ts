import { promise, run, type Mutation } from './types.ts';

const GATES = 'src/core/run/rules/gates.ts';

/** Gates open by a person's yes alone, and resume nothing. */
export const gateMutations: readonly Mutation[] = [
  {
    id: 'unknown-opens',
    breaks: ['I-05', 'I-11'],
    file: GATES,
    find: "  return known.value === 'yes' && settles",
    replace: "  return known.value !== 'no' && settles",
    why: 'A question that nobody answered lets the step begin.',
    tests: [run('gates'), run('steps')],
  },
  {
    id: 'missing-gate-opens',
    breaks: ['I-05', 'I-11'],
    file: GATES,
    find: '  return step.gates.map((id) => {',
    replace: '  return step.gates.filter((id) => gates.has(id)).map((id) => {',
    why: 'A gate that the plan forgot to describe guards nothing.',
    tests: [run('gates')],
  },
  {
    id: 'gates-not-asked',
    breaks: ['I-11'],
    file: 'src/core/run/decide/steps.ts',
    find: '  for (const shut of shutGates(state, step, attempt, now)) {',
    replace: '  for (const shut of shutGates(state, step, attempt, now).slice(0, 0)) {',
    why: 'A step starts with its safety questions open.',
    tests: [run('gates'), run('steps')],
  },
  {
    id: 'yes-lasts-for-ever',
    breaks: ['I-05'],
    file: GATES,
    find: ' || awayS(state, now) > gate.lapsesS;',
    replace: ' || awayS(state, now) > Infinity;',
    why: 'Gloves put on yesterday count today.',
    tests: [run('gates'), promise('lapsing-gates')],
  },
  {
    id: 'clearing-resumes',
    breaks: ['I-06'],
    file: 'src/core/run/apply/faults.ts',
    find: '  let next: RunState = {\n    ...state,\n',
    replace: "  let next: RunState = {\n    ...state,\n    status: 'running',\n",
    why: 'The run goes on by itself when a fault is put right.',
    tests: [run('gates'), run('timers')],
  },
  {
    id: 'resume-past-everything',
    breaks: ['I-06', 'I-12'],
    file: 'src/core/run/decide/control.ts',
    find: "  return first ? { refusal: first } : accept({ kind: 'resumed' });",
    replace:
      "  return first && state.storageDown ? { refusal: first } : accept({ kind: 'resumed' });",
    why: 'A person resumes over an open fault.',
    tests: [run('gates')],
  },
  {
    id: 'resume-while-hot',
    breaks: ['I-06', 'I-13'],
    file: 'src/core/run/decide/control.ts',
    find: "  if (Object.values(state.steps).some((one) => one.status === 'unwinding'))\n",
    replace:
      "  if (Object.values(state.steps).some((one) => one.status === 'unwinding' && one.safe))\n",
    why: 'Work goes on beside something that was to be made safe.',
    tests: [run('gates')],
  },
  {
    id: 'storage-halts-the-stopping',
    breaks: ['I-13'],
    file: 'src/core/run/apply/change.ts',
    find: "  if (state.status === 'running' || state.status === 'held' || state.status === 'suspended') {",
    replace: "  if (state.status !== 'closed') {",
    why: 'A run that is being stopped is suspended, and never closes.',
    tests: [run('gates')],
  },
  {
    id: 'danger-overridden',
    breaks: ['I-11'],
    file: 'src/core/run/decide/gates.ts',
    find: "?.signal === 'DANGER') {",
    replace: "?.signal === 'NOTICE') {",
    why: 'A question of life and death is waved through.',
    tests: [run('gates')],
  },
];
