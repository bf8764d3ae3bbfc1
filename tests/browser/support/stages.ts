import type { Seen, Wanted } from './in-page/hands.ts';
import type { Screen } from './screen.ts';

/** Each kind of stage of the flat with coils. */
const STAGES: readonly (readonly [name: string, wanted: Wanted])[] = [
  ['gate', { action: 'answer-gate' }],
  ['clean', { action: 'tick' }],
  ['rest', { isQuiet: true }],
  ['boil', { stage: 'boil', action: 'confirm' }],
  ['pour', { stage: 'pour', action: 'confirm' }],
  ['cold', { kind: 'pour', stage: 'cold', action: 'confirm' }],
  ['oven', { kind: 'self-clean', stage: 'cycle' }],
  ['warm-up', { kind: 'glow', stage: 'warm-up' }],
  ['glow', { kind: 'glow', stage: 'hold' }],
];

const isAsWanted = (seen: Seen, wanted: Wanted): boolean =>
  Object.entries(wanted).every(([name, value]) => seen[name as keyof Seen] === value);

type Look = {
  /** At each kind of stage, once. */
  readonly stage: (name: string) => Promise<void>;
  /** Whatever stands there at the moment; true as soon as nothing more is looked for. */
  readonly rest?: () => Promise<boolean>;
};

/** Goes on with the run until each kind of stage was looked at, in whichever order it comes to them. */
export async function lookAtStages(screen: Screen, { stage, rest }: Look): Promise<void> {
  const left = new Map(STAGES);
  for (let n = 0; n < 2000; n += 1) {
    const seen = await screen.look();
    for (const [name, wanted] of left) {
      if (!isAsWanted(seen, wanted)) continue;
      left.delete(name);
      await stage(name);
    }
    const isOver = (await rest?.()) ?? true;
    if (left.size === 0 && isOver) return;
    await screen.act();
  }
  throw new Error(`Not seen in the run: ${[...left.keys()].join(', ') || 'what stands beside it'}`);
}
