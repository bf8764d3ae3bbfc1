/** A name inside an English sentence: "Steel kettle" → "steel kettle". */
export function lower(name: string): string {
  return name.slice(0, 1).toLowerCase() + name.slice(1);
}
