import type { Step } from '../../plan/index.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';

/** How long ago at most the fixture of a step was hot or doubted in this run, s; what every object has is none: Infinity. */
export function heatedAgoS({ heated }: RunState, { fixture = '' }: Step, now: Readings): number {
  const span = Object.hasOwn(heated, fixture) ? heated[fixture] : undefined;
  return span ? elapsed(span, now).atMostS : Infinity;
}
