import { describe, expect, it } from 'vitest';
import { aheadTold, message } from '../../../src/core/messages/index.ts';
import { say, t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { pause, type Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';
import { FINGER, touchAt } from '../support/touch.ts';

/** What a person meets who answers no, presses too short, or looks at a clock that has not come. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
});

describe('the hearing check', () => {
  it('says of the sound what the light beside it says, whichever way that turns', async () => {
    await screen.prepareRun();
    const agree = `(() => {
      const light = document.querySelector('[data-sound]').dataset.sound;
      const isMute = light === 'blocked' || light === 'touch-to-arm';
      const saysBlocked = document.querySelector('[data-key="run.start.hearing.blocked"]') !== null;
      return isMute === saysBlocked ? light : null;
    })()`;
    await screen.see(
      `{
        const resume = AudioContext.prototype.resume;
        window.giveBack = () => (AudioContext.prototype.resume = resume);
        AudioContext.prototype.resume = () => new Promise(() => undefined);
        hands.audio.forEach((one) => one.suspend());
      }`,
    );
    await screen.press('play-alarm');
    await screen.until('blocked', ({ sound }) => sound === 'blocked');
    expect(await screen.waitFor(agree, 'the words follow the light')).toBe('blocked');
    await screen.picture('answers/sound-blocked');
    // A machine without a speaker stays blocked; where there is one it is armed again.
    await screen.see('window.giveBack(); undefined');
    await screen.pressAt('[data-sound]');
    await pause(3000);
    expect(await screen.waitFor(agree, 'the words follow the light again')).not.toBe('elsewhere');
    await screen.picture('answers/sound-after');
  });
});

describe('a press that is not taken', () => {
  it('says why on the button: a fingertip that was too short, and drops', async () => {
    await touchAt(screen, '[data-action="play-alarm"]', { ...FINGER, heldMs: 0 });
    await screen.waitFor(
      `document.querySelector('[data-action="play-alarm"]').dataset.hint === ${JSON.stringify(t('common.press.short'))}`,
      'press a little longer',
    );
    await screen.picture('answers/press-longer');
    await screen.waitForElement('[data-hint]', 'gone');
    await touchAt(screen, '[data-action="play-alarm"]', { ...FINGER, also: [[60, 10]] });
    await screen.waitForElement(`[data-hint="${t('common.press.no-fingertip')}"]`);
    await screen.waitForElement('[data-hint]', 'gone');
  });
});

describe('a question before a step', () => {
  it('takes a no as large as it is plain: the step waits, the record has it, a yes opens it', async () => {
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');
    await screen.actUntil({ action: 'answer-gate' });
    const { gate } = await screen.look();
    for (const [width, height] of [
      [800, 1280],
      [390, 844],
      [1280, 800],
    ] as const) {
      await screen.resize(width, height);
      await screen.picture(`answers/gate-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
    const box = await screen.page.locator('[data-action="answer-gate-no"]').boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(100);
    await screen.press('answer-gate-no');
    await screen.page.getByText(t('run.gate.no')).waitFor();
    const seen = await screen.look();
    expect({ gate: seen.gate, action: seen.action }).toEqual({ gate, action: 'answer-gate' });
    const kinds = (await storedEntries(screen)).map(({ kind }) => kind);
    expect(kinds.at(-1)).toBe('gate-answered');
    await screen.press('answer-gate');
    await screen.until('it is open', (now) => now.gate !== gate);
  });
});

describe('a clock of what is expected', () => {
  it('never says now while it lies ahead', async () => {
    await screen.actUntil({ stage: 'boil', action: 'confirm' }, 1500);
    const label = screen.page.locator('.stage .countdown-label');
    expect(await label.innerText()).toBe(say(aheadTold(message('steps.boil.expect'))));
    await screen.picture('answers/boil-ahead');
    expect(on.screen).toBe(screen);
  });
});
