import { readFileSync } from 'node:fs';
import {
  CutsRefusal,
  planCuts,
  type CutsProblem,
  type Piece,
} from '../../../core/cutting/index.ts';

type Json = Readonly<Record<string, unknown>>;
type Refused = {
  readonly error: {
    readonly input: string;
    readonly found: unknown;
    readonly allowed: string;
    readonly message: string;
  };
};

/** Nobody waits for a hand-started reckoning as a tablet waits for a plan: search longer. */
const ROUNDS = 2000;
const FIELDS = ['name', 'comment', 'rollWidthM', 'rotate', 'pieces'];
const PIECE_FIELDS = ['id', 'name', 'widthM', 'lengthM'];

function refuse(input: string, found: unknown, allowed: string, advice: string): CutsRefusal {
  return new CutsRefusal('input', input, found, allowed, advice);
}

function objectOf(input: string, value: unknown, fields: readonly string[]): Json {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw refuse(input, value, 'an object', `Give its fields ${fields.join(', ')}.`);
  }
  for (const field of Object.keys(value)) {
    if (!fields.includes(field)) {
      throw refuse(input, field, fields.join(', '), 'Remove this field or mend its name.');
    }
  }
  return value as Json;
}

function parsed(path: string): Json {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    throw refuse('file', path, 'a file that can be read', 'Check the name.');
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (fault) {
    throw refuse('file', String(fault), 'JSON', 'Mend the file at that place.');
  }
  return objectOf('file', value, FIELDS);
}

function problemOf(file: Json): CutsProblem {
  const { rollWidthM, rotate, pieces } = file;
  if (rotate !== undefined && typeof rotate !== 'boolean') {
    throw refuse('rotate', rotate, 'true or false', 'Leave it out where pieces may be turned.');
  }
  if (!Array.isArray(pieces)) {
    throw refuse('pieces', pieces, 'a list', 'Give [{"id", "widthM", "lengthM"}].');
  }
  return {
    // The sizes and ids themselves are checked by the planner, which names the bad one.
    rollWidthM: rollWidthM as number,
    pieces: pieces.map((piece: unknown, at) => {
      const { id, widthM, lengthM } = objectOf(`pieces[${at}]`, piece, PIECE_FIELDS);
      return { id, widthM, lengthM } as Piece;
    }),
    ...(rotate !== undefined && { rotate }),
    rounds: ROUNDS,
  };
}

/**
 * Reckons how the pieces of a JSON file are cut from a roll.
 * @returns an object to print; with `error` when the file or a piece is refused
 */
function cutsFromFile(path: string): object {
  try {
    const { usedLengthM, wasteShare, cuts } = planCuts(problemOf(parsed(path)));
    return {
      usedLengthM,
      wasteShare,
      cuts: cuts.map(({ id, xM, yM, widthM, lengthM }) => ({ id, xM, yM, widthM, lengthM })),
    };
  } catch (fault) {
    if (!(fault instanceof CutsRefusal)) throw fault;
    const { input, found, allowed, message } = fault;
    return { error: { input, found: found ?? null, allowed, message } } satisfies Refused;
  }
}

/** The entry of the command line: `reckon -- cuts FILE.json`. */
export const cutsReckoning = { name: 'cuts', run: cutsFromFile } as const;
