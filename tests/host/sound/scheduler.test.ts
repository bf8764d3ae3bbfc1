import { beforeEach, describe, expect, it } from 'vitest';
import { createScheduler } from '../../../src/host/sound/scheduler.ts';
import type { Sounding } from '../../../src/host/sound/plan-soundings.ts';

type Node = { startS: number; stopS?: number | undefined; gain: number };

/** An audio clock moved by hand, with the little of it that the scheduler uses. */
class FakeAudio {
  currentTime = 100;
  destination = {};
  nodes: Node[] = [];
  createGain(): unknown {
    return { gain: { value: 1, setTargetAtTime: () => undefined }, connect: () => undefined };
  }
  createBufferSource(): unknown {
    const node: Node = { startS: NaN, gain: 1 };
    this.nodes.push(node);
    return {
      buffer: null,
      connect: (gain: { gain: { value: number } }) => {
        node.gain = gain.gain.value;
        return gain;
      },
      disconnect: () => undefined,
      start: (whenS: number) => (node.startS = whenS),
      stop: (whenS?: number) => (node.stopS = whenS ?? this.currentTime),
    };
  }
  /** Starts of nodes that were not stopped before they began. */
  get audible(): number[] {
    return this.nodes
      .filter(({ startS, stopS }) => !(stopS !== undefined && stopS <= startS))
      .map(({ startS }) => startS);
  }
}

const sounding = (key: string, atS: number): Sounding => {
  const id = key.split('~')[0] ?? '';
  const alerts = [{ id, family: 'due' as const, startInS: atS, round: 1 }];
  return { key, alerts, family: 'due', atS, gain: 0.5 };
};

describe('sounds on the audio clock', () => {
  let audio: FakeAudio;
  let scheduler: ReturnType<typeof createScheduler>;
  const wanted = new Set(['a~1']);
  beforeEach(() => {
    audio = new FakeAudio();
    const buffer = { duration: 1.6 } as AudioBuffer;
    scheduler = createScheduler(audio as unknown as AudioContext, () => buffer);
  });

  it('are put there ahead of time, once', () => {
    scheduler.follow([sounding('a~1#0', 5), sounding('a~1#1', 12)], wanted);
    audio.currentTime = 101;
    scheduler.follow([sounding('a~1#0', 4.01), sounding('a~1#1', 11.01)], wanted);
    expect(audio.audible).toEqual([105, 112]);
    expect(audio.nodes[0]?.gain).toBe(0.5);
  });

  it('are moved when the clocks drifted apart', () => {
    scheduler.follow([sounding('a~1#0', 5)], wanted);
    audio.currentTime = 101;
    scheduler.follow([sounding('a~1#0', 4.4)], wanted);
    expect(audio.audible).toEqual([105.4]);
  });

  it('are cut when the alert is answered, before and while they sound', () => {
    scheduler.follow([sounding('a~1#0', 0), sounding('a~1#1', 7)], wanted);
    audio.currentTime = 100.5;
    scheduler.follow([], new Set());
    expect(audio.nodes[0]?.stopS).toBeCloseTo(100.53, 5);
    expect(audio.audible).toEqual([100]);
    audio.currentTime = 110;
    scheduler.follow([], new Set());
    expect(audio.audible).toEqual([100]);
  });

  it('are not started twice when a plan still names them', () => {
    scheduler.follow([sounding('a~1#0', 0)], wanted);
    audio.currentTime = 100.1;
    scheduler.follow([sounding('a~1#0', -0.1)], wanted);
    audio.currentTime = 100.2;
    scheduler.follow([sounding('a~1#0', -0.2)], wanted);
    expect(audio.audible).toEqual([100]);
  });

  it('count as heard only after the audio clock has played them', () => {
    scheduler.follow([sounding('a~1#0', 1)], wanted);
    expect(scheduler.heard('a~1')).toBe(false);
    audio.currentTime = 101.1;
    expect(scheduler.heard('a~1')).toBe(false);
    audio.currentTime = 101.3;
    expect(scheduler.heard('a~1')).toBe(true);
    expect(scheduler.heard('b~1')).toBe(false);
  });

  it('all leave the timeline when it is cleared', () => {
    scheduler.follow([sounding('a~1#0', 3), sounding('a~1#1', 10)], wanted);
    scheduler.clear();
    expect(audio.audible).toEqual([]);
  });
});
