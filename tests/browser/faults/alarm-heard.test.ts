import { afterAll, beforeAll, describe, expect, inject } from 'vitest';
import { itCan } from '../support/browser/abilities.ts';
import { notMeasured } from '../support/browser/calm.ts';
import { OnTablet } from '../support/on-tablet.ts';
import { pause, type Screen } from '../support/screen.ts';
import { growEar, type Ear, type Listening } from '../support/sound/ear.ts';

/** Earliest and latest a sounding may come after its moment, ms. The recording path is good to 100 ms. */
const EARLY_MS = -150;
const LATE_MS = 250;

describe('the alarm, recorded from the sound card', () => {
  const on = new OnTablet();
  let ear: Ear | undefined;
  let screen: Screen;
  let listening: Listening;

  beforeAll(async () => {
    // The tests themselves are left out then, each by its name.
    if (inject('lacks').hear !== '') return;
    await on.serve();
    ear = await growEar();
    await on.start({ env: ear.env });
    screen = await on.open();
    await screen.beginRun();
    listening = await ear.listen();
  });
  afterAll(async () => {
    listening?.stop();
    await on.end();
    ear?.stop();
  });

  async function listen(): Promise<Listening> {
    if (!ear) throw new Error('No sound server is started.');
    return ear.listen();
  }

  /** To the next timer that must be answered, with the sound armed, so many seconds before it is due. */
  async function beforeDue(leftS: number): Promise<number> {
    // One that calls from before is answered first.
    while (await screen.see<boolean>("document.querySelector('.clock-row--due') !== null"))
      await screen.act();
    // There no other timer of this run is near.
    await screen.actUntil({ kind: 'pour', stage: 'cold' });
    const { wakeInS } = await screen.until('a timer', (seen) => (seen.wakeInS ?? 99) < 60);
    listening.stop();
    listening = await listen();
    await screen.jump(((wakeInS ?? 0) - leftS) * 1000);
    await screen.until('the sound is armed', (seen) => seen.sound === 'armed');
    return screen.see<number>('hands.dueAt()');
  }

  /** The audio clock of the page beside this machine's, to see how far a busy machine let it stand. */
  const audioClock = () =>
    screen.see<{ audioMs: number; wallMs: number }>(
      '({ audioMs: hands.audio.at(-1).currentTime * 1000, wallMs: hands.realNow() })',
    );

  /**
   * The first sounding of an alarm since `fromMs` is the alarm's, and on time.
   * How far the audio clock stood meanwhile is told beside it.
   */
  async function hearOnTime(what: string, wantedMs: number, fromMs = wantedMs - 3000) {
    const before = await audioClock();
    await pause(Math.max(0, wantedMs - Date.now()));
    const endMs = Date.now() + 6000;
    let first: ReturnType<Listening['soundings']>[number] | undefined;
    while (!first && Date.now() < endMs) {
      await pause(300);
      first = listening.soundings().find((one) => one.wallMs > fromMs);
    }
    const after = await audioClock();
    if (!first) {
      const begins = await screen.see<number[]>('hands.begins');
      throw new Error(
        `${what}: nothing was heard within 6 s of its moment. ${JSON.stringify({
          begunAtS: begins.map((ms) => (ms - wantedMs) / 1000).filter((s) => s > -20),
          audioRan: (after.audioMs - before.audioMs) / (after.wallMs - before.wallMs),
          states: await screen.see('hands.audio.map((one) => one.state)'),
          recorded: listening.levels(wantedMs - 3000),
          sound: (await screen.look()).sound,
        })}`,
      );
    }
    const stoodMs = after.wallMs - before.wallMs - (after.audioMs - before.audioMs);
    const offMs = Math.round(first.wallMs - wantedMs);
    console.log(`${what}: heard ${offMs} ms after its moment; audio clock stood ${stoodMs} ms`);
    expect(first.family).toBe('due');
    expect(offMs).toBeGreaterThan(EARLY_MS);
    // On a machine with more to do than it can, sound cards stutter (seen: 1.05 s), in which no page has a say.
    const why = notMeasured();
    if (why) console.log(`${what}: how late it was is ${why}`);
    else expect(offMs).toBeLessThan(LATE_MS);
  }

  itCan(
    ['hear'],
    'sounds on time on a quiet page, repeats until it is answered, and then falls silent',
    async () => {
      const dueMs = await beforeDue(4);
      await hearOnTime('quiet page', dueMs);
      await screen.picture('faults/alarm-due');
      await pause(Math.max(0, dueMs + 16_500 - Date.now()));
      const heard = listening.soundings().filter((one) => one.wallMs > dueMs - 3000);
      // It grows every 7 s first (src/host/sound/families.ts).
      const inS = heard.map((one) => (one.wallMs - dueMs) / 1000);
      expect(heard, `soundings at ${inS.join(', ')} s`).toHaveLength(3);
      for (const [n, one] of inS.entries()) expect(one).toBeCloseTo(7 * n, 0);
      await screen.act();
      const answeredMs = Date.now();
      await pause(8000);
      expect(listening.soundings().filter((one) => one.wallMs > answeredMs + 200)).toEqual([]);
    },
  );

  itCan(['hear'], 'sounds on time while the page is stuck for 6 s around the moment', async () => {
    const dueMs = await beforeDue(6);
    await pause(Math.max(0, dueMs - 3000 - Date.now()));
    const stuck = screen.see('{ const t = Date.now(); while (Date.now() - t < 6000); }');
    await hearOnTime('stuck page', dueMs);
    await stuck;
    await screen.act();
  });

  itCan(['hear'], 'sounds on time after 40 s of silence', async () => {
    const dueMs = await beforeDue(42);
    await hearOnTime('40 s of silence', dueMs, dueMs - 30_000);
    await screen.act();
  });

  itCan(
    ['hear'],
    'sounds on time after the device stopped the audio and it was mended',
    async () => {
      const dueMs = await beforeDue(9);
      await screen.see(
        'Promise.all(hands.audio.map((one) => one.suspend())).then(() => undefined)',
      );
      await hearOnTime('mended audio', dueMs);
      await screen.act();
    },
  );

  itCan(
    ['hear', 'freeze'],
    'sounds at once on waking when the moment passed while the page was frozen, and says how late',
    async () => {
      const dueMs = await beforeDue(3);
      await screen.cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
      await pause(Math.max(0, dueMs + 4000 - Date.now()));
      expect(listening.soundings().filter((one) => one.wallMs > dueMs - 2000)).toEqual([]);
      const wokeMs = Date.now();
      await screen.cdp.send('Page.setWebLifecycleState', { state: 'active' });
      await hearOnTime('woken page', wokeMs, dueMs - 2000);
      await screen.picture('faults/alarm-after-freeze');
    },
  );
});
