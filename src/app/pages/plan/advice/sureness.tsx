import { createEffect, createSignal, For, on, onCleanup } from 'solid-js';
import type { Message } from '../../../../core/messages/index.ts';
import type { Plan, PlanOptions } from '../../../../core/plan/index.ts';
import { say } from '../../../context/language.ts';
import { planner } from '../../../controllers/planner/planner.ts';

/** By when the plan ends nine times in ten, and what is nearer than that; of another plan nothing is said. */
export function SurenessLine(props: { plan: Plan; options: PlanOptions }) {
  const [told, setTold] = createSignal<readonly Message[]>([]);
  createEffect(
    on(
      () => [props.plan, props.options] as const,
      ([plan, options]) => {
        const search = new AbortController();
        onCleanup(() => search.abort());
        setTold([]);
        const { signal } = search;
        planner.ask('sureness', { plan, options }, { signal }).then(setTold, (error: unknown) => {
          if (!signal.aborted) throw error;
        });
      },
    ),
  );
  return (
    <div class="plan-sure" data-sure>
      <For each={told()}>{(one) => <p>{say(one)}</p>}</For>
    </div>
  );
}
