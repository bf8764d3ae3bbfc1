import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { encodeEntries, exportJournal } from '../../../src/core/journal/index.ts';
import type { Kitchen } from '../../../src/core/kitchen/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { simulateRun, type Fact, type Request, type RunView } from '../../../src/core/run/index.ts';
import { demoKitchen } from '../../core/kitchen/demos.ts';
import type { DemoId, Screen } from './screen.ts';

/** A Sunday in the afternoon in New York, ms. */
const SUNDAY_MS = Date.UTC(2026, 2, 1, 15);

/** One burner is left out with a reason, one liner is, and something is written down. */
function disturbing(): (seen: RunView) => readonly Request[] {
  const left = new Set<string>();
  return (seen) => {
    if (seen.status !== 'running') return [];
    const find = (kind: string) =>
      seen.steps.find(({ step, status }) => step.kind === kind && status === 'ready');
    const asked: Request[] = [];
    const once = (what: string, request: Request | undefined) => {
      if (!request || left.has(what)) return;
      left.add(what);
      asked.push(request);
    };
    const skip = (kind: string, reason: string): Request | undefined => {
      const found = find(kind);
      return found && { kind: 'skip-step', step: found.step.id, reason };
    };
    once('glow', skip('glow', 'The element is broken and will be replaced'));
    once('cover', skip('cover', 'The roll was too short'));
    once('note', { kind: 'note', text: 'The landlord was here at noon' });
    return asked;
  };
}

/** The facts of a whole run of a demo kitchen, played without a tablet. */
export function playedFacts(
  demo: DemoId,
  options: { readonly disturbed?: boolean; readonly change?: (kitchen: Kitchen) => Kitchen } = {},
): readonly Fact[] {
  const kitchen = demoKitchen(`${demo}.kitchen.json`);
  const plan = buildPlan(options.change?.(kitchen) ?? kitchen, { startWallMs: SUNDAY_MS });
  return simulateRun(plan, {
    startWallMs: SUNDAY_MS,
    ...(options.disturbed === true && { script: disturbing() }),
  }).facts;
}

/** As a run is saved to a file. */
export function runFile(facts: readonly Fact[]): string {
  return exportJournal(encodeEntries(facts));
}

/** Brings a run in from a file by the button of the record; its record is shown. */
export async function bringIn(screen: Screen, text: string, folder: string): Promise<void> {
  const path = join(folder, 'run.glowpour.json');
  writeFileSync(path, text);
  const [chooser] = await Promise.all([
    screen.page.waitForEvent('filechooser'),
    screen.button('record-page.import').click(),
  ]);
  await chooser.setFiles(path);
  await screen.page.locator('main article').waitFor();
}
