/** What is played: every demo kitchen with both customs and three starts. */
export type Scene = {
  /** `hall, ashkenazic, start 2027-04-20T08:00`. */
  readonly name: string;
  /** Name of the file in `demo-kitchens`. */
  readonly file: string;
  readonly custom: 'ashkenazic' | 'sephardic';
  /** Wall clock of the kitchen's own zone; absent: no start is told. */
  readonly start?: string;
};

const CUSTOMS = ['ashkenazic', 'sephardic'] as const;

/** A Monday evening with five days before the Sabbath. */
const WEEKDAY = '2027-03-01T18:00';
/** A Thursday evening: the rest of 24 hours ends at the Sabbath. */
const BEFORE_SABBATH = '2027-03-04T18:00';
/** The day before the eve of Passover 5787: the hours of leaven and the festival lie in the work. */
const BEFORE_PASSOVER = '2027-04-20T08:00';

/** The scenes of one demo kitchen. */
export function scenesOf(file: string, kitchenText: string): readonly Scene[] {
  const { household } = JSON.parse(kitchenText) as { household: { purpose: string } };
  const near = household.purpose === 'passover' ? BEFORE_PASSOVER : BEFORE_SABBATH;
  const kitchen = file.replace('.kitchen.json', '');
  return CUSTOMS.flatMap((custom) =>
    [undefined, WEEKDAY, near].map((start) => ({
      name: `${kitchen}, ${custom}, ${start === undefined ? 'no start' : `start ${start}`}`,
      file,
      custom,
      ...(start !== undefined && { start }),
    })),
  );
}

/** Times in records: the same words whatever the version and the machine. */
export function formatTime(wallMs: number): string {
  return new Date(wallMs).toISOString().slice(0, 19);
}
