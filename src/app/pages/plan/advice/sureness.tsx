import { For } from 'solid-js';
import type { Message } from '../../../../core/messages/index.ts';
import { say } from '../../../context/language.ts';

/** By when the plan ends nine times in ten, and what is nearer than that. */
export function SurenessLine(props: { told: readonly Message[] }) {
  return (
    <div class="plan-sure" data-sure>
      <For each={props.told}>{(one) => <p data-key={one.key}>{say(one)}</p>}</For>
    </div>
  );
}
