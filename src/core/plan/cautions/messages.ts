import { message, type Message, type PlainKey } from '../../messages/index.ts';
import type { FaultKind } from '../model/index.ts';

// Words of the cautions and faults stand in the catalogue under the ids of the
// tables; a test walks both and finds what is missing on either side.

type CautionField = 'hazard' | 'say' | 'ask' | 'make-safe';

/** A sentence of a caution of the table. */
export function cautionMessage(id: string, field: CautionField): Message {
  return message(`cautions.${id}.${field}` as PlainKey);
}

/** @param line from 1 to the `lines` of its row */
export function faultLine(kind: FaultKind, line: number): Message {
  return message(`cautions.fault.${kind}.line-${line}` as PlainKey);
}
