import { message } from '../../messages/index.ts';
import { moveMessage, pourMoves, pourWords } from '../charts/index.ts';
import type { Plan } from '../model/index.ts';
import { line, lines, type Line } from './line.ts';

const UNDER = 2;

/** Each poured fixture, and what the amounts rest on. */
export function pourLines(plan: Plan): readonly Line[] {
  const { pours = [] } = plan;
  if (pours.length === 0) return [];
  const told = pours.flatMap((pour) => {
    const [says, ...more] = pourWords(plan, pour);
    return [...lines(says ? [says] : []), ...lines(more, UNDER)];
  });
  return [
    ...told,
    line(message('plan.pour.moves')),
    ...lines(pourMoves(plan).map(moveMessage), UNDER),
  ];
}
