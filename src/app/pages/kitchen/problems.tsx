import { For, type JSX, Show } from 'solid-js';
import { problemWhere, type KitchenProblem } from '../../../core/kitchen/index.ts';
import { say, t } from '../../context/language.ts';

/** What is wrong with a file: where, what stands there, what may, and what to do. */
export function FileProblems(props: { problems: readonly KitchenProblem[] }) {
  return (
    <Show when={props.problems.length > 0}>
      <Alert title={t('kitchen.problems.file')} note={t('kitchen.problems.file.note')}>
        <For each={props.problems}>
          {(problem) => (
            <li>
              <strong>{placeOf(problem)}</strong>
              <span>
                {t('kitchen.problem', {
                  found: problem.found,
                  allowed: problem.allowed,
                  advice: problem.advice,
                })}
              </span>
            </li>
          )}
        </For>
      </Alert>
    </Show>
  );
}

/** Why there is no plan of a kitchen that reads well. */
export function PlanTrouble(props: { why: string }) {
  return (
    <Alert title={t('kitchen.problems.plan')} note={t('kitchen.problems.plan.note')}>
      <li>{props.why}</li>
    </Alert>
  );
}

/** The field first: a household looks for its name. */
function placeOf(problem: KitchenProblem): string {
  const { path, line } = problem;
  return path === '' || line === undefined
    ? say(problemWhere(problem))
    : t('kitchen.problem.at', { path, line });
}

/** @param props note: what it means for what the person has */
function Alert(props: { title: string; note: string; children: JSX.Element }) {
  return (
    <div class="problems" role="alert">
      <h2>{props.title}</h2>
      <ul class="problem-list">{props.children}</ul>
      <p class="quiet">{props.note}</p>
    </div>
  );
}
