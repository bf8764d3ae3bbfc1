/** How Hebrew calls the clock of a zone: "שעון ניו יורק". One that it has no words for keeps its name. */
export function clockOf(zone: string): string {
  const told = new Intl.DateTimeFormat('he-IL', { timeZone: zone, timeZoneName: 'shortGeneric' })
    .formatToParts(0)
    .find(({ type }) => type === 'timeZoneName')?.value;
  return told === undefined || /[A-Za-z]/.test(told) ? `שעון ${zone}` : told;
}
