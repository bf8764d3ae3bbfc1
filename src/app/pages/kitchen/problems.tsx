import { For, Show } from 'solid-js';
import type { KitchenProblem } from '../../../core/kitchen/index.ts';

/** What is wrong with a file: where, what stands there, what may, and what to do. */
export function Problems(props: {
  title: string;
  /** What it means for what the person has. */
  note: string;
  problems: readonly KitchenProblem[];
}) {
  return (
    <Show when={props.problems.length > 0}>
      <div class="problems" role="alert">
        <h2>{props.title}</h2>
        <ul class="problem-list">
          <For each={props.problems}>
            {(problem) => (
              <li>
                <Show when={problem.allowed} fallback={problem.message}>
                  <strong>
                    {problem.path}
                    {problem.line === undefined ? '' : `, line ${problem.line}`}
                  </strong>
                  <span>
                    Found {problem.found}. Allowed: {problem.allowed}. {problem.advice}
                  </span>
                </Show>
              </li>
            )}
          </For>
        </ul>
        <p class="quiet">{props.note}</p>
      </div>
    </Show>
  );
}
