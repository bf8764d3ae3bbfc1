/** The survey in the order a person walks it; each is a page of its own address. */
export const CHAPTERS = [
  { id: 'where', name: 'Where', next: 'Where it is' },
  { id: 'fixtures', name: 'What stands in it', next: 'What stands in it' },
  { id: 'water', name: 'Water and power', next: 'Water and power' },
  { id: 'air', name: 'Room and air', next: 'Room and air' },
  { id: 'people', name: 'Household', next: 'The household' },
] as const;

export type ChapterId = (typeof CHAPTERS)[number]['id'];

export function chapterOf(id: string | undefined): ChapterId | undefined {
  return CHAPTERS.find((chapter) => chapter.id === id)?.id;
}

const ROOTS: Readonly<Record<string, ChapterId>> = {
  fixtures: 'fixtures',
  vessels: 'water',
  circuits: 'water',
  room: 'air',
  household: 'people',
};

/** Where a field of the kitchen is asked for: "room.hood.kind" → air. */
export function chapterOfPath(path: string): ChapterId {
  const [root = ''] = path.split(/[.[]/);
  return ROOTS[root] ?? 'where';
}
