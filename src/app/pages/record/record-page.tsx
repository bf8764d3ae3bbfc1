import { createMemo, createResource, For, onCleanup, Show, Suspense } from 'solid-js';
import { downloadText, sha256 } from '../../../host/files/index.ts';
import { unitsOf, type Kitchen } from '../../../core/kitchen/index.ts';
import {
  decodeJournal,
  importJournal,
  isSameKitchen,
  type KitchenOfRun,
  type StoredRun,
} from '../../../core/journal/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import type { LeftOutMeasurements } from '../../../core/calibration/index.ts';
import { calendarFile, reportOf, reportText, type Report } from '../../../core/report/index.ts';
import { fold, type Fact } from '../../../core/run/index.ts';
import { Action } from '../../parts/press/action.tsx';
import { formatRoute } from '../../context/route.ts';
import { loadSizes, say, t, translator, written } from '../../context/language.ts';
import { reasonOf } from '../../controllers/failures/reason.ts';
import { ReadingLine } from '../../parts/reading-line.tsx';
import { followUnits } from '../../context/units.ts';
import { RecheckAfterwards } from './recheck-afterwards.tsx';
import { CalibrationList } from './calibration-list.tsx';
import { calendarDownload } from '../../parts/calendar-download.ts';
import { fileName } from '../../parts/file-name.ts';
import { OtherZone } from '../../parts/time/other-zone.tsx';
import { History } from './history.tsx';
import { Everything, type EverythingActions } from './everything.tsx';
import { RecordSheet } from './record-sheet.tsx';

/** The zone of the tablet: which kitchen a run was in is not told in the list of runs. */
const deviceZone = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;

/** The zone of the kitchen the run was in, or the tablet's where no place was told. */
function zoneOf(facts: readonly Fact[]): string {
  const first = facts[0]?.body;
  const place = first?.kind === 'drafted' ? first.plan.kitchen.place : undefined;
  return place?.zone ?? deviceZone();
}

/** What lies ahead of an open run, for a calendar; nothing before it has begun, and nothing once it is closed. */
function calendarOf(facts: readonly Fact[], nowMs: number): string | undefined {
  const state = fold(facts);
  const startedMs = facts.find(({ body }) => body.kind === 'run-started')?.at.wallMs;
  const startWallMs = state.plan.days?.startWallMs ?? startedMs;
  return startWallMs === undefined
    ? undefined
    : calendarFile(state.plan, startWallMs, nowMs, translator(), state);
}

/** The first digits of a digest, in groups that can be read out. */
const DIGEST_DIGITS = 16;
function shownDigest(sum: string | undefined): string | undefined {
  return sum?.slice(0, DIGEST_DIGITS).replace(/(.{4})(?=.)/gu, '$1 ');
}

/** A run as it is saved to a file: what it tells, and what it is known again by. */
type ReadRecord = {
  readonly facts: readonly Fact[];
  readonly report: Report;
  readonly kitchen: Kitchen;
  /** When it was drafted: what its files are called by. */
  readonly openedWallMs: number;
  readonly zone: string;
  readonly digest: string | undefined;
  /** Why what follows in the journal is not told. */
  readonly damage: Message | undefined;
};

/** Record and digest are of the very text that is saved; undefined: there is nothing in it to tell. */
async function recordOf(text: string): Promise<ReadRecord | undefined> {
  const file = importJournal(text);
  if ('problem' in file) return undefined;
  const { facts, problem } = decodeJournal(file.entries);
  const first = facts[0]?.body;
  if (first?.kind !== 'drafted') return undefined;
  // Whoever then tells in these units says that they are not here.
  await loadSizes(unitsOf(first.plan.kitchen)).catch(() => undefined);
  return {
    facts,
    report: reportOf(facts),
    kitchen: first.plan.kitchen,
    openedWallMs: facts[0]?.at.wallMs ?? 0,
    zone: zoneOf(facts),
    digest: shownDigest(await sha256(text)),
    damage: problem?.message,
  };
}

/** The reports of all runs of a kitchen; what cannot be read is left out, and says so on its own page. */
async function reportsOf(
  runs: readonly StoredRun[],
  kitchen: KitchenOfRun,
  read: (runId: string) => Promise<string>,
): Promise<readonly Report[]> {
  const reports: Report[] = [];
  for (const { id } of runs.filter((run) => isSameKitchen(run, kitchen))) {
    const file = importJournal(await read(id));
    if ('problem' in file) continue;
    const { facts } = decodeJournal(file.entries);
    if (facts[0]?.body.kind === 'drafted') reports.push(reportOf(facts));
  }
  return reports;
}

function statusOf(run: StoredRun): string {
  if (!run.closed) return t('record-page.status.open');
  return t(`record-page.status.${run.closedAs ?? 'closed'}`);
}

