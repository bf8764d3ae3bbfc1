/** A wall time as the picker of date and time wants it, in the reader's zone: "2027-03-01T21:40". */
export function localDateTime(wallMs: number): string {
  const shifted = new Date(wallMs - new Date(wallMs).getTimezoneOffset() * 60_000);
  return shifted.toISOString().slice(0, 16);
}
