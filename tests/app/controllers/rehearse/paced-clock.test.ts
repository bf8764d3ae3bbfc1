import { beforeEach, describe, expect, it } from 'vitest';
import {
  createPacedClock,
  type PacedClock,
} from '../../../../src/app/controllers/rehearse/paced-clock.ts';

const START_MS = Date.UTC(2026, 2, 1, 15);
const HOUR_MS = 3_600_000;

let realMs: number;
let clock: PacedClock;

beforeEach(() => {
  realMs = 5000;
  clock = createPacedClock(START_MS, () => realMs);
});

const wallMs = (): number => clock.readClocks().wallMs;

describe('the clocks of a rehearsal', () => {
  it('stand until they are sent, and stop where they were sent', () => {
    realMs += 10_000;
    expect(wallMs()).toBe(START_MS);
    clock.runTo(START_MS + HOUR_MS, 1000);
    expect(clock.isThere()).toBe(false);
    realMs += 250;
    expect(wallMs()).toBe(START_MS + HOUR_MS / 4);
    expect(clock.atS()).toBe(900);
    realMs += 60_000;
    expect(wallMs()).toBe(START_MS + HOUR_MS);
    expect(clock.isThere()).toBe(true);
  });

  it('pass together, so that no run takes one for wrong', () => {
    clock.runTo(START_MS + HOUR_MS, 1000);
    for (let n = 0; n < 12; n += 1) {
      const { wallMs: wall, monoMs, session } = clock.readClocks();
      expect(wall - monoMs).toBe(START_MS);
      expect(session).toBe('rehearsal');
      realMs += 100;
    }
  });

  it('stand while paused, and go on from there', () => {
    clock.runTo(START_MS + HOUR_MS, 1000);
    realMs += 500;
    clock.setPlaying(false);
    realMs += 100_000;
    expect(wallMs()).toBe(START_MS + HOUR_MS / 2);
    clock.setPlaying(true);
    realMs += 250;
    expect(wallMs()).toBe(START_MS + (HOUR_MS / 4) * 3);
  });

  it('are there at once when told so, paused or not', () => {
    clock.setPlaying(false);
    clock.runTo(START_MS + HOUR_MS, 1000);
    expect(wallMs()).toBe(START_MS);
    clock.finish();
    expect(wallMs()).toBe(START_MS + HOUR_MS);
  });

  it('keep what has passed when the speed changes', () => {
    clock.runTo(START_MS + HOUR_MS, 1000);
    realMs += 500;
    clock.setSpeed(0.5);
    expect(wallMs()).toBe(START_MS + HOUR_MS / 2);
    realMs += 500;
    expect(wallMs()).toBe(START_MS + (HOUR_MS / 4) * 3);
    clock.setSpeed(4);
    realMs += 63;
    expect(clock.isThere()).toBe(true);
  });

  it('never go back, wherever they are sent', () => {
    clock.runTo(START_MS + HOUR_MS, 1000);
    realMs += 500;
    clock.runTo(START_MS, 1000);
    realMs += 400;
    expect(wallMs()).toBe(START_MS + HOUR_MS / 2);
  });

  it('leap at the end of their time where nothing is to move', () => {
    const still = createPacedClock(
      START_MS,
      () => realMs,
      () => true,
    );
    still.runTo(START_MS + HOUR_MS, 1000);
    realMs += 999;
    expect(still.readClocks().wallMs).toBe(START_MS);
    realMs += 1;
    expect(still.readClocks().wallMs).toBe(START_MS + HOUR_MS);
  });
});
