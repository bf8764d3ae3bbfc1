import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Seen, Wanted } from '../../browser/support/in-page/hands.ts';
import type { EnginePage } from './engine-page.ts';

const PATIENCE_MS = 60_000;

/** Looks until an expression gives something. */
export async function waitFor<T>(page: EnginePage, expression: string): Promise<T> {
  const endMs = Date.now() + PATIENCE_MS;
  for (;;) {
    const value = await page.see<T | null>(expression).catch(() => null);
    if (value) return value;
    if (Date.now() > endMs) {
      const text = await page.see<string>('document.body.innerText').catch(() => '');
      throw new Error(`Not within ${PATIENCE_MS / 1000} s: ${expression}. On the screen: ${text}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** Presses, as a person's touch, what is there or comes. */
export async function press(page: EnginePage, selector: string): Promise<void> {
  const quoted = JSON.stringify(selector);
  await waitFor(page, `document.querySelector(${quoted})?.matches(':not(:disabled)') || null`);
  await page.see(
    `(document.querySelector(${quoted}).scrollIntoView({ block: 'center' }),
      hands.shift({ wallMs: 400, monoMs: 400 }), true)`,
  );
  await page.click(selector);
}

export const look = (page: EnginePage): Promise<Seen> => page.see('hands.look()');

/** Acts as the person does until it is as wanted, a few acts a call: drivers give up on long ones. */
export async function actUntil(page: EnginePage, wanted: Wanted, most: number): Promise<Seen> {
  const text = JSON.stringify(wanted);
  for (let acts = 0; acts < most; acts += 20) {
    const seen = await page.see<Seen | null>(
      `hands.actUntil(${text}, 20).catch((error) => {
        if (String(error).includes('Not ')) return null;
        throw error;
      })`,
    );
    if (seen) return seen;
  }
  throw new Error(`Not ${text} after ${most} acts: ${JSON.stringify(await look(page))}`);
}

/** From the plan of a demo to a begun run, through the hearing check. */
export async function beginRun(page: EnginePage, url: string): Promise<void> {
  await page.open(`${url}/#/plan/flat-coils`);
  await press(page, '.plan-actions .button--ember');
  await press(page, '[data-action="play-alarm"]');
  const heard = await waitFor<string>(
    page,
    `(document.querySelector('[data-action="heard"]') && '[data-action="heard"]') ||
     (document.querySelector('.hearing input[name="deaf"]') && '.hearing input[name="deaf"]')`,
  );
  await press(page, heard);
  await press(page, '[data-action="start-run"]');
  await waitFor(page, `hands.look().status === 'running'`);
}

/** What is on the screen as a file, to be looked at. */
export async function picture(page: EnginePage, name: string): Promise<void> {
  const file = `test-artifacts/engines/${name}.png`;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, await page.picture());
}
