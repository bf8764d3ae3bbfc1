import { createSignal, onCleanup } from 'solid-js';
import {
  alertsDue,
  type Alert,
  type AlertFamily,
  type Observation,
  type RunView,
} from '../../../core/run/index.ts';
import { t } from '../../context/language.ts';
import type { Sound, SoundHealth, SoundReason } from '../../../host/sound/index.ts';

/** The hearing check plays at the volume of the alert that must be heard. */
const TEST_GAIN = 1;

/** What is written down when an alarm that must be heard could not be sounded. */
function failedBecause(reason: SoundReason): string {
  switch (reason) {
    case 'loading':
    case 'measuring':
    case 'running':
      return t('run.alarm-failed.other');
    default:
      return t(`run.alarm-failed.${reason}`);
  }
}

/**
 * The alerts of the run, made heard; and the light that says whether they can
 * be. What makes sound comes right after the page: nothing could sound before
 * its files are here and the page was touched.
 */
export function createAlarm() {
  const [health, setHealth] = createSignal<SoundHealth>({ light: 'unknown', reason: 'loading' });
  let sound: Sound | undefined;
  let loading: Promise<void> | undefined;
  let isStopped = false;
  const load = async (): Promise<void> => {
    try {
      const { createSound } = await import('../../../host/sound/index.ts');
      if (isStopped) return;
      sound = createSound({ onHealth: setHealth });
      sound.syncAlerts(following);
    } catch {
      // The light says that there is no sound, the record that an alarm failed for it; the next touch loads again.
      setHealth({ light: 'blocked', reason: 'no-sounds' });
      loading = undefined;
    }
  };
  const arm = async (): Promise<SoundHealth> => {
    await (loading ??= load());
    return sound ? sound.arm() : health();
  };
  onCleanup(() => {
    isStopped = true;
    sound?.stop();
  });
  let following: readonly Alert[] = [];
  const told = new Set<string>();
  loading = load();

  /** What became of an alert that must be heard; undefined: nothing is known yet. */
  const outcome = (alert: Alert): { kind: 'alarm-handed' } | FailedAlarm | undefined => {
    if (sound?.isHanded(alert.id)) return { kind: 'alarm-handed' };
    const { light, reason } = health();
    const mute = light === 'blocked' || light === 'touch-to-arm';
    return mute && alert.sounding
      ? { kind: 'alarm-failed', text: failedBecause(reason) }
      : undefined;
  };
  return {
    light: () => health().light,
    /** What sounds follows the view; nothing sounds of a fact that is not on disk. */
    follow(view: RunView | undefined, mayBeHeard: (family: AlertFamily) => boolean): void {
      const due = view ? alertsDue(view) : [];
      following = due.filter((alert) => mayBeHeard(alert.family));
      sound?.syncAlerts(following);
    },
    /** What the device made of the alarms that must be heard, each outcome once, for the journal. */
    outcomes(view: RunView): readonly Observation[] {
      return following.flatMap((alert): readonly Observation[] => {
        const cause = [...view.timers, ...view.coolings].find(
          ({ id }) => id === alert.timer,
        )?.cause;
        const became = alert.family === 'due' || alert.family === 'hazard' ? outcome(alert) : null;
        const key = `${alert.timer}!${cause}!${became?.kind}`;
        if (!became || cause === undefined || told.has(key)) return [];
        told.add(key);
        return [{ ...became, timer: alert.timer, cause }];
      });
    },
    /** After a gap: the audio clock stood as long as the page did. */
    wake: () => sound?.wake(),
    arm,
    /** From a touch. False when the device certainly made no sound. */
    async playTest(): Promise<boolean> {
      const { light } = await arm();
      sound?.play('due', TEST_GAIN);
      return light !== 'blocked' && light !== 'touch-to-arm';
    },
  };
}

type FailedAlarm = { readonly kind: 'alarm-failed'; readonly text: string };
