import { say } from '../../context/language.ts';
import { createMemo, For, Show } from 'solid-js';
import type { Plan, Step } from '../../../core/plan/index.ts';
import { PHASE_NAMES } from '../../labels/names.ts';
import { lengthInWords, offsetInWords } from '../../labels/time.ts';
import { Lanes } from '../../pictures/lanes.tsx';

/** The open questions that make a step what it is: it purges or covers the stricter way. */
function openFor(plan: Plan, step: Step): Plan['questions'] {
  if (step.phase !== 'purge' && step.phase !== 'cover') return [];
  return plan.questions.filter((one) => one.fixture === step.fixture);
}

/** Every step in the order of the timetable. */
export function Steps(props: { plan: Plan }) {
  const ordered = createMemo(() =>
    props.plan.steps.toSorted(
      (a, b) => (props.plan.timetable.startS[a.id] ?? 0) - (props.plan.timetable.startS[b.id] ?? 0),
    ),
  );
  const fixture = (step: Step) =>
    props.plan.kitchen.fixtures.find((f) => f.id === step.fixture)?.name ?? 'Whole kitchen';
  return (
    <ol class="steps">
      <For each={ordered()}>
        {(step) => (
          <li class="step-row">
            <span class="step-when">
              {offsetInWords(props.plan.timetable.startS[step.id] ?? 0)}
            </span>
            <div class="step-what">
              <details>
                <summary>
                  <span class="step-title">{say(step.title)}</span>
                  <span class="quiet">
                    {fixture(step)}, {PHASE_NAMES[step.phase].toLowerCase()},{' '}
                    {lengthInWords(step.durationS.typical)}
                  </span>
                </summary>
                <p class="quiet">{say(step.reason)}</p>
                <For each={openFor(props.plan, step)}>
                  {(question) => (
                    <p class="method-ask">
                      <strong>Not answered yet:</strong> {say(question.ask)}{' '}
                      <span class="quiet">Until then: {say(question.untilThen)}</span>
                    </p>
                  )}
                </For>
                <ol class="step-stages">
                  <For each={step.stages}>
                    {(stage) => (
                      <li>
                        {say(stage.title)}
                        <Show when={stage.detail.length > 0}>
                          <ul class="step-detail quiet">
                            <For each={stage.detail}>{(line) => <li>{say(line)}</li>}</For>
                          </ul>
                        </Show>
                      </li>
                    )}
                  </For>
                </ol>
                <Show when={step.picture?.kind === 'lanes' && step.picture}>
                  {(picture) => (
                    <div class="step-lanes">
                      <Lanes picture={picture() as Extract<Step['picture'], { kind: 'lanes' }>} />
                    </div>
                  )}
                </Show>
              </details>
            </div>
          </li>
        )}
      </For>
    </ol>
  );
}
