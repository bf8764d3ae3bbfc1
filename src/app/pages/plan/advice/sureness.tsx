import { createMemo, For } from 'solid-js';
import { surenessMessages, type Sureness } from '../../../../core/advice/index.ts';
import type { Plan } from '../../../../core/plan/index.ts';
import { say } from '../../../context/language.ts';

/** By when the plan ends nine times in ten, and what is nearer than that. */
export function SurenessLine(props: { plan: Plan; sureness: Sureness }) {
  const told = createMemo(() => surenessMessages(props.sureness, props.plan));
  return (
    <div class="plan-sure" data-sure>
      <For each={told()}>{(one) => <p data-key={one.key}>{say(one)}</p>}</For>
    </div>
  );
}
