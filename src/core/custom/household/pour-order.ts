import type { Kitchen } from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import { chooseMethod } from '../choose/choose-method.ts';
import type { ChosenQuestion } from '../model/types.ts';

/**
 * In which order the parts of a sink are poured: those who do it differ, so the
 * first sink that is poured asks, until something has been said about it.
 */
export function pourOrderQuestions(kitchen: Kitchen): readonly ChosenQuestion[] {
  const sink = kitchen.fixtures.find(
    (one) => one.kind === 'sink' && chooseMethod(one, kitchen).method.method === 'pour',
  );
  const said = kitchen.household.overrides.some(({ fixture }) => fixture === sink?.id);
  if (!sink || said) return [];
  return [
    {
      id: `ask-${sink.id}-pour-order`,
      fixture: sink.id,
      ask: message('custom.pour-order.ask'),
      why: message('custom.pour-order.why'),
      untilThen: message('custom.pour-order.until-then'),
    },
  ];
}
