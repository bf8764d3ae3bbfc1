import type { Band } from '../../units/index.ts';

const S_MIN = 60;
const S_H = 3600;
const S_DAY = 24 * S_H;

function two(value: number): string {
  return String(value).padStart(2, '0');
}

/** A moment after the start: "T+1 day 02:10"; on the first day "T+02:10". Rounded down to the minute. */
export function momentText(atS: number): string {
  const minutes = Math.floor(atS / S_MIN + 1e-6);
  const days = Math.floor(minutes / (24 * S_MIN));
  const clock = `${two(Math.floor(minutes / S_MIN) % 24)}:${two(minutes % S_MIN)}`;
  if (days === 0) return `T+${clock}`;
  return `T+${days} ${days === 1 ? 'day' : 'days'} ${clock}`;
}

/** Below this a length is told with its seconds, min. */
const FINE_MIN = 10;
const FINE_S = 5;

/** A length: "45 s", "2 min 25 s", "12 min", "3 h 05 min", "24 h". */
export function lengthText(lengthS: number): string {
  if (lengthS < 90) return `${Math.round(lengthS)} s`;
  const minutes = Math.round(lengthS / S_MIN);
  if (minutes < FINE_MIN) {
    const rounded = Math.round(lengthS / FINE_S) * FINE_S;
    const seconds = rounded % S_MIN;
    return `${Math.floor(rounded / S_MIN)} min${seconds === 0 ? '' : ` ${seconds} s`}`;
  }
  if (minutes < 90) return `${minutes} min`;
  const rest = minutes % S_MIN;
  return rest === 0
    ? `${Math.floor(minutes / S_MIN)} h`
    : `${Math.floor(minutes / S_MIN)} h ${two(rest)} min`;
}

/** "8 min (5 to 15)" in whole units of the typical length; without spread only the length. */
export function spreadText({ low, typical, high }: Band): string {
  if (high - low < S_MIN) return lengthText(typical);
  return `${lengthText(typical)} (${lengthText(low)} to ${lengthText(high)})`;
}

/** Number of the day, from 1. */
export function dayOf(atS: number): number {
  return Math.floor(atS / S_DAY + 1e-9) + 1;
}

/** A band of amounts: "18 (11 to 20)". */
export function amountText({ low, typical, high }: Band, decimals: number): string {
  const text = (value: number): string => value.toFixed(decimals);
  return text(low) === text(high)
    ? text(typical)
    : `${text(typical)} (${text(low)} to ${text(high)})`;
}
