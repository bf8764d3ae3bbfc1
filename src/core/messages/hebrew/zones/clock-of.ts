/** In Hebrew letters, after the place or after the whole belt of clocks; a browser has words for few places. */
const NAMES = ['shortGeneric', 'longGeneric'] as const;

/** How Hebrew calls the clock of a zone: "שעון ישראל". One that it has no words for keeps its name. */
export function clockOf(zone: string): string {
  const told = NAMES.map(
    (timeZoneName) =>
      new Intl.DateTimeFormat('he-IL', { timeZone: zone, timeZoneName })
        .formatToParts(0)
        .find(({ type }) => type === 'timeZoneName')
        // The half of the year that some belts add is that of 1970.
        ?.value.replace(/ \(.*\)$/, '') ?? zone,
  ).find((name) => !/[A-Za-z]/.test(name));
  return told ?? `שעון ${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}`;
}
