import { emergencyNumber, isGas, type Kitchen } from '../../kitchen/index.ts';
import { message, type Message, type PlainKey, type Translator } from '../../messages/index.ts';
import type { FaultKind, Plan } from '../../plan/index.ts';

/** One thing that may happen, with what is done in its order. */
export type DoorCase = {
  readonly id: string;
  readonly title: Message;
  readonly lines: readonly Message[];
};

export type DoorHandout = {
  /** Absent: no number was read for the country. */
  readonly emergencyNumber?: string;
  readonly danger: readonly DoorCase[];
  readonly later: readonly DoorCase[];
};

/** Dangers that outlive a run, in the order in which they are told; the last two where gas is burned. */
function dangersOf({ fixtures }: Kitchen): readonly FaultKind[] {
  const hasGas = fixtures.some(
    (one) =>
      (one.kind === 'oven' && one.heat === 'gas') ||
      (one.kind === 'cooktop' && one.burners.some(({ type }) => isGas(type))),
  );
  return ['burned', 'fire', ...(hasGas ? (['gas-smell', 'co-alarm'] as const) : [])];
}

type CaseId = 'hot' | 'cold' | 'mixed' | 'resting' | 'cover' | 'crack' | 'leaven';

const LINES: Readonly<Record<CaseId, readonly PlainKey[]>> = {
  hot: ['handouts.door.case.hot.1', 'handouts.door.case.hot.2', 'handouts.door.case.hot.3'],
  cold: ['handouts.door.case.cold.1', 'handouts.door.case.cold.2'],
  mixed: ['handouts.door.case.mixed.1', 'handouts.door.case.mixed.2', 'handouts.door.case.mixed.3'],
  resting: ['handouts.door.case.resting.1'],
  cover: ['handouts.door.case.cover.1', 'handouts.door.case.cover.2'],
  crack: ['handouts.door.case.crack.1'],
  leaven: ['handouts.door.case.leaven.1', 'handouts.door.case.leaven.2'],
};

/** Cases that this kitchen can have: covers where something is covered, leaven where it is made ready for Passover. */
function casesOf({ methods, steps, purpose }: Plan): readonly CaseId[] {
  return [
    'hot',
    'cold',
    'mixed',
    ...(steps.some(({ kind }) => kind === 'rest') ? ['resting' as const] : []),
    ...(methods.some(({ cover }) => cover) ? ['cover' as const] : []),
    'crack',
    ...(purpose === 'passover' ? ['leaven' as const] : []),
  ];
}

/** The page for the door: dangers as the run tells them, then what may happen to a place later. */
export function doorHandout(plan: Plan): DoorHandout {
  const number = emergencyNumber(plan.kitchen.country);
  return {
    ...(number !== undefined && { emergencyNumber: number }),
    danger: dangersOf(plan.kitchen).flatMap((kind) => {
      const policy = plan.faults.find((one) => one.kind === kind);
      return policy ? [{ id: kind, title: policy.name, lines: policy.doThis }] : [];
    }),
    later: casesOf(plan).map((id) => ({
      id,
      title: message(`handouts.door.case.${id}`),
      lines: LINES[id].map((key) => message(key)),
    })),
  };
}

/** The page as plain text to be sent; lines end in `\n`. */
export function doorHandoutText(plan: Plan, { t, say }: Translator): string {
  const { emergencyNumber: number, danger, later } = doorHandout(plan);
  const cases = (of: readonly DoorCase[]): readonly string[] =>
    of.flatMap(({ title, lines }) => ['', say(title), ...lines.map((line) => `- ${say(line)}`)]);
  return [
    t('handouts.door.title', { kitchen: plan.kitchen.name }),
    t('handouts.door.about'),
    '',
    number === undefined ? t('handouts.door.call-local') : t('handouts.door.call', { number }),
    ...cases(danger),
    ...cases(later),
    '',
  ].join('\n');
}
