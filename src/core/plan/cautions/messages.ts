import { hoodTold, windowTold, type Kitchen } from '../../kitchen/index.ts';
import { message, type Message, type PlainKey } from '../../messages/index.ts';
import type { FaultKind } from '../model/index.ts';

// Words of the cautions and faults stand in the catalogue under the ids of the
// tables; a test walks both and finds what is missing on either side.

type CautionField = 'hazard' | 'say' | 'ask' | 'make-safe';

/**
 * Words that speak of hood and window, by what the household told: a gate never
 * asks about a window nobody told of. The plain field holds for both.
 */
export const BY_AIR: Readonly<Record<string, readonly string[]>> = {
  'burner-air': ['hood', 'window', 'way-out'],
  'heat-air': ['hood', 'window', 'way-out'],
  'chem-mix': ['hood', 'way-out'],
};
const SPEAK_OF_AIR: ReadonlySet<CautionField> = new Set(['say', 'ask']);

function airWay(kitchen: Kitchen): string | undefined {
  const window = windowTold(kitchen);
  if (hoodTold(kitchen)) return window ? undefined : 'hood';
  return window ? 'window' : 'way-out';
}

/** A sentence of a caution of the table, as it fits the kitchen. */
export function cautionMessage(id: string, field: CautionField, kitchen: Kitchen): Message {
  const way = airWay(kitchen);
  const varies = way !== undefined && SPEAK_OF_AIR.has(field) && BY_AIR[id]?.includes(way);
  const words = varies ? `${field}-${way}` : field;
  return message(`cautions.${id}.${words}` as PlainKey);
}

/** @param line from 1 to the `lines` of its row */
export function faultLine(kind: FaultKind, line: number): Message {
  return message(`cautions.fault.${kind}.line-${line}` as PlainKey);
}
