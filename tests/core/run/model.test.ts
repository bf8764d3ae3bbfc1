import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../../../src/core/run/index.ts';
import { deeds, openings } from './model/deeds.ts';
import { inspect, plan, planWithRestDays, Truth, type Deed } from './model/truth.ts';
import { Tablet } from './support/tablet.ts';

/** A deed as a command of the property tester. */
class Act implements fc.Command<Truth, Tablet> {
  readonly deed: Deed;
  constructor(deed: Deed) {
    this.deed = deed;
  }
  check(): boolean {
    return true;
  }
  run(truth: Truth, tablet: Tablet): void {
    const before = tablet.state;
    this.deed.does(tablet);
    tablet.tries({ kind: 'tick' });
    inspect(truth, tablet, this.deed, before);
  }
  toString(): string {
    return this.deed.name;
  }
}

/** The slow lane takes minutes; the runner's usual limit is for the everyday one. */
const SLOW_MS = 3_600_000;

/** Runs in the everyday test; the slow lane asks for more. */
const RUNS = Number(process.env['GLOWPOUR_RUNS'] ?? 600);

describe('any sequence of deeds, against a true clock that nobody sees', () => {
  it(
    'keeps the invariants, folds to its state, and can be stopped to the end',
    () => {
      // Verifies: I-01, I-04, I-05, I-06, I-07, I-08, I-09, I-11, I-13, I-16, I-17, I-18, I-19, I-30
      const commands = fc.commands(
        deeds.map((deed) => deed.map((one) => new Act(one))),
        { maxCommands: 40, size: 'max' },
      );
      const met: Record<string, number> = {};
      let insideRestDays = 0;
      const opening = fc.constantFrom(...Object.keys(openings));
      fc.assert(
        fc.property(fc.boolean(), opening, commands, (keepsDays, name, sequence) => {
          const real = new Tablet(keepsDays ? planWithRestDays : plan);
          real.does({ kind: 'start-run' });
          const model = new Truth();
          for (const deed of openings[name] ?? []) new Act(deed).run(model, real);
          fc.modelRun(() => ({ model, real }), sequence);
          expect(fold(real.facts)).toEqual(real.state);
          insideRestDays += model.seenRestDays;
          for (const kind of new Set(real.kinds())) met[kind] = (met[kind] ?? 0) + 1;
          if (real.state.status === 'closed') return;
          real.does({ kind: 'stop-run', reason: 'The end.' });
          for (const { step, confirmed } of real.view.hot) {
            if (!confirmed) real.does({ kind: 'confirm-safe', step });
          }
          for (const { fault } of real.view.coolings)
            real.does({ kind: 'end-cooling', faultId: fault, as: 'taken-over' });
          expect(real.state.status).toBe('closed');
        }),
        { numRuns: RUNS },
      );
      expect(insideRestDays).toBeGreaterThan(RUNS / 3);
      // The sequences are no idle ones: each of these came about in many of them.
      for (const kind of [
        'stage-restarted',
        'step-repeated',
        'safe-confirmed',
        'clock-answered',
        'resumed',
        'review-answered',
        'timer-due',
        'recheck-reported',
        'fault-cleared',
        'cooling-ended',
        'alarm-handed',
        'alarm-failed',
      ])
        expect(met[kind], kind).toBeGreaterThan(RUNS / 200);
    },
    SLOW_MS,
  );
});
