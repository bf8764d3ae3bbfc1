import { For, Show } from 'solid-js';
import type { Plan, Step } from '../../../../core/plan/index.ts';
import { say, t } from '../../../context/language.ts';
import { CautionLine } from '../../../parts/caution-line.tsx';
import { Lanes } from '../../../pictures/lanes.tsx';

/** The open questions that make a step what it is: it purges or covers the stricter way. */
function openFor(plan: Plan, step: Step): Plan['questions'] {
  if (step.phase !== 'purge' && step.phase !== 'cover') return [];
  return plan.questions.filter((one) => one.fixture === step.fixture);
}

/** What a step warns of, the questions before it first. */
function cautionsOf({ cautions, gates }: Plan, step: Step) {
  return [
    ...gates
      .filter(({ id }) => step.gates.includes(id))
      .map(({ signal, ask }) => ({ signal, say: ask })),
    ...cautions.filter(({ id }) => step.standing.includes(id)),
  ];
}

/** Why a step is done, what it warns of, and its stages. */
export function StepBody(props: { plan: Plan; step: Step; cautions?: boolean }) {
  return (
    <>
      <p class="quiet">{say(props.step.reason)}</p>
      <For each={openFor(props.plan, props.step)}>
        {(question) => (
          <p class="method-ask">
            <strong>{t('plan-page.not-answered')}</strong> {say(question.ask)}{' '}
            <span class="quiet">
              {t('plan-page.until-then', { untilThen: say(question.untilThen) })}
            </span>
          </p>
        )}
      </For>
      <Show when={props.cautions}>
        <ul class="step-cautions">
          <For each={cautionsOf(props.plan, props.step)}>
            {(caution) => <CautionLine caution={caution} />}
          </For>
        </ul>
      </Show>
      <ol class="step-stages">
        <For each={props.step.stages}>
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
      <Show when={props.step.picture?.kind === 'lanes' && props.step.picture}>
        {(picture) => (
          <div class="step-lanes">
            <Lanes picture={picture() as Extract<Step['picture'], { kind: 'lanes' }>} />
          </div>
        )}
      </Show>
    </>
  );
}
