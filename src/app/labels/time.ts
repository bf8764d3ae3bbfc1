/** Words for times and amounts. Formatting only: no clock is read here. */

/** A length of time in the fewest words a cook needs: "24 h", "1 h 20 min", "5 min 40 s". */
export function lengthInWords(lengthS: number): string {
  const s = Math.max(0, Math.round(lengthS));
  if (s < 100) return `${s} s`;
  const minutes = Math.round(s / 60);
  if (s < 600 && s % 60 !== 0) return `${Math.floor(s / 60)} min ${s % 60} s`;
  if (minutes < 100) return `${minutes} min`;
  const h = Math.floor(minutes / 60);
  const m = minutes % 60;
  return m === 0 ? `${h} h` : `${h} h ${m} min`;
}

export type CountdownPart = { readonly digits: string; readonly unit: string };

/** The huge digits: "23 h 59" above an hour, "29:41" below; counts up after zero. */
export function countdownParts(leftS: number): readonly CountdownPart[] {
  const s = Math.ceil(Math.abs(leftS));
  if (s >= 3600) {
    const minutes = leftS > 0 ? Math.ceil(s / 60) : Math.floor(s / 60);
    return [
      { digits: String(Math.floor(minutes / 60)), unit: 'h' },
      { digits: String(minutes % 60).padStart(2, '0'), unit: 'min' },
    ];
  }
  return [{ digits: `${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')}`, unit: '' }];
}

/** The same in one line of text, for the shelf and for screen readers. */
export function countdownText(leftS: number): string {
  return countdownParts(leftS)
    .map((part) => (part.unit ? `${part.digits} ${part.unit}` : part.digits))
    .join(' ');
}

/** "21:40", in the reader's own time zone. */
export function timeOfDay(wallMs: number): string {
  return new Date(wallMs).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
}

/** "Wed 21:40", or only the time when it is today. */
export function dayAndTime(wallMs: number, nowMs: number): string {
  const day = new Date(wallMs);
  if (day.toDateString() === new Date(nowMs).toDateString()) return timeOfDay(wallMs);
  return `${day.toLocaleDateString('en-GB', { weekday: 'short' })} ${timeOfDay(wallMs)}`;
}

/** "Day 2, 03:10" for an offset from the start of the job. */
export function offsetInWords(offsetS: number): string {
  const minutes = Math.round(offsetS / 60);
  const day = Math.floor(minutes / 1440) + 1;
  const rest = minutes % 1440;
  return `Day ${day}, +${Math.floor(rest / 60)}:${String(rest % 60).padStart(2, '0')}`;
}

/** A band as a cook reads it: "3–4", or "3" when both ends round to it. */
export function bandInWords(low: number, high: number, digits = 0): string {
  const a = low.toFixed(digits);
  const b = high.toFixed(digits);
  return a === b ? a : `${a}–${b}`;
}
