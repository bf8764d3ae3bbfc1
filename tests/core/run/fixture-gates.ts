import { unkeyed } from '../../../src/core/messages/temporary.ts';
import type { FaultPolicy, Gate } from '../../../src/core/plan/index.ts';

export const gates: Gate[] = [
  {
    id: 'scald-dress',
    kind: 'caution',
    signal: 'WARNING',
    ask: unkeyed('Closed shoes and gloves on?'),
    say: unkeyed('Dress against scalds.'),
    scope: 'run',
    lapsesS: 1800,
    trippedBy: [],
    settleS: 0,
    makeSafe: unkeyed(''),
  },
  {
    id: 'burner-clear',
    kind: 'caution',
    signal: 'DANGER',
    ask: unkeyed('Nothing that burns near the burner?'),
    say: unkeyed('Clear the stove.'),
    scope: 'step',
    trippedBy: [],
    settleS: 0,
    makeSafe: unkeyed(''),
  },
  {
    id: 'air',
    kind: 'condition',
    signal: 'WARNING',
    ask: unkeyed('Hood on high and window open, nobody unwell?'),
    say: unkeyed('Bad air.'),
    scope: 'run',
    trippedBy: ['co-alarm', 'unwell'],
    settleS: 600,
    makeSafe: unkeyed('Heat off, everybody out.'),
  },
];

function policy(kind: FaultPolicy['kind'], name: string, what: FaultPolicy['policy']): FaultPolicy {
  return { kind, name: unkeyed(name), policy: what, doThis: [unkeyed('Do it.')] };
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
