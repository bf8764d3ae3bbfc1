import { createMemo, For } from 'solid-js';
import { surenessMessages, surenessOf } from '../../../../core/advice/index.ts';
import type { Plan, PlanOptions } from '../../../../core/plan/index.ts';
import { say } from '../../../context/language.ts';

/** By when the plan ends nine times in ten, and what is nearer than that. */
export function SurenessLine(props: { plan: Plan; options: PlanOptions }) {
  const told = createMemo(() =>
    surenessMessages(surenessOf(props.plan, props.options), props.plan),
  );
  return (
    <div class="plan-sure" data-sure>
      <For each={told()}>{(one) => <p>{say(one)}</p>}</For>
    </div>
  );
}
