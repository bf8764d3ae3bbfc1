import { cpus, loadavg } from 'node:os';

/** Waiting for a core as often as this, a machine says more of its load than of the app (load average of a minute, for each core). */
const BUSY_PER_CORE = 1.5;

/** Why nothing is measured now; undefined: the machine is calm enough to measure on. */
export function notMeasured(): string | undefined {
  const [load = 0] = loadavg();
  const cores = cpus().length;
  return load > BUSY_PER_CORE * cores
    ? `not measured: the machine is too busy (load ${load.toFixed(1)} on ${cores} cores)`
    : undefined;
}
