import { message, type Message } from '../../messages/index.ts';
import type { Plan, PlannedPour } from '../model/index.ts';

/** Litres and kettles by one aim or under one assumption. */
export function amountMessage(of: { litres: number; kettles: number }): Message {
  return message('plan.pour.amount', of);
}

/** Both aims side by side. */
function amountsMessage({ until, reached, heated }: PlannedPour): Message {
  return message('plan.pour.amounts', {
    until: message(`plan.pour.until.${until}`),
    reached: amountMessage({ litres: reached.litres.typical, kettles: reached.kettles }),
    heated: amountMessage({ litres: heated.litres.typical, kettles: heated.kettles }),
  });
}

/** What a pour does to its surface, and what it would take by the other aim. */
export function pourWords(plan: Plan, pour: PlannedPour): readonly Message[] {
  const { wetFirstTouchC, runOffC, belowC } = pour;
  const sink = plan.kitchen.fixtures.find(({ id }) => id === pour.fixture)?.kind === 'sink';
  return [
    pour.says,
    amountsMessage(pour),
    message('plan.pour.wet', { wetFirstTouchC }),
    ...(sink ? [message('plan.pour.run-off', { runOffC, belowC })] : []),
  ];
}
