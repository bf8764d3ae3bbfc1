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
  const [stored, setStored] = createSignal<ReadonlyMap<string, readonly string[]>>(new Map());
  /** What was ticked or unticked here, by kitchen and thing: it goes before what is stored. */
  const [changed, setChanged] = createSignal<ReadonlyMap<string, ReadonlyMap<string, boolean>>>(
    new Map(),
  );
  const notKept = (error: unknown): void =>
    tell(message('shell.choice-not-kept', { why: reasonOf(error) }));
  let reading: Promise<void> | undefined;
  /** Once; again when it failed. */
  const read = (): Promise<void> =>
    (reading ??= settings.readAll().then(
      (all) => {
        const rows = Object.entries(all).filter(([name]) => name.startsWith(TICKS));
        setStored(new Map(rows.map(([name, at]) => [name.slice(TICKS.length), readTicks(at)])));
      },
      (error: unknown) => {
        reading = undefined;
        throw error;
      },
    ));
  read().catch(notKept);
  const tickedIn = (kitchen: string): readonly string[] => {
    const own = changed().get(kitchen) ?? new Map<string, boolean>();
    const before = (stored().get(kitchen) ?? []).filter((id) => !own.has(id));
    return [...before, ...[...own.keys()].filter((id) => own.get(id) === true)];
  };
  return (kitchen: string): Ticks => ({
    has: (id) => tickedIn(kitchen).includes(id),
    set(id, isTicked) {
      setChanged((now) => {
        const own = new Map(now.get(kitchen)).set(id, isTicked);
        return new Map(now).set(kitchen, own);
      });
      // Never over what was not read yet: what is stored of a list would be lost.
      read()
        .then(() => settings.write(TICKS + kitchen, JSON.stringify(tickedIn(kitchen))))
        .catch(notKept);
    },
  });
}
