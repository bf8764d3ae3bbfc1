import { asWritten } from '../../../../src/core/messages/index.ts';
import type { FaultPolicy, Gate } from '../../../../src/core/plan/index.ts';

export const gates: Gate[] = [
  {
    id: 'scald-dress',
    kind: 'caution',
    signal: 'WARNING',
    ask: asWritten('Closed shoes and gloves on?'),
    say: asWritten('Dress against scalds.'),
    scope: 'run',
    lapsesS: 1800,
    trippedBy: [],
    settleS: 0,
    makeSafe: asWritten(''),
  },
  {
    id: 'burner-clear',
    kind: 'caution',
    signal: 'DANGER',
    ask: asWritten('Nothing that burns near the burner?'),
    say: asWritten('Clear the stove.'),
    scope: 'step',
    trippedBy: [],
    settleS: 0,
    makeSafe: asWritten(''),
  },
  {
    id: 'air',
    kind: 'condition',
    signal: 'WARNING',
    ask: asWritten('Hood on high and window open, nobody unwell?'),
    say: asWritten('Bad air.'),
    scope: 'run',
    trippedBy: ['co-alarm', 'unwell'],
    settleS: 600,
    makeSafe: asWritten('Heat off, everybody out.'),
  },
];

function policy(kind: FaultPolicy['kind'], name: string, what: FaultPolicy['policy']): FaultPolicy {
  return { kind, name: asWritten(name), policy: what, doThis: [asWritten('Do it.')] };
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
