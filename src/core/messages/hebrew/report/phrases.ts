import { ended, type Times } from '../../english/report/phrases.ts';
import type { Formatter } from '../../model/message.ts';

export function range({ fromWallMs, toWallMs, zone }: Times, f: Formatter): string {
  return `${f.dateTime(fromWallMs, zone)} עד ${f.dateTime(toWallMs, zone)}`;
}

export function attempt(outcome: string, times: string, reason: string, safe: boolean): string {
  const because = reason === '' ? '' : ` נימוק: ${ended(reason)}`;
  return `${outcome}${times}.${because}${safe ? ' הובא למצב בטוח.' : ''}`;
}
