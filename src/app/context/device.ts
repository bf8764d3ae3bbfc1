import { createSignal } from 'solid-js';
import { newId, readClocks } from '../../host/clocks/index.ts';
import { openDatabase } from '../../host/database/index.ts';
import { createJournalStore } from '../../host/journal/index.ts';
import { createKitchenStore, createSettingsStore } from '../../host/kitchens/index.ts';
import { createTabLock, type LockState } from '../../host/tab-lock/index.ts';
import { createWakeLock, type WakeState } from '../../host/wake-lock/index.ts';

/** The device's ports, opened once a page, with what they promise as signals. */
export function createDevice(onLockAsked: () => Promise<boolean>) {
  const database = openDatabase('glowpour');
  const [lock, setLock] = createSignal<LockState>('asking');
  const [wake, setWake] = createSignal<WakeState>('off');
  return {
    journals: createJournalStore(database),
    kitchens: createKitchenStore(database),
    settings: createSettingsStore(database),
    tabLock: createTabLock({ onState: setLock, onAsked: onLockAsked }),
    lock,
    wakeLock: createWakeLock(setWake),
    wake,
    newId,
    readClocks,
  };
}

export type Device = ReturnType<typeof createDevice>;
