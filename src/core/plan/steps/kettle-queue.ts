import type { PlanContext } from '../context/plan-context.ts';
import type { Kettle } from '../estimates/index.ts';

/** Which kettle pours next: the one that is ready first, by boiling times alone. */
export class KettleQueue {
  readonly #freeS = new Map<string, number>();
  readonly #context: PlanContext;

  constructor(context: PlanContext) {
    this.#context = context;
  }

  /** @throws RangeError when there is no kettle */
  next(): Kettle {
    const { boils, kettles } = this.#context;
    const readyS = (kettle: Kettle): number =>
      (this.#freeS.get(kettle.id) ?? 0) + (boils.get(kettle.id)?.timeS.typical ?? 0);
    const kettle = kettles.toSorted((a, b) => readyS(a) - readyS(b))[0];
    if (!kettle) throw new RangeError('kettles is empty; allowed: one or more. Add a kettle.');
    this.#freeS.set(kettle.id, readyS(kettle));
    return kettle;
  }
}
