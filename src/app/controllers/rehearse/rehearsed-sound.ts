import { createSignal, onCleanup } from 'solid-js';
import { alertsDue, type RunView } from '../../../core/run/index.ts';
import type { Sound } from '../../../host/sound/index.ts';

/** The hearing check plays at the volume of the alert that must be heard. */
const TEST_GAIN = 1;

/**
 * The alarms of a rehearsal, silent until they are asked for. Only what calls
 * now is sounded: nothing is laid ahead on the audio clock, whose seconds are
 * not those of a run that is hurried.
 */
export function createRehearsedSound() {
  const [isOn, setOn] = createSignal(false);
  let sound: Sound | undefined;
  let isLeft = false;
  const open = async (): Promise<Sound | undefined> => {
    const { createSound } = await import('../../../host/sound/index.ts');
    if (!isLeft) sound ??= createSound({ onHealth: () => undefined });
    return sound;
  };
  onCleanup(() => {
    isLeft = true;
    sound?.stop();
  });
  return {
    isOn,
    /** From a touch. */
    turn: async (on: boolean): Promise<void> => {
      setOn(on);
      if (on) await (await open())?.arm();
      else sound?.syncAlerts([]);
    },
    follow(view: RunView | undefined): void {
      const due = view && isOn() ? alertsDue(view).filter(({ sounding }) => sounding) : [];
      sound?.syncAlerts(due);
    },
    /** From a touch, which asks for it. False: it was not heard. */
    playTest: async (): Promise<boolean> => {
      const light = (await (await open())?.arm())?.light;
      sound?.play('due', TEST_GAIN);
      return light === 'armed';
    },
  };
}
