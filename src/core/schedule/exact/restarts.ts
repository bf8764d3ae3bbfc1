/** Clashes before the first restart; later ones follow Luby's sequence. */
const RESTART_CLASHES = 50;

/** Luby, Sinclair & Zuckerman, Information Processing Letters 47 (1993) 173: 1 1 2 1 1 2 4 … from 1 on. */
function luby(at: number): number {
  let power = 1;
  while (2 * power - 1 < at) power *= 2;
  return 2 * power - 1 === at ? power : luby(at - power + 1);
}

/** Clashes of a stretch of the search; the first is number 1. */
export function clashesUntilRestart(stretch: number): number {
  return RESTART_CLASHES * luby(stretch);
}
