import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Browser, type CDPSession, type Page } from 'puppeteer-core';
import { findBrowser } from './find-browser.ts';
import { installHands, type Seen, type TestHands } from './in-page.ts';

export const ARTIFACTS = 'test-artifacts/faults';

/** The evening on which the tests' purges begin. */
export const MONDAY_EVENING = Date.parse('2027-03-01T17:30:00Z');

/** What a driver adds so that its pages never sleep; a tablet has none of it. */
const NEVER_SLEEP = [
  '--disable-background-timer-throttling',
  '--disable-backgrounding-occluded-windows',
  '--disable-renderer-backgrounding',
  '--disable-features=Translate,AcceptCHFrame,MediaRouter,OptimizationHints,RenderDocument,IPH_ReadingModePageActionLabel,ReadAnythingOmniboxChip,ProcessPerSiteUpToMainFrameThreshold,IsolateSandboxedIframes',
  '--mute-audio',
];

export type Tablet = {
  readonly browser: Browser;
  readonly profile: string;
  /** Wall time of the page less that of this machine, ms, for pages to be opened. */
  wallShiftMs: number;
};

export type Sheet = { readonly page: Page; readonly cdp: CDPSession };

export type TabletOptions = {
  readonly profile?: string;
  /** Wall time to show, ms. */
  readonly wallMs?: number;
  readonly env?: Readonly<Record<string, string>>;
  readonly args?: readonly string[];
};

export function newProfile(): string {
  return mkdtempSync(join(tmpdir(), 'glowpour-tablet-'));
}

export function dropProfile(profile: string): void {
  rmSync(profile, { recursive: true, force: true, maxRetries: 8, retryDelay: 250 });
}

/** Starts a browser as a tablet has it: pages sleep, sound is on, and sound wants a touch. */
export async function startTablet(options: TabletOptions = {}): Promise<Tablet> {
  mkdirSync(ARTIFACTS, { recursive: true });
  const found = await findBrowser();
  const profile = options.profile ?? newProfile();
  const browser = await puppeteer.launch({
    executablePath: found.path,
    userDataDir: profile,
    headless: true,
    ignoreDefaultArgs: NEVER_SLEEP,
    env: { ...process.env, ...found.env, ...options.env },
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--disable-quic',
      '--autoplay-policy=document-user-activation-required',
      ...(options.args ?? []),
    ],
    defaultViewport: { width: 1180, height: 820 },
    protocolTimeout: 60_000,
  });
  return { browser, profile, wallShiftMs: (options.wallMs ?? MONDAY_EVENING) - Date.now() };
}

/** A new page; the app is opened when an address is given. */
export async function openSheet(
  tablet: Tablet,
  url?: string,
  before?: (sheet: Sheet) => Promise<void>,
): Promise<Sheet> {
  const page = await tablet.browser.newPage();
  const cdp = await page.createCDPSession();
  const sheet = { page, cdp };
  await page.evaluateOnNewDocument(installHands, tablet.wallShiftMs);
  await before?.(sheet);
  if (url !== undefined) await page.goto(url);
  return sheet;
}

/** SIGKILL to the browser's whole process group: what a power cut does. */
export async function powerCut(tablet: Tablet): Promise<void> {
  const child = tablet.browser.process();
  if (child?.pid === undefined) return;
  const gone = new Promise<void>((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve();
    else child.once('exit', () => resolve());
  });
  try {
    process.kill(-child.pid, 'SIGKILL');
  } catch {
    child.kill('SIGKILL');
  }
  await gone;
  await tablet.browser.disconnect().catch(() => undefined);
}

/** Ends a tablet and forgets what it kept. */
export async function dispose(tablet: Tablet | undefined): Promise<void> {
  if (!tablet) return;
  await powerCut(tablet);
  dropProfile(tablet.profile);
}

declare global {
  // oxlint-disable-next-line no-var
  var hands: TestHands;
}

/**
 * Evaluates in the page without counting as a person's touch, which the
 * driver's own evaluation does: that would unlock the sound.
 */
export async function see<T>(sheet: Sheet, expression: string): Promise<T> {
  const { result, exceptionDetails } = await sheet.cdp.send('Runtime.evaluate', {
    expression,
    awaitPromise: true,
    returnByValue: true,
    userGesture: false,
  });
  if (exceptionDetails)
    throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
  return result.value as T;
}

export const look = (sheet: Sheet): Promise<Seen> => see(sheet, 'hands.look()');
export const act = (sheet: Sheet): Promise<void> => see(sheet, 'hands.act()');
export const jump = (sheet: Sheet, ms: number): Promise<void> => see(sheet, `hands.jump(${ms})`);

export function actUntil(sheet: Sheet, pattern: string, most = 400): Promise<Seen> {
  return see(sheet, `hands.actUntil(${JSON.stringify(pattern)}, ${most})`);
}

