import { message, type Message } from '../../../core/messages/index.ts';
import { wallZone } from '../../context/zone.ts';

/** The hour on the kitchen's wall, with its day where that is not today. ms since 1970-01-01 UTC. */
export function when(wallMs: number, nowMs: number): Message {
  return message('common.when', { wallMs, nowMs, zone: wallZone() });
}
