import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright-core';
import { findBrowser } from '../support/browser/find-browser.ts';

/**
 * Contact sheets: many pictures of screens side by side, to be looked at.
 * `npm run contact-sheets -- AFTER [BEFORE] [--match=TEXT] [--out=FILE]`; both are folders
 * of pictures that browser tests left in `test-artifacts`. With a second folder
 * each picture stands beside the one of the same name there.
 */
const CELL_PX = 460;
const ACROSS = 4;
const MOST = 12;

type Wanted = {
  readonly after: string;
  readonly before: string | undefined;
  readonly match: string;
  readonly out: string;
};

function wantedOf(args: readonly string[]): Wanted {
  const [after, before] = args.filter((one) => !one.startsWith('--'));
  const told = (name: string) =>
    args.find((one) => one.startsWith(`--${name}=`))?.slice(name.length + 3);
  if (after === undefined)
    throw new Error(
      'No folder of pictures was given; say: npm run contact-sheets -- test-artifacts/glance',
    );
  return {
    after,
    before,
    match: told('match') ?? '',
    out: told('out') ?? join(after, 'sheet.png'),
  };
}

function cell(folder: string, name: string, told: string): string {
  let picture = '<p>none</p>';
  try {
    const data = readFileSync(join(folder, name)).toString('base64');
    picture = `<img src="data:image/png;base64,${data}">`;
  } catch {
    // A screen that is new, or gone, has nothing to stand beside.
  }
  return `<figure><figcaption>${told}</figcaption>${picture}</figure>`;
}

function pageOf({ after, before }: Wanted, names: readonly string[]): string {
  const cells = names.map((name) =>
    before === undefined
      ? cell(after, name, name)
      : cell(before, name, `${name}, before`) + cell(after, name, `${name}, after`),
  );
  return `<style>
    body { margin: 8px; font: 14px sans-serif; display: grid; gap: 8px; align-items: start;
      grid-template-columns: repeat(${ACROSS}, ${CELL_PX}px); background: #ccc; }
    figure { margin: 0; } img { display: block; width: 100%; max-height: 700px; object-fit: cover;
      object-position: top; border: 1px solid #555; }
  </style>${cells.join('')}`;
}

async function main(): Promise<void> {
  const wanted = wantedOf(process.argv.slice(2));
  const all = readdirSync(wanted.after)
    .filter((name) => name.endsWith('.png') && !name.startsWith('sheet'))
    .filter((name) => name.includes(wanted.match))
    .toSorted();
  const found = await findBrowser();
  const browser = await chromium.launch({
    executablePath: found.path,
    env: { ...process.env, ...found.env } as Record<string, string>,
    args: ['--no-sandbox', '--disable-gpu', '--headless'],
  });
  const page = await browser.newPage({
    viewport: { width: ACROSS * (CELL_PX + 8) + 16, height: 800 },
  });
  const parts = Math.ceil(all.length / MOST);
  for (let part = 0; part < parts; part += 1) {
    await page.setContent(pageOf(wanted, all.slice(part * MOST, (part + 1) * MOST)));
    const file = part === 0 ? wanted.out : wanted.out.replace(/\.png$/, `-${part + 1}.png`);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, await page.screenshot({ fullPage: true }));
    console.log(file);
  }
  await browser.close();
}

await main();
