import { For, Show } from 'solid-js';
import { say, t, written } from '../../../context/language.ts';
import { withFound, type ChosenQuestion } from '../../../../core/custom/index.ts';
import {
  CONDITIONS,
  MATERIALS,
  type Condition,
  type Fixture,
  type Kitchen,
  type Material,
} from '../../../../core/kitchen/index.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

/** A question that is answered by looking: what it is made of, what state it is in, what it was used for. */
export function FoundSheet(props: {
  kitchen: Kitchen;
  fixture: Fixture;
  question: ChosenQuestion;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
}) {
  const material = () => props.question.about === 'material';
  const choices = (): readonly (Material | Condition)[] =>
    (material() ? MATERIALS : CONDITIONS).filter((id) => id !== 'unknown');
  const nameOf = (id: Material | Condition) =>
    material() ? t(`common.material.${id as Material}`) : t(`common.condition.${id as Condition}`);
  const found = (what: Parameters<typeof withFound>[2]) => {
    props.onKitchen(withFound(props.kitchen, props.fixture.id, what));
    props.onClose();
  };
  const keep = (id: Material | Condition) =>
    found(material() ? { material: id as Material } : { condition: id as Condition });
  return (
    <Sheet
      label={t('plan-page.found.about', { fixture: props.fixture.name })}
      onClose={props.onClose}
    >
      <h2>{written(props.fixture.name)}</h2>
      <p class="answer-ask">{say(props.question.ask)}</p>
      <p class="quiet">
        {say(props.question.why)} {t('plan-page.found.leave-open')}
      </p>
      <div class="answer-list answer-list--words">
        <Show
          when={props.question.fact}
          fallback={
            <For each={choices()}>
              {(id) => (
                <button type="button" class="answer-choice" onClick={() => keep(id)}>
                  {nameOf(id)}
                </button>
              )}
            </For>
          }
        >
          {(fact) => (
            <For each={[true, false]}>
              {(is) => (
                <button type="button" class="answer-choice" onClick={() => found({ [fact()]: is })}>
                  {t(is ? 'survey.yes' : 'survey.no')}
                </button>
              )}
            </For>
          )}
        </Show>
      </div>
      <div class="button-row">
        <Action class="button button--plain" onPress={props.onClose}>
          {t('plan-page.back')}
        </Action>
      </div>
    </Sheet>
  );
}
