import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** Burners in pictures: only what is lit glows, and a gas burner looks like one. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
});

/** Burners drawn as lit beside the step, and in the kitchen. */
const LIT = `[...document.querySelectorAll('.stage-picture .kp-burner--lit, .run-side .kp-burner--lit')].length`;
const MINE = `document.querySelectorAll('.stage-picture .kp-burner--mine').length`;

describe('burners in pictures', () => {
  it('glow once they are lit, not while they are still to be lit', async () => {
    await screen.beginRun();
    await screen.actUntil({ kind: 'glow', stage: 'light', action: 'confirm' }, 1500);
    await screen.picture('burners/to-be-lit');
    await screen.waitFor(`${MINE} === 1`, 'the burner of the step');
    expect(await screen.see(LIT)).toBe(0);
    await screen.actUntil({ kind: 'glow', stage: 'warm-up' }, 20);
    await screen.waitFor(`${LIT} > 0`, 'the burner is lit');
    await screen.picture('burners/warms-up');
  });

  it('of gas have a head, flames and a grate; of coils rings', async () => {
    expect(await screen.see('document.querySelectorAll(".kp-burner--gas").length')).toBe(0);
    await on.load('kitchen');
    await screen.openDemo('mountain-gas');
    // The plan page may stand already, of the flat: its name says when the other kitchen is open.
    await screen.page.getByText(t('kitchen.demo.mountain-gas.name')).first().waitFor();
    await screen.goTo('kitchen');
    await screen.waitForElement('.kp-burner--gas .kp-flame');
    expect(await screen.see('document.querySelectorAll(".kp-burner--gas").length')).toBeGreaterThan(
      3,
    );
    expect(
      // The demo kitchens below have coils, too.
      await screen.see(
        `[...document.querySelectorAll('.kp-burner:not(.kp-burner--gas)')].filter((one) => !one.closest('.demos')).length`,
      ),
    ).toBe(0);
    await screen.picture('burners/gas');
  });
});
