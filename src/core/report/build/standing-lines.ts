import { message, type Message } from '../../messages/index.ts';

/**
 * Stands in every record, whatever was done. First what the record is not,
 * then what it does not replace.
 */
export const STANDING_LINES: readonly Message[] = [
  message('report.standing.customs'),
  message('report.standing.no-ruling'),
  message('report.standing.clock'),
  message('report.standing.manuals'),
  message('report.standing.trades'),
  message('report.standing.no-guarantee'),
];
