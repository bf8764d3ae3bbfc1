import type { Choice, ChosenQuestion } from '../model/types.ts';
import { REST_ROW } from '../choose/said.ts';

/** What an answer can save: a day of rest, a thing that is out of use, a cover, or time alone. */
const SAVES = { day: 3, use: 2, cover: 1, time: 0 } as const;

function savesOf({ method }: Choice, question: ChosenQuestion): number {
  if (question.row === REST_ROW) return SAVES.day;
  const part = method.parts?.find((one) => one.part === question.part);
  const planned = part?.method ?? method.method;
  if (planned === 'not-purged' || planned === 'replace') return SAVES.use;
  return part === undefined && method.cover ? SAVES.cover : SAVES.time;
}

/**
 * All open questions of a kitchen in one place: what costs most first, the
 * same question about several fixtures together, else in the order of the
 * fixtures.
 */
export function grouped(choices: readonly Choice[]): readonly ChosenQuestion[] {
  const all = choices.flatMap((choice) =>
    choice.questions.map((question) => ({
      question,
      group: question.ask.key,
      saves: savesOf(choice, question),
    })),
  );
  const most = new Map<string, number>();
  for (const { group, saves } of all) most.set(group, Math.max(saves, most.get(group) ?? 0));
  const order = [...most].toSorted(([, a], [, b]) => b - a).map(([group]) => group);
  return order.flatMap((group) =>
    all.filter((one) => one.group === group).map(({ question }) => question),
  );
}
