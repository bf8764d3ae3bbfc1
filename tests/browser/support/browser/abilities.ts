import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright-core';
import { inject, it, type TestFunction } from 'vitest';
import { dispose, startTablet } from '../tablet.ts';
import type { FoundBrowser } from './find-browser.ts';

/**
 * What a test may need of the machine and its browser, and not every one has:
 * - `hide`: a page that lies behind another one knows it.
 * - `freeze`: a page can be put to sleep and woken.
 * - `hear`: sound can be recorded (Debian: pulseaudio, pulseaudio-utils).
 * - `paper`: what was printed can be read again (Debian: poppler-utils).
 */
export type Ability = 'hide' | 'freeze' | 'hear' | 'paper';

/** For each ability why it is lacking; empty where it is there. */
export type Lacks = Readonly<Record<Ability, string>>;

declare module 'vitest' {
  // oxlint-disable-next-line typescript/consistent-type-definitions
  interface ProvidedContext {
    browser: FoundBrowser;
    lacks: Lacks;
  }
}

function lacksHearing({ from }: FoundBrowser): string {
  // Built without a way to a sound card: all that was recorded of it was silence.
  if (from === 'carried') return 'the browser that npm carries plays no sound';
  try {
    for (const program of ['pulseaudio', 'parec'])
      execFileSync(program, ['--version'], { stdio: 'ignore' });
    return '';
  } catch {
    return 'no sound server to record from; install pulseaudio and pulseaudio-utils';
  }
}

function lacksReading(): string {
  try {
    for (const program of ['pdftotext', 'pdftoppm'])
      execFileSync(program, ['-v'], { stdio: 'ignore' });
    return '';
  } catch {
    return 'no reader of PDF files; install poppler-utils';
  }
}

async function titleLater(page: Page, ms: number): Promise<string> {
  await new Promise((resolve) => setTimeout(resolve, ms));
  return page.title();
}

/** Tries in the browser itself what it can do: by what happens, not by its name, but for sound. */
export async function lacksOf(browser: FoundBrowser): Promise<Lacks> {
  const tablet = await startTablet({ browser });
  try {
    const first = await tablet.context.newPage();
    const cdp = await tablet.context.newCDPSession(first);
    await first.evaluate(() => {
      setInterval(() => (document.title = String(Number(document.title) + 1)), 20);
    });
    const second = await tablet.context.newPage();
    await second.bringToFront();
    const isHidden = await first
      .waitForFunction(() => document.visibilityState === 'hidden', null, { timeout: 3000 })
      .then(
        () => true,
        () => false,
      );
    await cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
    // Timers of a page that is hidden run once a second.
    const before = await titleLater(first, 500);
    const isFrozen = (await titleLater(first, 2500)) === before;
    return {
      hide: isHidden ? '' : 'in this browser a page behind another one stays visible',
      freeze: isFrozen ? '' : 'in this browser the timers of a frozen page go on',
      hear: lacksHearing(browser),
      paper: lacksReading(),
    };
  } finally {
    await dispose(tablet);
  }
}

/** A test that is left out, by its name and with the reason in it, where something it needs is not there. */
export function itCan(needs: readonly Ability[], name: string, run: TestFunction): void {
  const lacks = inject('lacks');
  const reasons = needs.map((need) => lacks[need]).filter((reason) => reason !== '');
  if (reasons.length === 0) it(name, run);
  else it.skip(`${name} (not here: ${reasons.join('; ')})`, run);
}
