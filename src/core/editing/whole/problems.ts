import {
  formatKitchen,
  LARGEST_FILE_BYTES,
  readKitchen,
  tooLarge,
  utf8Bytes,
  type Kitchen,
  type KitchenProblem,
} from '../../kitchen/index.ts';

/** Written for people a kitchen takes at most this many times the room of the shortest JSON: indents and line ends. */
const LONGEST_SHARE = 4;
/** Bytes of UTF-8 that one unit of a string takes at most. */
const UNIT_BYTES = 3;

/** The size of its file where it is larger than is read. */
function excessBytes(kitchen: Kitchen): number | undefined {
  const shortest = JSON.stringify(kitchen).length;
  if (shortest * LONGEST_SHARE * UNIT_BYTES <= LARGEST_FILE_BYTES) return undefined;
  const bytes = utf8Bytes(formatKitchen(kitchen));
  return bytes > LARGEST_FILE_BYTES ? bytes : undefined;
}

/**
 * What keeps a kitchen from being a good file, as the reader of files finds it
 * and without line numbers (nobody on a tablet sees lines); empty for a good one.
 */
export function problemsOf(kitchen: Kitchen): readonly KitchenProblem[] {
  const bytes = excessBytes(kitchen);
  if (bytes !== undefined) return [tooLarge(bytes)];
  const outcome = readKitchen(kitchen);
  return 'problems' in outcome ? outcome.problems : [];
}
