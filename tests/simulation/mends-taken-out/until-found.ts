/**
 * Plays run after run until one breaks the promise in one of the ways, and
 * prints the run as JSON, or null when the given number of runs did not.
 * Arguments: promise, ways (separated by bars), number of runs.
 */
import { runOne } from '../run-one.ts';

const [promise = '', ways = '', most = '0'] = process.argv.slice(2);
const wanted = new Set(ways.split('|'));
let met: { seed: number; way: string; text: string } | null = null;
for (let seed = 1; seed <= Number(most) && !met; seed += 1) {
  const found = runOne(seed).found.find((one) => one.promise === promise && wanted.has(one.way));
  if (found) met = { seed, way: found.way, text: found.text };
}
console.log(JSON.stringify(met));
