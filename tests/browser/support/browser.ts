import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { findBrowser } from './find-browser.ts';

/** A browser process of our own, so that it can be killed as a power cut would. */
export type Running = {
  readonly browser: Browser;
  readonly context: BrowserContext;
  readonly process: ChildProcess;
};

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  '--disable-dev-shm-usage',
  '--remote-debugging-port=0',
];

/** A new empty profile folder. */
export function newProfile(): string {
  return mkdtempSync(join(tmpdir(), 'glowpour-profile-'));
}

export function dropProfile(profile: string): void {
  rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}

function endpointOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const timer = setTimeout(
      () =>
        reject(new Error(`The browser gave no debugging address within 60 s. It said: ${said}`)),
      60_000,
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

/** Starts a browser on a profile. */
export async function launch(profile: string): Promise<Running> {
  const found = await findBrowser();
  const child = spawn(found.path, [...FLAGS, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, ...found.env },
  });
  const browser = await chromium.connectOverCDP(await endpointOf(child));
  const context = browser.contexts()[0];
  if (!context) throw new Error('The browser has no default context.');
  return { browser, context, process: child };
}

/** SIGKILL to the whole process group: what a power cut does. */
export async function powerCut(running: Running): Promise<void> {
  const gone = new Promise<void>((resolve) => {
    if (running.process.exitCode !== null || running.process.signalCode !== null) resolve();
    else running.process.once('exit', () => resolve());
  });
  if (running.process.pid !== undefined) {
    try {
      process.kill(-running.process.pid, 'SIGKILL');
    } catch {
      // Already gone.
    }
  }
  await gone;
  await running.browser.close().catch(() => undefined);
}

/** A page of tablet size whose own clock the test moves. */
export async function tabletPage(
  running: Running,
  at: { wallMs: number; widthPx?: number; heightPx?: number },
): Promise<Page> {
  const page = await running.context.newPage();
  await page.setViewportSize({ width: at.widthPx ?? 1280, height: at.heightPx ?? 800 });
  await page.clock.install({ time: at.wallMs });
  return page;
}
