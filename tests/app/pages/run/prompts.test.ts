import { asWritten } from '../../../../src/core/messages/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { describe, expect, it } from 'vitest';
import {
  NOTHING_TOLD,
  promptAgain,
  promptOf,
  type Told,
} from '../../../../src/app/pages/run/voice/prompts.ts';
import { purgePlan, smallPlan } from '../../../core/run/support/fixtures.ts';
import { glowing, Tablet } from '../../../core/run/support/tablet.ts';

/** Speaks to the one who stands before this tablet, and remembers what it said. */
class Listener {
  told: Told = NOTHING_TOLD;
  hears(tablet: Tablet): string {
    const view = tablet.view;
    const next = promptOf(this.told, view, view.currentSteps[0]);
    this.told = next.told;
    return next.says.map(inEnglish.say).join(' ');
  }
}

describe('what is spoken', () => {
  it('is the step once, and nothing while only seconds pass', () => {
    const tablet = glowing(purgePlan);
    const listener = new Listener();
    expect(listener.hears(tablet)).not.toBe('');
    for (let n = 0; n < 60; n += 1) {
      tablet.passes(1);
      expect(listener.hears(tablet)).toBe('');
    }
  });

  it('asks the gate with its signal word before a step begins', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' });
    const { view } = tablet;
    const step = view.steps.find((one) => one.gates.length > 0);
    const gate = step?.gates[0];
    if (!step || !gate) throw new Error('the plan has no gate');
    const asked = { ...step, status: 'ready', gates: [{ ...gate, value: 'unknown' }] } as const;
    const [said] = promptOf(NOTHING_TOLD, view, asked).says;
    const { signal, ask } = gate.gate;
    expect(said).toEqual({
      key: 'run.voice.gate',
      params: { signal: { key: `common.signal.${signal}`, params: {} }, ask },
    });
    expect(inEnglish.say(said!)).toContain(inEnglish.say(ask));
  });

  it('tells a timer that comes due, once for each time', () => {
    const tablet = glowing(purgePlan);
    const listener = new Listener();
    listener.hears(tablet);
    tablet.passes(310);
    const calling = tablet.view.timers.find((timer) => timer.alerting);
    if (!calling) throw new Error('no timer calls');
    const said = listener.hears(tablet);
    expect(said).not.toBe('');
    expect(listener.hears(tablet)).toBe('');
    tablet.does({ kind: 'acknowledge-timer', timer: calling.id });
    listener.hears(tablet);
  });

  it('tells what to do on a fault before anything else', () => {
    const tablet = glowing(purgePlan);
    const listener = new Listener();
    listener.hears(tablet);
    const fault = tablet.view.plan.faults.find(({ policy }) => policy === 'suspend');
    if (!fault) throw new Error('the plan has no fault that suspends');
    tablet.does({ kind: 'report-fault', fault: fault.kind, step: 'glow' });
    const said = listener.hears(tablet);
    expect(said.startsWith(inEnglish.say(fault.name))).toBe(true);
    for (const line of fault.doThis)
      expect(said).toContain(inEnglish.say(line).replace(/[.!?]$/, ''));
    expect(listener.hears(tablet)).toBe('');
  });

  it('is nothing before the run, and nothing after it', () => {
    const tablet = new Tablet(smallPlan);
    expect(new Listener().hears(tablet)).toBe('');
  });

  it('is nothing on a rest day (I-19)', () => {
    const { view } = glowing(purgePlan);
    const still = { ...view, restDay: { name: asWritten('Sabbath'), toWallMs: 0, leftS: 3600 } };
    expect(promptOf(NOTHING_TOLD, still, view.currentSteps[0]).says).toEqual([]);
  });

  it('says all of it again when asked', () => {
    const tablet = glowing(purgePlan);
    const { view } = tablet;
    expect(promptAgain(view, view.currentSteps[0]).map(inEnglish.say).join(' ')).toBe(
      new Listener().hears(tablet),
    );
  });
});
