import type { Kitchen } from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import { chooseMethod } from '../choose/choose-method.ts';
import { POUR_ORDER_ROW, saidOf } from '../choose/said.ts';
import type { ChosenQuestion, RowAnswer } from '../model/types.ts';

/**
 * In which order the parts of a sink are poured: those who do it differ, so the
 * first sink that is poured asks, until something has been said about that, or
 * about the sink as a whole. What was said of a row or a part of it is no answer.
 */
export function pourOrderQuestions(kitchen: Kitchen): readonly ChosenQuestion[] {
  const sink = kitchen.fixtures.find(
    (one) => one.kind === 'sink' && chooseMethod(one, kitchen).method.method === 'pour',
  );
  if (!sink) return [];
  const said =
    kitchen.household.overrides.some(({ row }) => row === POUR_ORDER_ROW) ||
    saidOf(sink, kitchen).some(({ row }) => row === undefined);
  if (said) return [];
  const { cover } = chooseMethod(sink, kitchen).method;
  const answer = (way: 'down' | 'upwards'): RowAnswer => ({
    text: message(`custom.pour-order.${way}`),
    method: 'pour',
    cover,
    upwards: way === 'upwards',
  });
  return [
    {
      id: `ask-${sink.id}-${POUR_ORDER_ROW}`,
      fixture: sink.id,
      row: POUR_ORDER_ROW,
      ask: message('custom.pour-order.ask'),
      why: message('custom.pour-order.why'),
      untilThen: message('custom.pour-order.until-then'),
      answers: [answer('down'), answer('upwards')],
    },
  ];
}

/** Was it said that sinks are poured from the floor upwards? */
export function poursUpwards({ household }: Kitchen): boolean {
  return household.overrides.findLast(({ row }) => row === POUR_ORDER_ROW)?.upwards ?? false;
}
