/**
 * Stands in every record, whatever was done. First what the record is not,
 * then what it does not replace.
 */
export const STANDING_LINES: readonly string[] = [
  'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.',
  'This record tells what was planned and what people confirmed. It gives no ruling: ask your rabbi whether it suffices.',
  'Times are those of the tablet’s clock. Where time rests on a person’s word, the record says so.',
  'The maker’s manual and the local codes come before this plan.',
  'Gas, electrical and plumbing work is for licensed people.',
  'No guarantee of safety is given. In need call the local emergency number.',
];
