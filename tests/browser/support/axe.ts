import axeCore from 'axe-core';
import { expect } from 'vitest';
import type { Screen } from './screen.ts';

/**
 * axe-core: WCAG 2.0 to 2.2, A and AA, and its best practices. A reference
 * library: none of its rules is ours, none is switched off.
 */
const AXE = axeCore.source;

type Axe = {
  readonly run: (context: Document) => Promise<{
    violations: readonly {
      id: string;
      help: string;
      nodes: readonly { html: string; failureSummary?: string }[];
    }[];
    passes: readonly unknown[];
  }>;
};

/** What axe finds on the screen as it is; and that it looked at something. */
async function findings({ page }: Screen): Promise<string[]> {
  const found = await page.evaluate(async () => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations, passes } = await axe.run(document);
    return {
      passed: passes.length,
      lines: violations.flatMap(({ id, help, nodes }) =>
        nodes.map((node) => `${id}: ${help}\n${node.html}\n${node.failureSummary ?? ''}`),
      ),
    };
  });
  expect(found.passed).toBeGreaterThan(10);
  return found.lines;
}

/** Asserts that axe finds nothing, by day and by night. */
export async function axeFindsNothing(screen: Screen, name: string): Promise<void> {
  for (const theme of ['day', 'night'] as const) {
    await screen.setTheme(theme);
    if (!(await screen.see("'axe' in window"))) await screen.page.evaluate(AXE);
    expect.soft(await findings(screen), `${name} by ${theme}`).toEqual([]);
  }
}
