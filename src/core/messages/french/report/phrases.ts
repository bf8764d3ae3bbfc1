import type { Formatter } from '../../model/message.ts';

/** Ends a sentence that people may have ended already. */
export function ended(text: string): string {
  const line = text.trim();
  return line === '' || /[.!?…:]$/u.test(line) ? line : `${line}.`;
}

/** Without the stop of a sentence, where something follows it. */
export function unended(text: string): string {
  return text.replace(/\.$/, '');
}

/** What follows a colon, where there is something. */
export function after(text: string): string {
  return text === '' ? '' : ` : ${text}`;
}

type Times = { fromWallMs: number; toWallMs: number; zone: string };

/** From one moment to another, in the zone of who reads. */
export function range({ fromWallMs, toWallMs, zone }: Times, f: Formatter): string {
  return `${f.dateTime(fromWallMs, zone)} à ${f.dateTime(toWallMs, zone)}`;
}

/** At one moment, in the zone of who reads. */
export type At = { wallMs: number; zone: string };

export function attempt(outcome: string, times: string, reason: string, safe: boolean): string {
  const because = reason === '' ? '' : ` Raison : ${ended(reason)}`;
  return `${outcome}${times}.${because}${safe ? ' Mis en sécurité.' : ''}`;
}