/** Prove, share, come back: what was done, by which custom, when, by whom. */
export function RecordPage(props: {
  runs: readonly StoredRun[];
  /** The list was read; until then what is not in it may be there. */
  isRead: boolean;
  openId: string | undefined;
  /** A run as it is saved to a file. */
  readRun: (runId: string) => Promise<string>;
  onSaveText: (name: string, text: string) => void;
  onExport: (runId: string) => void;
  onImport: () => void;
  everything: EverythingActions;
  /** Reports of a run that are not to teach the next plan. */
  leftOutOf?: (runId: string) => LeftOutMeasurements;
  onLeftOut?: (runId: string, next: LeftOutMeasurements) => void;
  /** Something happened after the run had closed, to fixtures of its kitchen. */
  onDoubt?: (
    kitchen: Kitchen,
    fixtureIds: readonly string[],
    what: string,
    keptId: string | undefined,
  ) => void;
  nowMs: number;
}) {
  const openId = () => props.openId ?? props.runs[0]?.id;
  /** The kitchen of the open record; what is not in the list goes by its name. */
  const kitchenOf = (name: string): KitchenOfRun => {
    const kitchen = props.runs.find(({ id }) => id === openId())?.kitchen;
    return { name, ...(kitchen !== undefined && { kitchen }) };
  };
  const [model] = createResource(openId, async (id) => recordOf(await props.readRun(id)));
  onCleanup(
    followUnits(() => {
      const kitchen = model.state === 'ready' ? model()?.kitchen : undefined;
      return kitchen && unitsOf(kitchen);
    }),
  );
  return (
    <main class="place record-place">
      <h1>{t('record-page.title')}</h1>
      <Show
        when={props.runs.length > 0}
        fallback={
          <p class="quiet">{t(props.isRead ? 'record-page.none' : 'shell.unread.about')}</p>
        }
      >
        <p class="quiet" data-list-zone>
          {t('record-page.list-zone', { zone: deviceZone() })}
        </p>
        <ul class="run-list">
          <For each={props.runs}>
            {(run) => (
              <li>
                <a
                  href={formatRoute({ page: 'record', id: run.id })}
                  aria-current={run.id === openId() ? 'true' : undefined}
                >
                  <span>{written(run.name)}</span>
                  <span class="quiet">
                    {t('record-page.run-status', {
                      openedWallMs: run.openedWallMs,
                      zone: deviceZone(),
                      status: statusOf(run),
                    })}
                  </span>
                </a>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={model.error as unknown}>
        {(error) => (
          <p role="alert" data-record="unread">
            {say(reasonOf(error()))}
          </p>
        )}
      </Show>
      <Suspense fallback={<ReadingLine />}>
        <Show when={model.error === undefined && model()}>
          {(record) => (
            <>
              <OtherZone nowMs={props.nowMs} zone={record().zone} />
              <ReportView
                record={record()}
                onSaveText={() => {
                  const { report, zone, digest, kitchen, openedWallMs } = record();
                  props.onSaveText(
                    fileName({ called: kitchen.name, atWallMs: openedWallMs, ending: '.txt' }),
                    reportText(report, translator(), zone, digest),
                  );
                }}
                onExport={() => props.onExport(openId() ?? '')}
                kitchenKey={kitchenOf(record().report.kitchen).kitchen ?? record().report.kitchen}
                onAll={async () =>
                  reportsOf(props.runs, kitchenOf(record().report.kitchen), props.readRun)
                }
                leftOut={props.leftOutOf?.(openId() ?? '')}
                onLeftOut={props.onLeftOut && ((next) => props.onLeftOut?.(openId() ?? '', next))}
                onDoubt={
                  props.onDoubt &&
                  ((kitchen, ids, what) =>
                    props.onDoubt?.(kitchen, ids, what, kitchenOf(kitchen.name).kitchen))
                }
                nowMs={props.nowMs}
              />
            </>
          )}
        </Show>
        {/* Below the record, with it: nothing that can be pressed moves away as it comes. */}
        <Action class="button button--plain" onPress={props.onImport}>
          {t('record-page.import')}
        </Action>
        <Everything {...props.everything} />
      </Suspense>
    </main>
  );
}

function ReportView(props: {
  record: ReadRecord;
  /** Another one for another kitchen. */
  kitchenKey: string;
  onAll: () => Promise<readonly Report[]>;
  onSaveText: () => void;
  onExport: () => void;
  leftOut: LeftOutMeasurements | undefined;
  onLeftOut: ((next: LeftOutMeasurements) => void) | undefined;
  onDoubt: ((kitchen: Kitchen, fixtureIds: readonly string[], what: string) => void) | undefined;
  nowMs: number;
}) {
  const calendar = createMemo(() => calendarOf(props.record.facts, props.nowMs));
  const calendarOfRun = (text: string) =>
    calendarDownload(text, props.record.kitchen.name, props.record.openedWallMs);
  return (
    <article class="record-page" aria-label={t('record-page.region')}>
      <div class="button-row">
        <Action class="button" onPress={() => window.print()}>
          {t('record-page.print')}
        </Action>
        <Action class="button" onPress={props.onSaveText}>
          {t('record-page.save-text')}
        </Action>
        <Action class="button" onPress={props.onExport}>
          {t('record-page.save-run')}
        </Action>
        <Show when={calendar()}>
          {(text) => (
            <Action class="button" onPress={() => downloadText(calendarOfRun(text()))}>
              {t('record-page.save-calendar')}
            </Action>
          )}
        </Show>
      </div>
      <RecordSheet
        report={props.record.report}
        kitchen={props.record.kitchen}
        zone={props.record.zone}
        digest={props.record.digest}
        damage={props.record.damage}
      />
      <History reports={props.onAll} kitchen={props.kitchenKey} zone={props.record.zone} />
      <CalibrationList
        facts={props.record.facts}
        leftOut={props.leftOut}
        onLeftOut={props.onLeftOut}
      />
      <Show when={props.record.report.outcome !== 'open' && props.onDoubt}>
        {(onDoubt) => (
          <RecheckAfterwards
            record={props.record.report}
            onDoubt={(ids, what) => onDoubt()(props.record.kitchen, ids, what)}
          />
        )}
      </Show>
    </article>
  );
}
