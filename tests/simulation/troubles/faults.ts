import type { FaultKind } from '../../../src/core/plan/index.ts';
import { HOUR_S, type Trouble } from './moment.ts';

const FAULTS: readonly FaultKind[] = [
  'no-glow',
  'flame-out',
  'power-cut',
  'smoke',
  'co-alarm',
  'unwell',
  'burned',
  'kettle-failed',
  'breaker-tripped',
  'undefined',
  'cracked',
];
const BREAKING: ReadonlySet<FaultKind> = new Set([
  'no-glow',
  'flame-out',
  'power-cut',
  'kettle-failed',
  'breaker-tripped',
  'undefined',
]);
export const fault: Trouble = (world, dice, _, { holding }) => {
  const kind = dice.pick(FAULTS) ?? 'undefined';
  const about = holding && dice.chance(0.7) ? holding.step.id : undefined;
  const done = world.asks({
    kind: 'report-fault',
    fault: kind,
    ...(about === undefined ? {} : { step: about }),
  });
  if (
    done.refusal === null &&
    holding &&
    BREAKING.has(kind) &&
    world.truth.places.has(holding.step.id)
  )
    world.truth.breaks(holding.step.id, true);
  world.passes(dice.chance(0.5) ? dice.between(5, 200) : dice.between(0.3, 3) * HOUR_S);
};
export const faultNowhere: Trouble = (world, dice, found) => {
  const step = dice.pick(['no-such-step', 'constructor', 'toString', '__proto__']) ?? '';
  const done = world.asks({ kind: 'report-fault', fault: 'co-alarm', step });
  if (done.refusal === null)
    found.add(
      world,
      'I-12',
      'a fault nowhere',
      `A fault was taken at “${step}”, which is no step.`,
    );
};
