import table from '../../../../shared/places.json';

/** A town by name, for a kitchen whose household does not know its coordinates. */
export type Town = {
  readonly name: string;
  /** ISO 3166-1 alpha-2 */
  readonly country: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  /** Of its centre, metres above the sea. */
  readonly altitudeM: number;
  /** IANA time-zone name */
  readonly zone: string;
};

const TOWNS: readonly Town[] = table.groups.flatMap(({ country, zone, towns }) =>
  // A JSON import knows no tuples; tests hold every row against its columns.
  (towns as unknown as readonly (readonly [string, number, number, number])[]).map(
    ([name, latDeg, lonDeg, altitudeM]) => ({ name, country, latDeg, lonDeg, altitudeM, zone }),
  ),
);

/** Letters without accents, lower case, no marks: "São Paulo" is found as "sao paulo". */
function plain(text: string): string {
  return text
    .replaceAll(/[łŁ]/g, 'l')
    .replaceAll(/[øØ]/g, 'o')
    .replaceAll('-', ' ')
    .normalize('NFD')
    .replaceAll(/[^\p{L} ]/gu, '')
    .toLowerCase()
    .trim();
}

const PLAIN: ReadonlyMap<Town, string> = new Map(TOWNS.map((town) => [town, plain(town.name)]));

const MOST_TOWNS = 8;

/**
 * Towns whose name begins with the text, then those in which a later word does;
 * accents and case do not count. An empty text finds none.
 * @param most how many at the most
 */
export function placesLike(text: string, most = MOST_TOWNS): readonly Town[] {
  const wanted = plain(text);
  if (wanted === '') return [];
  const name = (town: Town) => PLAIN.get(town) ?? '';
  const first = TOWNS.filter((town) => name(town).startsWith(wanted));
  const later = TOWNS.filter((town) => !first.includes(town) && name(town).includes(` ${wanted}`));
  return [...first, ...later].slice(0, most);
}