/** Looks until what is seen is as wanted; fails with what was last seen. */
export async function until(
  sheet: Sheet,
  what: string,
  is: (seen: Seen) => boolean,
  limitMs = 15_000,
): Promise<Seen> {
  const endMs = Date.now() + limitMs;
  for (;;) {
    const seen = await look(sheet).catch(() => undefined);
    if (seen && is(seen)) return seen;
    if (Date.now() > endMs)
      throw new Error(`Not within ${limitMs / 1000} s: ${what}. Seen: ${JSON.stringify(seen)}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** Presses the first button (or link) with this text by a real touch of the pointer. */
export async function press(sheet: Sheet, text: string | RegExp): Promise<void> {
  const pattern = typeof text === 'string' ? `^${text}` : text.source;
  const place = await waitFor<{ x: number; y: number }>(
    sheet,
    `(() => {
      const wanted = new RegExp(${JSON.stringify(pattern)}, 'i');
      const one = [...document.querySelectorAll('button, a, label')].find(
        (e) => wanted.test(e.innerText.trim()) && e.getClientRects().length > 0 && !e.matches(':disabled'));
      if (!one) return null;
      one.scrollIntoView({ block: 'center' });
      const box = one.getBoundingClientRect();
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    })()`,
    `a button ${pattern}`,
  );
  await see(sheet, 'hands.shift({ wallMs: 400, monoMs: 400 })');
  await sheet.page.mouse.click(place.x, place.y);
}

/** Evaluates until it gives something. */
export async function waitFor<T>(
  sheet: Sheet,
  expression: string,
  what: string,
  limitMs = 15_000,
): Promise<T> {
  const endMs = Date.now() + limitMs;
  for (;;) {
    const value = await see<T | null>(sheet, expression).catch(() => null);
    if (value) return value;
    if (Date.now() > endMs) {
      const text = await see<string>(sheet, 'document.body.innerText').catch(() => '');
      throw new Error(`Not within ${limitMs / 1000} s: ${what}. On the screen: ${text}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

export async function picture(sheet: Sheet, name: string): Promise<void> {
  await sheet.page.screenshot({ path: `${ARTIFACTS}/${name}.png` as `${string}.png` });
}

/** From the welcome screen to a begun run, through the hearing check. */
export async function beginRun(sheet: Sheet, demo = 'Flat with coils'): Promise<void> {
  await press(sheet, demo);
  await press(sheet, 'Start the run');
  await waitFor(sheet, "document.querySelector('.start-screen')", 'the start screen');
  await press(sheet, 'Play the alarm');
  await waitFor(
    sheet,
    "[...document.querySelectorAll('.hearing button, .hearing input')].length > 1",
    'the answer of the hearing check',
  );
  const heard = await see<boolean>(sheet, "document.body.innerText.includes('I heard it')");
  if (heard) await press(sheet, 'I heard it');
  else await see(sheet, "document.querySelector('.hearing input').click()");
  await press(sheet, '^Start$');
  await until(sheet, 'the run begins', (seen) => seen.status === 'running');
}

/** Records of the newest run as they are on the disk, read past the app. */
export function storedRecords(sheet: Sheet): Promise<readonly StoredRecord[]> {
  return see(
    sheet,
    `new Promise((resolve, reject) => {
      const open = indexedDB.open('glowpour');
      open.onerror = () => reject(open.error);
      open.onsuccess = () => {
        const db = open.result;
        if (!db.objectStoreNames.contains('records')) { db.close(); return resolve([]); }
        const all = db.transaction(['records'], 'readonly').objectStore('records').getAll();
        all.onsuccess = () => {
          db.close();
          resolve(all.result.map((r) => ({ seq: r.seq, sum: r.sum, kind: r.fact?.body?.kind, session: r.fact?.at?.session })));
        };
        all.onerror = () => reject(all.error);
      };
    })`,
  );
}

export type StoredRecord = {
  readonly seq: number;
  readonly sum: string;
  readonly kind: string;
  readonly session: string;
};

/** A run as a file, as far as the tests look into it. */
export type SavedRun = {
  records: { seq: number; sum: string; fact: { body: { kind: string } } }[];
};

/** What "Save the run as a file" hands to the device, read where the page makes it. */
export async function savedRun(sheet: Sheet): Promise<SavedRun> {
  await see(
    sheet,
    `{
      const make = URL.createObjectURL.bind(URL);
      globalThis.saved = undefined;
      URL.createObjectURL = (blob) => {
        blob.text().then((text) => (globalThis.saved = text));
        return make(blob);
      };
      undefined;
    }`,
  );
  await press(sheet, 'Save the run as a file');
  return JSON.parse(await waitFor<string>(sheet, 'globalThis.saved', 'the file')) as SavedRun;
}
