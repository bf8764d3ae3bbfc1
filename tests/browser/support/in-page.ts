/**
 * Runs inside the page before the app does. It moves the page's clocks without
 * touching its timers, so that waits of hours pass at once while sound and
 * storage stay real, and it acts as a person would. Kept free of imports: it
 * is handed to the browser as text.
 */
export type Seen = {
  readonly status: string;
  readonly sentence: string;
  readonly action: string;
  readonly waiting: string;
  readonly wakeInS: number | null;
  readonly armScreen: boolean;
  readonly sound: string;
  readonly text: string;
};

export type TestHands = {
  /** Both clocks forward, ms, as if the page had stood meanwhile; it wakes at once. */
  jump(ms: number): void;
  /** Only what is named, ms; nothing is told to the page. */
  shift(by: { wallMs?: number; monoMs?: number }): void;
  /** Real time of this machine at which something is due next, ms, from the next view. */
  dueAt(): Promise<number>;
  /** Real time of this machine, ms. */
  realNow(): number;
  /** Real times at which sounds were put on the audio clock to begin, ms; whether they were cut again is not seen. */
  readonly begins: number[];
  /** Every audio context the page made. */
  readonly audio: AudioContext[];
  shifted(): { wallMs: number; monoMs: number };
  look(): Seen;
  /** One thing a person would do now; resolves when the screen has answered. */
  act(): Promise<void>;
  /** Acts until the sentence of the stage matches, or the status is it. */
  actUntil(pattern: string, most: number): Promise<Seen>;
};

export function installHands(wallShiftMs: number): void {
  const shift = { wallMs: wallShiftMs, monoMs: 0 };
  const RealDate = Date;
  const realNow = performance.now.bind(performance);
  class ShiftedDate extends RealDate {
    constructor(...args: unknown[]) {
      if (args.length === 0) super(RealDate.now() + shift.wallMs);
      else super(...(args as [number]));
    }
    static override now(): number {
      return RealDate.now() + shift.wallMs;
    }
  }
  globalThis.Date = ShiftedDate as DateConstructor;
  performance.now = () => realNow() + shift.monoMs;

  const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  const shown = (element: HTMLElement | null): element is HTMLElement =>
    element !== null && element.getClientRects().length > 0;
  const find = (selector: string) => {
    const element = document.querySelector<HTMLElement>(selector);
    return shown(element) ? element : null;
  };
  const textOf = (selector: string) => find(selector)?.innerText.trim() ?? '';
  const look = (): Seen => {
    const place = document.querySelector<HTMLElement>('.run-place');
    const wake = place?.dataset['wakeInS'] ?? '';
    return {
      status: place?.dataset['status'] ?? '',
      sentence: textOf('.stage-sentence'),
      action: textOf('.main-action'),
      waiting: textOf('.main-wait'),
      wakeInS: wake === '' ? null : Number(wake),
      armScreen: find('.arm-screen') !== null,
      sound: document.querySelector<HTMLElement>('[data-sound]')?.dataset['sound'] ?? '',
      text: document.body?.innerText ?? '',
    };
  };
  const short = (): string => JSON.stringify({ ...look(), sound: '' });
  const changed = async (before: string): Promise<void> => {
    for (let n = 0; n < 60; n += 1) {
      if (short() !== before) return;
      await pause(20);
    }
  };
  const jump = (ms: number): void => {
    shift.wallMs += ms;
    shift.monoMs += ms;
    window.dispatchEvent(new Event('pageshow'));
  };
  const act = async (): Promise<void> => {
    // A person takes longer than the guard against bounces.
    shift.wallMs += 400;
    shift.monoMs += 400;
    const seen = look();
    const before = short();
    const target =
      find('.arm-screen') ??
      (seen.status === 'reviewing'
        ? (find('.review .button--ember') ?? find('.review .main-action'))
        : null) ??
      find('.clock-question .button--ember') ??
      (seen.action === '' ? null : find('.main-action:not(:disabled)'));
    if (target) target.click();
    else jump(Math.ceil((seen.wakeInS ?? 60) * 1000) + 1000);
    // The stage may turn at once, but facts come to it only by way of the disk.
    await pause(30);
    await changed(before);
  };
  const audio: AudioContext[] = [];
  const begins: number[] = [];
  const dueAt = (): Promise<number> =>
    new Promise((resolve, reject) => {
      const place = document.querySelector<HTMLElement>('.run-place');
      if (!place) return reject(new Error('no run on the screen'));
      const watcher = new MutationObserver(() => {
        watcher.disconnect();
        resolve(RealDate.now() + Number(place.dataset['wakeInS']) * 1000);
      });
      watcher.observe(place, { attributes: true, attributeFilter: ['data-wake-in-s'] });
    });
  const hands: TestHands = {
    audio,
    begins,
    realNow: () => RealDate.now(),
    dueAt,
    jump,
    shift(by) {
      shift.wallMs += by.wallMs ?? 0;
      shift.monoMs += by.monoMs ?? 0;
    },
    shifted: () => ({ ...shift }),
    look,
    act,
    async actUntil(pattern, most) {
      const wanted = new RegExp(pattern, 'i');
      const last: string[] = [];
      for (let n = 0; n < most; n += 1) {
        const seen = look();
        if (wanted.test(seen.sentence) || wanted.test(seen.status)) return seen;
        const { text: _text, ...rest } = seen;
        last.push(JSON.stringify(rest));
        await act();
      }
      throw new Error(`Not there after ${most} acts: ${last.slice(-5).join('\n')}`);
    },
  };
  // oxlint-disable-next-line typescript/unbound-method
  const begin = AudioBufferSourceNode.prototype.start;
  AudioBufferSourceNode.prototype.start = function start(when = 0, ...rest: number[]) {
    begins.push(RealDate.now() + Math.max(0, when - this.context.currentTime) * 1000);
    begin.call(this, when, ...rest);
  };
  const RealContext = globalThis.AudioContext;
  globalThis.AudioContext = class extends RealContext {
    constructor(options?: AudioContextOptions) {
      super(options);
      audio.push(this);
    }
  };
  Object.assign(globalThis, { hands });
}
