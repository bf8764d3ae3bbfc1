import { createSignal } from 'solid-js';
import { message, type Message } from '../../../core/messages/index.ts';
import type { SettingsStore } from '../../../host/kitchens/index.ts';
import { reasonOf } from '../failures/reason.ts';

const TICKS = 'ticks:';

/** What is ticked off a list of one kitchen; kept, since nobody buys everything on one day. */
export type Ticks = {
  readonly has: (id: string) => boolean;
  readonly set: (id: string, isTicked: boolean) => void;
};

/** Ticks as stored; what is no list of names (another app wrote it) ticks nothing. */
export function readTicks(stored: unknown): readonly string[] {
  if (typeof stored !== 'string') return [];
  try {
    const read: unknown = JSON.parse(stored);
    return Array.isArray(read) ? read.filter((one) => typeof one === 'string') : [];
  } catch {
    return [];
  }
}

type TicksPorts = {
  readonly settings: Pick<SettingsStore, 'readAll' | 'write'>;
  /** Says to the person what could not be kept or read. */
  readonly tell: (message: Message) => void;
};

/** Ticks by the name of the kitchen, as its past runs are; a store that does not answer keeps none, and it is said. */
export function createTicks({ settings, tell }: TicksPorts) {
  const [ticks, setTicks] = createSignal<Readonly<Record<string, readonly string[]>>>({});
  const notKept = (error: unknown): void =>
    tell(message('shell.choice-not-kept', { why: reasonOf(error) }));
  settings.readAll().then((stored) => {
    const read = Object.entries(stored)
      .filter(([name]) => name.startsWith(TICKS))
      .map(([name, value]) => [name.slice(TICKS.length), readTicks(value)]);
    // What was ticked meanwhile goes before what was ticked once.
    setTicks((now) => ({ ...Object.fromEntries(read), ...now }));
  }, notKept);
  return (kitchen: string): Ticks => ({
    has: (id) => ticks()[kitchen]?.includes(id) ?? false,
    set(id, isTicked) {
      const others = (ticks()[kitchen] ?? []).filter((one) => one !== id);
      const next = isTicked ? [...others, id] : others;
      setTicks((now) => ({ ...now, [kitchen]: next }));
      settings.write(TICKS + kitchen, JSON.stringify(next)).catch(notKept);
    },
  });
}
