import { createSignal, onCleanup } from 'solid-js';
import { alertsDue, type AlertFamily, type RunView } from '../../core/run/index.ts';
import { createSound, type SoundHealth } from '../../host/sound/index.ts';

/** The hearing check plays at the volume of the alert that must be heard. */
const TEST_GAIN = 1;

/** The alerts of the run, made heard; and the light that says whether they can be. */
export function createAlarm() {
  const [health, setHealth] = createSignal<SoundHealth>({ light: 'unknown', reason: 'loading' });
  const [flash, setFlash] = createSignal<AlertFamily | null>(null);
  const sound = createSound({ onHealth: setHealth, onFlash: setFlash });
  onCleanup(() => sound.stop());
  return {
    light: () => health().light,
    flash,
    /** What sounds follows the view; nothing sounds of a fact that is not on disk. */
    follow(view: RunView | undefined): void {
      sound.syncAlerts(view ? alertsDue(view) : []);
    },
    /** After a gap: the audio clock stood as long as the page did. */
    wake: () => sound.wake(),
    arm: () => sound.arm(),
    /** From a touch. False when the device certainly made no sound. */
    async playTest(): Promise<boolean> {
      const { light } = await sound.arm();
      sound.play('due', TEST_GAIN);
      return light !== 'blocked' && light !== 'touch-to-arm';
    },
  };
}
