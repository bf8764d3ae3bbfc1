/**
 * Runs inside the page before the app does. It moves the page's clocks without
 * touching its timers, so that waits of hours pass at once while sound and
 * storage stay real, and it acts as a person would. It steers by attributes
 * that are the same in every language, never by what is written. Kept free of
 * imports: it is handed to the browser as text.
 */
export type Seen = {
  readonly status: string;
  /** Of the step that is shown; empty where none is. */
  readonly step: string;
  readonly kind: string;
  /** Role of the stage that is shown. */
  readonly stage: string;
  /** Which kettle of how many; 0 where it is none. */
  readonly kettle: number;
  readonly kettles: number;
  /** The gate that is asked. */
  readonly gate: string;
  /** What the main action does (`data-action`). */
  readonly action: string;
  /** Nothing is there for hands. */
  readonly isQuiet: boolean;
  readonly wakeInS: number | null;
  readonly armScreen: boolean;
  readonly asksClock: boolean;
  readonly sound: string;
  /** Keys of what is told beside the step (refusals, troubles). */
  readonly told: readonly string[];
  /** As they are written, to be looked at, not to be steered by. */
  readonly sentence: string;
  readonly text: string;
};

/** What is looked for; each that is named must be so. */
export type Wanted = Partial<
  Pick<Seen, 'status' | 'step' | 'kind' | 'stage' | 'kettle' | 'action' | 'isQuiet'>
>;

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
  /** Acts until it is as wanted. Rejects when it is not after so many acts. */
  actUntil(wanted: Wanted, most: number): Promise<Seen>;
};

export function installHands(wallShiftMs: number): void {
  const KEPT = 'test-wall-shift-ms';
  /** A page that is loaded anew has the wall clock it had; a new one has the given. */
  const keptShiftMs = (): number => {
    try {
      return Number(sessionStorage.getItem(KEPT) ?? wallShiftMs);
    } catch {
      return wallShiftMs;
    }
  };
  const shift = { wallMs: keptShiftMs(), monoMs: 0 };
  const move = (by: { wallMs?: number; monoMs?: number }): void => {
    shift.wallMs += by.wallMs ?? 0;
    shift.monoMs += by.monoMs ?? 0;
    try {
      sessionStorage.setItem(KEPT, String(shift.wallMs));
    } catch {
      // An address without storage.
    }
  };
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
  const find = (selector: string) =>
    [...document.querySelectorAll<HTMLElement>(selector)].find(
      (element) => element.getClientRects().length > 0,
    ) ?? null;
  const textOf = (selector: string) => find(selector)?.innerText.trim() ?? '';
  const look = (): Seen => {
    const run = document.querySelector<HTMLElement>('.run-place');
    const stage = document.querySelector<HTMLElement>('.stage');
    const wake = run?.dataset['wakeInS'] ?? '';
    const told = [...document.querySelectorAll<HTMLElement>('[data-key], [data-trouble]')];
    return {
      status: run?.dataset['status'] ?? '',
      step: stage?.dataset['step'] ?? '',
      kind: stage?.dataset['kind'] ?? '',
      stage: stage?.dataset['stage'] ?? '',
      kettle: Number(stage?.dataset['kettle'] ?? 0),
      kettles: Number(stage?.dataset['kettles'] ?? 0),
      gate: document.querySelector<HTMLElement>('.gate-panel')?.dataset['gate'] ?? '',
      action: find('.main-action')?.dataset['action'] ?? '',
      isQuiet: find('.stage--quiet') !== null,
      wakeInS: wake === '' ? null : Number(wake),
      armScreen: find('.arm-screen') !== null,
      asksClock: find('.clock-question') !== null,
      sound: document.querySelector<HTMLElement>('[data-sound]')?.dataset['sound'] ?? '',
      told: told.map(({ dataset }) => dataset['key'] ?? dataset['trouble'] ?? ''),
      sentence: textOf('.stage-sentence'),
      text: document.body?.innerText ?? '',
    };
  };
  /** What changes by an act, without what runs by itself. */
  const still = (): string => {
    const { text, wakeInS: _runs, sound: _light, ...rest } = look();
    return JSON.stringify([rest, textOf('.main-bar'), text.replaceAll(/\d/g, '')]);
  };
  const changed = async (before: string): Promise<void> => {
    for (let n = 0; n < 60; n += 1) {
      if (still() !== before) return;
      await pause(20);
    }
  };
  const jump = (ms: number): void => {
    move({ wallMs: ms, monoMs: ms });
    window.dispatchEvent(new Event('pageshow'));
  };
  /** What a person presses first, by the state of the run. */
  const next = (status: string): HTMLElement | null => {
    const arm = find('.arm-screen');
    if (arm) return arm;
    const clock = find('[data-action="clock-passed"], [data-action="clock-right"]');
    if (status === 'reviewing')
      return clock ?? find('[data-action="went-on"]') ?? find('.review [data-action="resume"]');
    if (status === 'closing') return find('.closing [data-action="confirm-safe"]');
    return clock ?? find('.main-action:not(:disabled)');
  };
  const act = async (): Promise<void> => {
    // A person takes longer than the guard against bounces.
    move({ wallMs: 400, monoMs: 400 });
    const { status, wakeInS } = look();
    const before = still();
    const target = next(status);
    if (target) {
      // As a finger does.
      target.focus({ preventScroll: true });
      target.click();
    } else {
      // On a busy machine a stage may be about to turn; who jumped now would jump over it.
      await pause(150);
      if (next(status) || still() !== before) return;
      jump(Math.ceil((wakeInS ?? 60) * 1000) + 1000);
    }
    // The stage may turn at once, but facts come to it only by way of the disk.
    await pause(30);
    await changed(before);
  };
  const audio: AudioContext[] = [];
  const begins: number[] = [];
  const dueAt = (): Promise<number> =>
    new Promise((resolve, reject) => {
      const run = document.querySelector<HTMLElement>('.run-place');
      if (!run) return reject(new Error('no run on the screen'));
      const watcher = new MutationObserver(() => {
        watcher.disconnect();
        resolve(RealDate.now() + Number(run.dataset['wakeInS']) * 1000);
      });
      watcher.observe(run, { attributes: true, attributeFilter: ['data-wake-in-s'] });
    });
  const hands: TestHands = {
    audio,
    begins,
    realNow: () => RealDate.now(),
    dueAt,
    jump,
    shift: move,
    shifted: () => ({ ...shift }),
    look,
    act,
    async actUntil(wanted, most) {
      const wants = Object.entries(wanted);
      const last: string[] = [];
      for (let n = 0; n < most; n += 1) {
        const seen = look();
        if (wants.every(([name, value]) => seen[name as keyof Seen] === value)) return seen;
        const { text: _text, ...rest } = seen;
        last.push(JSON.stringify(rest));
        await act();
      }
      throw new Error(
        `Not ${JSON.stringify(wanted)} after ${most} acts: ${last.slice(-5).join('\n')}`,
      );
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
