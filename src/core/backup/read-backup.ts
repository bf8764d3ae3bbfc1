import {
  escapedUnseen,
  foundValue,
  parseKitchen,
  plainLine,
  problemAt,
  type KitchenProblem,
} from '../kitchen/index.ts';
import { message, type Message } from '../messages/index.ts';
import { isMoment } from '../units/index.ts';
import {
  BACKUP_FORMAT,
  BACKUP_VERSION,
  type Backup,
  type KitchenInBackup,
  type RunInBackup,
} from './format-backup.ts';

/** Largest file that is read, characters: a hundred runs of three days. */
const MAX_CHARACTERS = 100_000_000;
/** More kitchens, runs or choices than this are not kept by anybody. */
const MOST_OF_A_KIND = 2000;
/** Longest text of a choice, letters: the ticks of a long list. */
const LONGEST_CHOICE = 100_000;

type Fields = Readonly<Record<string, unknown>>;

/** What of a backup can be brought back, and what is wrong with the rest; or why it is none. */
export type ReadBackup =
  | { readonly backup: Backup; readonly problems: readonly KitchenProblem[] }
  | { readonly refused: KitchenProblem };

const isObject = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function refuse(path: string, found: Message, allowed: Message, advice: Message): ReadBackup {
  return { refused: problemAt(path, found, allowed, advice) };
}

/** Where a file of this kind is opened instead. */
function openedElsewhere(format: unknown): Message {
  switch (format) {
    case 'glowpour-kitchen':
      return message('problems.backup.is-kitchen');
    case 'glowpour-journal':
      return message('problems.backup.is-run');
    default:
      return message('problems.backup.choose');
  }
}

/** A part of the file that is not as it should be; the others are brought back all the same. */
function broken(path: string, value: unknown, allowed: Message): KitchenProblem {
  return problemAt(path, foundValue(value), allowed, message('problems.backup.broken'));
}

/** The items of a list of the file that are whole; each other one is told. */
function readList<T>(
  file: Fields,
  field: 'kitchens' | 'runs',
  problems: KitchenProblem[],
  read: (item: Fields, path: string) => T | KitchenProblem,
): readonly T[] {
  const list = file[field];
  if (!Array.isArray(list)) {
    problems.push(broken(field, list, message('problems.backup.list')));
    return [];
  }
  if (list.length > MOST_OF_A_KIND)
    problems.push(broken(field, list, message('problems.backup.most', { most: MOST_OF_A_KIND })));
  return list.slice(0, MOST_OF_A_KIND).flatMap((item: unknown, at) => {
    const path = `${field}[${at}]`;
    const found = isObject(item)
      ? read(item, path)
      : broken(path, item, message('problems.backup.object'));
    if (!isProblem(found)) return [found];
    problems.push(found);
    return [];
  });
}

function isProblem(found: unknown): found is KitchenProblem {
  return isObject(found) && 'allowed' in found && 'advice' in found;
}

/** Name and moment of an item; what is wrong with them is told. */
function headOf(
  item: Fields,
  path: string,
  moment: 'savedWallMs' | 'openedWallMs',
): { readonly name: string; readonly wallMs: number } | KitchenProblem {
  const { name, [moment]: wallMs } = item;
  if (typeof name !== 'string')
    return broken(`${path}.name`, name, message('problems.backup.text'));
  // What no date can be ends every page that tells it.
  if (!isMoment(wallMs))
    return broken(`${path}.${moment}`, wallMs, message('problems.backup.moment'));
  return { name, wallMs };
}

function readKitchen(item: Fields, path: string): KitchenInBackup | KitchenProblem {
  const head = headOf(item, path, 'savedWallMs');
  if (isProblem(head)) return head;
  const { text } = item;
  if (typeof text !== 'string')
    return broken(`${path}.text`, text, message('problems.backup.text'));
  const outcome = parseKitchen(text);
  if ('problems' in outcome) {
    const [first] = outcome.problems;
    if (!first) return broken(`${path}.text`, text, message('problems.backup.text'));
    // Its line is that of the text inside, which nobody sees.
    const inside = first.path === '' ? '' : `: ${first.path}`;
    return problemAt(`${path}.text${inside}`, first.found, first.allowed, first.advice);
  }
  return { name: outcome.kitchen.name, savedWallMs: head.wallMs, text };
}

function readRun(item: Fields, path: string): RunInBackup | KitchenProblem {
  const head = headOf(item, path, 'openedWallMs');
  if (isProblem(head)) return head;
  const { id, journal } = item;
  if (!isObject(journal))
    return broken(`${path}.journal`, journal, message('problems.backup.object'));
  return {
    ...(typeof id === 'string' && { id }),
    name: plainLine(head.name),
    openedWallMs: head.wallMs,
    journal,
  };
}

function isChoice(value: unknown): value is string | number | boolean {
  return (
    (typeof value === 'string' && value.length <= LONGEST_CHOICE) ||
    (typeof value === 'number' && Number.isFinite(value)) ||
    typeof value === 'boolean'
  );
}

function readSettings(value: unknown, problems: KitchenProblem[]): Backup['settings'] {
  if (!isObject(value)) {
    problems.push(broken('settings', value, message('problems.backup.object')));
    return {};
  }
  const all = Object.entries(value);
  if (all.length > MOST_OF_A_KIND) {
    const allowed = message('problems.backup.most', { most: MOST_OF_A_KIND });
    problems.push(broken('settings', value, allowed));
  }
  const whole = all.slice(0, MOST_OF_A_KIND).filter(([name, choice]) => {
    if (isChoice(choice)) return true;
    const path = `settings[${escapedUnseen(JSON.stringify(name.slice(0, 80)))}]`;
    problems.push(broken(path, choice, message('problems.backup.choice')));
    return false;
  });
  // Own fields by their names, whatever these are: "__proto__" too is only a name.
  return Object.fromEntries(whole) as Backup['settings'];
}

/**
 * Reads the text of a backup. What is whole in it is given back, what is not is told one by one;
 * nothing is written, so nothing here can be lost by it. Kitchens are checked whole; a run is
 * checked by whoever brings it in.
 */
export function readBackup(text: string): ReadBackup {
  const allowed = message('problems.backup.allowed', { format: BACKUP_FORMAT });
  if (text.length > MAX_CHARACTERS)
    return refuse(
      '',
      message('problems.backup.letters', { letters: text.length }),
      message('problems.backup.letters', { letters: MAX_CHARACTERS }),
      message('problems.backup.choose'),
    );
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const found = message('problems.backup.no-json', { why });
    return refuse('', found, allowed, message('problems.backup.cut'));
  }
  const fields = isObject(file) ? file : {};
  const { format, version } = fields;
  if (format !== BACKUP_FORMAT)
    return refuse('format', foundValue(format), allowed, openedElsewhere(format));
  if (version !== BACKUP_VERSION) {
    const isNewer = typeof version === 'number' && version > BACKUP_VERSION;
    const advice = message(isNewer ? 'problems.backup.newer-app' : 'problems.backup.choose');
    const versions = message('problems.file.versions', { version: BACKUP_VERSION });
    return refuse('version', foundValue(version), versions, advice);
  }
  const problems: KitchenProblem[] = [];
  const kitchens = readList(fields, 'kitchens', problems, readKitchen);
  const runs = readList(fields, 'runs', problems, readRun);
  const settings = readSettings(fields['settings'], problems);
  return { backup: { kitchens, runs, settings }, problems };
}
