/** The survey in the order a person walks it; each is a page of its own address. */
export const CHAPTERS = ['where', 'fixtures', 'water', 'air', 'people'] as const;

export type ChapterId = (typeof CHAPTERS)[number];

export function chapterOf(id: string | undefined): ChapterId | undefined {
  return CHAPTERS.find((chapter) => chapter === id);
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
