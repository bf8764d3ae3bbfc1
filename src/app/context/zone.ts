/** The time zone (IANA name) of the one who reads. */
export function readerZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}
