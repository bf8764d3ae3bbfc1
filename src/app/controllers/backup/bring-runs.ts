import type { Backup } from '../../../core/backup/index.ts';
import { importJournal, type JournalStore } from '../../../core/journal/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type { Readings } from '../../../core/run/index.ts';
import { reasonOf } from '../failures/reason.ts';
import { importRun } from '../run/import-run.ts';

type Ports = {
  readonly journals: JournalStore;
  readonly exportText: (runId: string) => Promise<string>;
  readonly newId: () => string;
  readonly readClocks: () => Readings;
};

/**
 * What a run is known by: the sums of its entries, each tied to the one before, so that a run which
 * has gone on begins with what it was known by earlier. Where an entry has no sum, the whole text.
 */
function knownBy(text: string): string {
  const file = importJournal(text);
  const entries = 'entries' in file ? file.entries : [];
  const sums = entries.map((entry) => (entry as { readonly sum?: unknown } | null)?.sum);
  const hasAll = sums.length > 0 && sums.every((sum) => typeof sum === 'string');
  return hasAll ? `${sums.join(' ')} ` : text;
}

/**
 * Adds each run of the file that is not here yet; one that has gone on here since is here.
 * @returns `idsHere`: ids of runs here, by those that they have in the file
 */
export async function bringRuns(ports: Ports, from: Backup['runs']) {
  const { journals, exportText, newId, readClocks } = ports;
  const here: { readonly id: string; readonly known: string }[] = [];
  for (const { id } of await journals.listRuns())
    here.push({ id, known: knownBy(await exportText(id)) });
  const idsHere = new Map<string, string>();
  const left: Message[] = [];
  let brought = 0;
  let same = 0;
  for (const [at, { id: idThere, name, openedWallMs, journal }] of from.entries()) {
    try {
      // Of what is nested beyond reason no text can be made.
      const text = `${JSON.stringify(journal)}\n`;
      const known = knownBy(text);
      const kept = here.find((one) => one.known.startsWith(known));
      const id = kept?.id ?? newId();
      if (kept) same += 1;
      else {
        await importRun(journals, text, id, { ...readClocks(), wallMs: openedWallMs });
        here.push({ id, known });
        brought += 1;
      }
      if (idThere !== undefined) idsHere.set(idThere, id);
    } catch (error) {
      const path = `runs[${at}].journal`;
      left.push(message('record-page.restored.run', { path, name, why: reasonOf(error) }));
    }
  }
  return { brought, same, left, idsHere };
}
