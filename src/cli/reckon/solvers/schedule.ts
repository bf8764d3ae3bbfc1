import { readFileSync } from 'node:fs';
import { ScheduleRefusal, solve, type After, type Problem } from '../../../core/schedule/index.ts';

/** Start times in the file's own unit of time. */
export type ScheduleAnswer = {
  readonly start: Readonly<Record<string, number>>;
  readonly finish: number;
  readonly lowerBound: number;
  readonly optimal: boolean;
};

export type FileError = {
  readonly error: {
    readonly input: string;
    readonly found: unknown;
    readonly allowed: string;
    readonly message: string;
  };
};

/** Nobody waits for a hand-started reckoning as a tablet waits for a plan: search longer. */
const ROUNDS = 1000;
const STEPS = 30_000_000;
/** Largest time or amount taken from a file. */
const LARGEST = 1e9;

class BadField extends Error {
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;

  constructor(input: string, found: unknown, allowed: string) {
    super(
      `${input} is ${JSON.stringify(found) ?? 'missing'}; allowed: ${allowed}. Correct the file.`,
    );
    this.input = input;
    this.found = found;
    this.allowed = allowed;
  }
}

type Row = Readonly<Record<string, unknown>>;

function row(input: string, value: unknown): Row {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Row;
  throw new BadField(input, value, 'an object');
}

/** Rows of a list; a field that no row has is a slip of the pen that would change the answer. */
function rows(file: Row, field: string, fields: readonly string[]): readonly Row[] {
  const value = file[field];
  if (!Array.isArray(value)) throw new BadField(field, value, 'a list of objects');
  return value.map((item: unknown, at) => {
    const found = row(`${field}[${at}]`, item);
    for (const key of Object.keys(found)) {
      if (!fields.includes(key))
        throw new BadField(`${field}[${at}]`, key, `fields ${fields.join(', ')}`);
    }
    return found;
  });
}

function text(input: string, value: unknown): string {
  if (typeof value === 'string' && value !== '') return value;
  throw new BadField(input, value, 'a text that is not empty');
}

function number(input: string, value: unknown, min: number): number {
  if (typeof value === 'number' && value >= min && value <= LARGEST) return value;
  throw new BadField(input, value, `a number from ${min} to ${LARGEST}`);
}

type FileActivity = {
  readonly id: string;
  readonly duration: number;
  readonly demand: Record<string, number>;
};

function activitiesOf(file: Row): FileActivity[] {
  return rows(file, 'activities', ['id', 'duration', 'demand', 'name']).map((found, at) => {
    const path = `activities[${at}]`;
    const demand = Object.entries(row(`${path}.demand`, found['demand'] ?? {})).map(
      ([id, amount]) => [id, number(`${path}.demand.${id}`, amount, 0)] as const,
    );
    return {
      id: text(`${path}.id`, found['id']),
      duration: number(`${path}.duration`, found['duration'], 0),
      demand: Object.fromEntries(demand),
    };
  });
}

/** Start-to-start lags of the file as finish-to-start lags of each later activity. */
function lagsOf(file: Row, activities: readonly FileActivity[]): Map<string, After[]> {
  const durations = new Map(activities.map(({ id, duration }) => [id, duration]));
  const lags = new Map<string, After[]>(activities.map(({ id }) => [id, []]));
  rows(file, 'precedence', ['from', 'to', 'minLag', 'maxLag']).forEach((found, at) => {
    const path = `precedence[${at}]`;
    const from = text(`${path}.from`, found['from']);
    const to = text(`${path}.to`, found['to']);
    const duration = durations.get(from);
    const known = 'the id of an activity of this file';
    if (duration === undefined) throw new BadField(`${path}.from`, from, known);
    const list = lags.get(to);
    if (!list) throw new BadField(`${path}.to`, to, known);
    const least = number(`${path}.minLag`, found['minLag'] ?? 0, -LARGEST);
    const most = found['maxLag'] ?? undefined;
    list.push({
      id: from,
      minLagS: least - duration,
      ...(most !== undefined && { maxLagS: number(`${path}.maxLag`, most, least) - duration }),
    });
  });
  return lags;
}

/**
 * The problem in a file of start-to-start lags: `activities` (id, duration,
 * demand), `precedence` (from, to, minLag: to starts at least that long after
 * from, negative: at most that long before it; maxLag: at most that long
 * after, or null), `resources` (id, capacity). Other fields of the file are
 * left alone.
 */
export function problemOf(value: unknown): Problem {
  if (Array.isArray(value)) {
    throw new BadField(
      'file',
      `a list of ${value.length}`,
      'one problem as an object: save one of the list by itself',
    );
  }
  const file = row('file', value);
  const activities = activitiesOf(file);
  const lags = lagsOf(file, activities);
  return {
    activities: activities.map(({ id, duration, demand }) => ({
      id,
      durationS: duration,
      demand,
      after: lags.get(id) ?? [],
    })),
    resources: rows(file, 'resources', ['id', 'capacity', 'name']).map((found, at) => ({
      id: text(`resources[${at}].id`, found['id']),
      capacity: number(`resources[${at}].capacity`, found['capacity'], 0),
    })),
  };
}

function read(path: string): unknown {
  let written: string;
  try {
    written = readFileSync(path, 'utf8');
  } catch {
    throw new BadField('file', path, 'the path of a file that can be read');
  }
  try {
    return JSON.parse(written);
  } catch (fault) {
    throw new BadField('file', String(fault), 'JSON text');
  }
}

/** The fields of a problem under the names the file gives them. */
function inFileWords(words: string): string {
  return words.replace('activities.after', 'precedence').replace(/maxLagS/g, 'maxLag');
}

/** Times the problem of one file; an error names the field, what was found and what is allowed. */
export function scheduleFromFile(path: string): ScheduleAnswer | FileError {
  try {
    const { startS, finishS, lowerBoundS, optimal } = solve(problemOf(read(path)), {
      rounds: ROUNDS,
      steps: STEPS,
    });
    return { start: startS, finish: finishS, lowerBound: lowerBoundS, optimal };
  } catch (fault) {
    if (!(fault instanceof BadField || fault instanceof ScheduleRefusal)) throw fault;
    const { allowed, message } = fault;
    const found = fault.found ?? null;
    return {
      error: { input: inFileWords(fault.input), found, allowed, message: inFileWords(message) },
    };
  }
}

/** The entry of the command line: `reckon -- schedule FILE.json`. */
export const scheduleReckoning = { name: 'schedule', run: scheduleFromFile } as const;
