import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { formatKitchen, plainLine, type Kitchen } from '../../../src/core/kitchen/index.ts';
import { demoKitchen } from '../../core/kitchen/demos.ts';
import { onTablet } from '../support/on-tablet.ts';
import { bringIn, playedFacts, runFile } from '../support/played-run.ts';

const folder = mkdtempSync(join(tmpdir(), 'glowpour-hostile-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const on = onTablet('test');

/** Within the 80 letters that a name may have. */
const NAMES = [
  '<img src=x onerror="globalThis.ran = 1">',
  '<script>globalThis.ran = 2</script>',
  '</text></svg><svg onload="globalThis.ran = 3">',
  '<a href="javascript:globalThis.ran = 4">here</a>',
  '" autofocus onfocus="globalThis.ran = 5" x="',
  'Sink \u202Etfel eht no\u202C',
  'Oven \u2067open and never closed',
  'Counter \u2069\u2069closed and never opened',
  `Hob${'\u0301'.repeat(60)}`,
  'W'.repeat(80),
  '__proto__',
  'constructor',
];

/** The kitchen with these names on its fixtures, one after another. */
function hostile(kitchen: Kitchen, name: string): Kitchen {
  const fixtures = kitchen.fixtures.map((fixture, at) => ({
    ...fixture,
    name: `${at} ${NAMES[at % NAMES.length]}`.slice(0, 80),
  }));
  return { ...kitchen, name, fixtures };
}

/** What the page holds that only a name could have brought there, and what its policy refused. */
const SEEN = `(() => {
  const words = [];
  const walk = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
  for (let node = walk.currentNode; node; node = walk.nextNode())
    if (node.nodeType === Node.TEXT_NODE) words.push(node.data);
    else for (const { value } of node.attributes) words.push(value);
  const unbalanced = (text) => {
    let open = 0;
    for (const letter of text) {
      if (/[\\u2066-\\u2068]/.test(letter)) open += 1;
      if (letter === '\\u2069') open -= 1;
      if (open < 0) return true;
    }
    return open !== 0;
  };
  return {
    ran: globalThis.ran ?? null,
    refused: globalThis.refusedByPolicy,
    elements: document.querySelectorAll(
      'img, iframe, object, embed, [onerror], [onload], [onfocus], [onclick], [href^="javascript:"], svg a, base, meta[http-equiv]',
    ).length,
    inlineScripts: [...document.scripts].filter(({ src }) => src === '').length,
    turned: words.filter((text) => /[\\u202A-\\u202E]/.test(text) || unbalanced(text)),
    polluted: ({}).polluted ?? null,
  };
})()`;
const CLEAN = {
  ran: null,
  refused: [],
  elements: 0,
  inlineScripts: 0,
  turned: [],
  polluted: null,
};

function watchPolicy(): void {
  const refused: string[] = [];
  Object.assign(globalThis, { refusedByPolicy: refused });
  addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
    refused.push(`${violatedDirective} ${blockedURI}`),
  );
}

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

/** Nothing but text came of the names, and the longest widens no page. */
async function expectClean(name: string): Promise<void> {
  expect(await on.screen.see(SEEN)).toEqual(CLEAN);
  for (const [width, height] of SIZES) {
    await on.screen.resize(width, height);
    await on.screen.picture(`strict/${name}-${width}`);
    expect.soft(await on.screen.widthPx(), `${name} at ${width}`).toBe(width);
  }
}

describe('names that try to be something else than names', () => {
  it('are text on every page of a kitchen that comes from a file', async () => {
    const screen = await on.open('kitchen', async ({ page }) => {
      await page.addInitScript(watchPolicy);
    });
    const chooser = screen.page.waitForEvent('filechooser');
    await screen.button('kitchen.open-file').click();
    const [name = ''] = NAMES;
    await (
      await chooser
    ).setFiles({
      name: 'hostile.kitchen.json',
      mimeType: 'application/json',
      buffer: Buffer.from(formatKitchen(hostile(demoKitchen('flat-coils.kitchen.json'), name))),
    });
    await screen.waitForElement('.kitchen-row');
    // What was left out of a name is told by its field.
    const told = await screen.waitFor<string>(
      `[...document.querySelectorAll('.banner[role="status"]')].map((one) => one.innerText).find((text) => text.includes('fixtures['))`,
      'what was left out is told',
    );
    expect(told).toContain('\\u202e');
    expect(told).not.toContain('\u202E');
    const body = () => screen.see<string>('document.body.textContent');
    expect(await body()).toContain(name);
    await expectClean('kitchen');
    await screen.goTo('plan');
    await screen.waitForElement('.plan-place');
    const plan = await body();
    for (const one of NAMES.slice(0, 5)) expect(plan).toContain(plainLine(one));
    await expectClean('plan');
  });

  it('are text in a record, and its notes too', async () => {
    const screen = await on.open('record', async ({ page }) => {
      await page.addInitScript(watchPolicy);
    });
    const [name = ''] = NAMES;
    const facts = playedFacts('flat-coils', {
      disturbed: true,
      change: (kitchen) => hostile(kitchen, name),
    }).map((fact) =>
      fact.body.kind === 'noted'
        ? { ...fact, body: { ...fact.body, text: NAMES.join(' ') } }
        : fact,
    );
    await bringIn(screen, runFile(facts), folder);
    const record = await screen.see<string>('document.body.textContent');
    expect(record).toContain(name);
    await expectClean('record');
  });
});
