import { message, type Message } from '../../messages/index.ts';
import { didYouMean } from '../codec/nearest.ts';
import type { Kitchen } from '../model/kitchen.ts';
import { problemAt, quoted, quotedList, type KitchenProblem } from '../model/problem.ts';

/** A check over a whole, well-formed kitchen. */
export type Check = (kitchen: Kitchen) => Iterable<KitchenProblem>;

/** What a reference can name. */
export type Referred = 'circuit' | 'burner' | 'cooktop' | 'fixture' | 'part';

/** A field that names something by its id, though nothing in the file has that id. */
export function missingReference(
  path: string,
  id: string,
  to: Referred,
  known: readonly string[],
): KitchenProblem {
  const [allowed, otherwise]: readonly [Message, Message] =
    known.length === 0
      ? [message(`problems.reference.${to}.none`), message(`problems.reference.${to}.describe`)]
      : [
          message(`problems.reference.${to}.allowed`, { ids: quotedList(known) }),
          message('problems.reference.use-one'),
        ];
  return problemAt(path, quoted(id), allowed, didYouMean(id, known, otherwise));
}
