import { join } from 'node:path';
import { expect } from 'vitest';
import { growth, keep, readKept } from '../../bench/kept.ts';

const FILE = join(import.meta.dirname, 'kept-ratios.json');
const isKeeping = process.env['GLOWPOUR_KEEP'] !== undefined;
const measured: Record<string, number> = {};

/** Fails when a ratio to the bare page has grown by half over the one that was kept; with GLOWPOUR_KEEP it is kept. */
export function besideKept(name: string, ratio: number): void {
  measured[name] = Math.round(ratio * 100) / 100;
  if (isKeeping) return;
  const { isSlower, told } = growth(name, ratio, readKept(FILE));
  console.log(told);
  expect.soft(isSlower, told).toBe(false);
}

/** Writes what was measured beside what else was kept, when that was asked for. */
export function keepMeasured(): void {
  if (isKeeping) keep(FILE, { ...readKept(FILE), ...measured });
}
