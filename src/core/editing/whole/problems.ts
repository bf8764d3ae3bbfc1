import {
  formatKitchen,
  LARGEST_FILE_BYTES,
  parseKitchen,
  readKitchen,
  type Kitchen,
  type KitchenProblem,
} from '../../kitchen/index.ts';

/**
 * What keeps a kitchen from being a good file, in the reader's own words and
 * without line numbers (nobody on a tablet sees lines); empty for a good one.
 */
export function problemsOf(kitchen: Kitchen): readonly KitchenProblem[] {
  const text = formatKitchen(kitchen);
  // Only the reader of texts knows how large a file may be.
  const outcome =
    text.length > LARGEST_FILE_BYTES ? parseKitchen(text) : readKitchen(JSON.parse(text));
  return 'problems' in outcome ? outcome.problems : [];
}
