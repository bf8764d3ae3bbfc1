import type { FaultPolicy, Gate } from '../../../src/core/plan/index.ts';

export const gates: Gate[] = [
  {
    id: 'scald-dress',
    kind: 'caution',
    signal: 'WARNING',
    ask: 'Closed shoes and gloves on?',
    say: 'Dress against scalds.',
    scope: 'run',
    lapsesS: 1800,
    trippedBy: [],
    settleS: 0,
    makeSafe: '',
  },
  {
    id: 'burner-clear',
    kind: 'caution',
    signal: 'DANGER',
    ask: 'Nothing that burns near the burner?',
    say: 'Clear the stove.',
    scope: 'step',
    trippedBy: [],
    settleS: 0,
    makeSafe: '',
  },
  {
    id: 'air',
    kind: 'condition',
    signal: 'WARNING',
    ask: 'Hood on high and window open, nobody unwell?',
    say: 'Bad air.',
    scope: 'run',
    trippedBy: ['co-alarm', 'unwell'],
    settleS: 600,
    makeSafe: 'Heat off, everybody out.',
  },
];

function policy(kind: FaultPolicy['kind'], name: string, what: FaultPolicy['policy']): FaultPolicy {
  return { kind, name, policy: what, doThis: ['Do it.'] };
}

export const faults: readonly FaultPolicy[] = [
  policy('no-glow', 'It does not glow', 'suspend'),
  policy('flame-out', 'The flame went out', 'suspend'),
  policy('power-cut', 'The power failed', 'suspend'),
  policy('co-alarm', 'The gas alarm sounds', 'suspend'),
  policy('unwell', 'Somebody feels unwell', 'suspend'),
  policy('fire', 'Fire', 'stop-run'),
  policy('cracked', 'Something cracked', 'note'),
];
