import { createSignal } from 'solid-js';
import {
  decodeJournal,
  isSameKitchen,
  type JournalStore,
  type KitchenOfRun,
} from '../../../core/journal/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { PlanOptions } from '../../../core/plan/index.ts';
import type { LeftOutMeasurements } from '../../../core/calibration/index.ts';
import type { SettingsStore } from '../../../host/kitchens/index.ts';
import { isMoment } from '../../../core/units/index.ts';
import { reasonOf } from '../failures/reason.ts';

const QUARTER_MS = 15 * 60_000;
/** Runs of a kitchen that calibrate its next plan, the latest; older ones had other hands and other scale in the kettle. */
const CALIBRATING_RUNS = 6;
/** Before the id of a run: the choice which of its measurements teach nothing. */
export const LEFT_OUT = 'left-out:';
const BEGINS = 'begins';

export type PlanningPorts = {
  readonly journals: Pick<JournalStore, 'listRuns' | 'readAll'>;
  readonly settings: Pick<SettingsStore, 'readAll' | 'write'>;
  readonly nowMs: () => number;
  /** Says to the person what could not be kept or read. */
  readonly tell: (message: Message) => void;
};

/** The next full quarter of an hour, ms. */
export function nextQuarter(nowMs: number): number {
  return Math.ceil(nowMs / QUARTER_MS) * QUARTER_MS;
}

/** Reports a person left out, as stored; what is no list of counts by name (an older app wrote it) leaves nothing out. */
export function readLeftOut(stored: unknown): LeftOutMeasurements {
  if (typeof stored !== 'string') return {};
  try {
    const read: unknown = JSON.parse(stored);
    if (typeof read !== 'object' || read === null) return {};
    const rows = Object.entries(read).filter(
      ([, counts]) => Array.isArray(counts) && counts.every((n) => Number.isInteger(n)),
    );
    return Object.fromEntries(rows) as LeftOutMeasurements;
  } catch {
    return {};
  }
}

/** What of each run is left out, by its id, as it is stored. */
function leftOutIn(
  stored: Readonly<Record<string, unknown>>,
): Readonly<Record<string, LeftOutMeasurements>> {
  return Object.fromEntries(
    Object.entries(stored)
      .filter(([name]) => name.startsWith(LEFT_OUT))
      .map(([name, value]) => [name.slice(LEFT_OUT.length), readLeftOut(value)]),
  );
}

/** What a plan is made with besides the kitchen: when it begins, and how earlier runs of it calibrate it. */
export function createPlanning(ports: PlanningPorts) {
  const [chosenMs, setChosenMs] = createSignal<number>();
  const [leftOut, setLeftOut] = createSignal<Readonly<Record<string, LeftOutMeasurements>>>({});
  const restored = ports.settings.readAll().then(
    (stored) => {
      const begins = stored[BEGINS];
      // What was chosen meanwhile goes before what was chosen once.
      if (isMoment(begins) && begins > 0) setChosenMs((now) => now ?? begins);
      // What was left out meanwhile stays.
      setLeftOut((now) => ({ ...leftOutIn(stored), ...now }));
    },
    (error: unknown) => {
      ports.tell(message('shell.calibration-not-read', { why: reasonOf(error) }));
    },
  );
  /** A beginning that has passed is now. */
  const startWallMs = (): number => nextQuarter(Math.max(chosenMs() ?? 0, ports.nowMs()));

  const calibratedBy = async (kitchen: Kitchen, keptId?: string): Promise<PlanOptions> => {
    await restored;
    const runs = await ports.journals.listRuns();
    const own: KitchenOfRun = {
      name: kitchen.name,
      ...(keptId !== undefined && { kitchen: keptId }),
    };
    const past = runs
      .filter((run) => run.closed && isSameKitchen(run, own))
      .toSorted((a, b) => b.openedWallMs - a.openedWallMs)
      .slice(0, CALIBRATING_RUNS);
    if (past.length === 0) return {};
    const { calibrationOf } = await import('../../../core/calibration/index.ts');
    const measured = await Promise.all(
      past.map(async ({ id }) => ({
        facts: decodeJournal(await ports.journals.readAll(id)).facts,
        leaveOut: leftOut()[id] ?? {},
      })),
    );
    return { calibration: calibrationOf(measured, kitchen) };
  };
  const keep = (name: string, value: string | number): void => {
    ports.settings
      .write(name, value)
      .catch((error: unknown) =>
        ports.tell(message('shell.choice-not-kept', { why: reasonOf(error) })),
      );
  };
  return {
    startWallMs,
    /** Null: as soon as the run is started. Kept, so that a reload loses neither it nor its deadline. */
    beginAt(ms: number | null): void {
      setChosenMs(ms ?? undefined);
      keep(BEGINS, ms ?? 0);
    },
    leftOutOf: (runId: string): LeftOutMeasurements => leftOut()[runId] ?? {},
    leaveOut(runId: string, next: LeftOutMeasurements): void {
      setLeftOut((now) => ({ ...now, [runId]: next }));
      keep(LEFT_OUT + runId, JSON.stringify(next));
    },
    /** A store that does not answer costs the calibration, never the plan; and it is said. */
    async optionsOf(kitchen: Kitchen, keptId?: string): Promise<PlanOptions> {
      const calibrated = await calibratedBy(kitchen, keptId).catch(
        (error: unknown): PlanOptions => {
          ports.tell(message('shell.calibration-not-read', { why: reasonOf(error) }));
          return {};
        },
      );
      return { ...calibrated, startWallMs: startWallMs() };
    },
  };
}

export type Planning = ReturnType<typeof createPlanning>;
