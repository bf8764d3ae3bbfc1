import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { inject } from 'vitest';
import type { Translator } from '../../../src/core/messages/index.ts';
import { translatorOf } from '../../support/translators.ts';
import type { FoundBrowser } from './browser/find-browser.ts';
import { usual } from './language.ts';

/** The evening on which the tests' purges begin. */
const MONDAY_EVENING = Date.parse('2027-03-01T17:30:00Z');

/**
 * A browser process of our own, so that it can be killed as a power cut would,
 * and so that it has none of what drivers add to keep pages from sleeping.
 */
export type Tablet = {
  readonly browser: Browser;
  readonly context: BrowserContext;
  readonly process: ChildProcess;
  readonly profile: string;
  /** Of the language that its pages speak. */
  readonly translator: Translator;
  /** What its pages asked of other machines; a tablet that asked anything is not let go in silence. */
  readonly askedElsewhere: string[];
  /** Wall time of the page less that of this machine, ms, for pages to be opened. */
  wallShiftMs: number;
};

export type TabletOptions = {
  /** The folder of a tablet that was used before; else a new one. */
  readonly profile?: string;
  /** Wall time to show, ms. */
  readonly wallMs?: number;
  /** BCP 47; else that of all tests. */
  readonly language?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** Else the one that was found before the tests. */
  readonly browser?: FoundBrowser;
};

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--hide-scrollbars',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  '--disable-dev-shm-usage',
  '--password-store=basic',
  // As on a tablet: sound wants a touch.
  '--autoplay-policy=document-user-activation-required',
  '--remote-debugging-port=0',
];
/** The machine that serves the app, and what comes from no machine. */
const HERE = /^(?:blob|data|about|chrome):|^http:\/\/127\.0\.0\.1:/;
const START_LIMIT_MS = 60_000;

function newProfile(): string {
  return mkdtempSync(join(tmpdir(), 'glowpour-tablet-'));
}

function endpointOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const timer = setTimeout(
      () =>
        reject(
          new Error(
            `The browser gave no debugging address within ${START_LIMIT_MS / 1000} s. It said: ${said}`,
          ),
        ),
      START_LIMIT_MS,
    );
    child.stderr?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const match = /DevTools listening on (ws:\S+)/.exec(said);
      if (match?.[1]) {
        clearTimeout(timer);
        resolve(match[1]);
      }
    });
    child.once('exit', (code) => {
      clearTimeout(timer);
      reject(new Error(`The browser ended (${code}) before it could be used. It said: ${said}`));
    });
  });
}

/** Starts a browser as a tablet has it: pages sleep, sound is on, and sound wants a touch. */
export async function startTablet(options: TabletOptions = {}): Promise<Tablet> {
  const found = options.browser ?? inject('browser');
  const profile = options.profile ?? newProfile();
  const child = spawn(found.path, [...FLAGS, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, ...found.env, ...options.env },
  });
  // Without the driver's own defaults: with them no page would ever be hidden.
  const browser = await chromium.connectOverCDP(await endpointOf(child), {
    isLocal: true,
    noDefaults: true,
  });
  const context = browser.contexts()[0];
  if (!context) throw new Error('The browser has no default context.');
  const askedElsewhere: string[] = [];
  context.on('request', (request) => {
    if (!HERE.test(request.url())) askedElsewhere.push(request.url());
  });
  const wallShiftMs = (options.wallMs ?? MONDAY_EVENING) - Date.now();
  const { language } = options;
  const translator = language === undefined ? usual : await translatorOf(language);
  return { browser, context, process: child, profile, translator, askedElsewhere, wallShiftMs };
}

/** SIGKILL to the browser's whole process group: what a power cut does. */
export async function powerCut({ process: child, browser }: Tablet): Promise<void> {
  const gone = new Promise<void>((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve();
    else child.once('exit', () => resolve());
  });
  if (child.pid !== undefined) {
    try {
      process.kill(-child.pid, 'SIGKILL');
    } catch {
      child.kill('SIGKILL');
    }
  }
  await gone;
  await browser.close().catch(() => undefined);
}

/**
 * Ends a tablet and forgets what it kept.
 * @throws Error when one of its pages asked something of another machine: the app asks nothing of anybody
 */
export async function dispose(tablet: Tablet | undefined): Promise<void> {
  if (!tablet) return;
  await powerCut(tablet);
  rmSync(tablet.profile, { recursive: true, force: true, maxRetries: 8, retryDelay: 250 });
  if (tablet.askedElsewhere.length > 0)
    throw new Error(`Asked of other machines: ${tablet.askedElsewhere.join(', ')}`);
}
