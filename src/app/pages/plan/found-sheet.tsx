import { For } from 'solid-js';
import { withFound, type ChosenQuestion } from '../../../core/custom/index.ts';
import {
  CONDITIONS,
  MATERIALS,
  type Condition,
  type Fixture,
  type Kitchen,
  type Material,
} from '../../../core/kitchen/index.ts';
import { Action } from '../../parts/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';

/** A question that is answered by looking: what it is made of, or what state it is in. */
export function FoundSheet(props: {
  kitchen: Kitchen;
  fixture: Fixture;
  question: ChosenQuestion;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
}) {
  const material = () => props.question.about === 'material';
  const words = (): readonly string[] =>
    (material() ? MATERIALS : CONDITIONS).filter((one) => one !== 'unknown');
  const keep = (word: string) => {
    const found = material() ? { material: word as Material } : { condition: word as Condition };
    props.onKitchen(withFound(props.kitchen, props.fixture.id, found));
    props.onClose();
  };
  return (
    <Sheet label={`What you found about ${props.fixture.name}`} onClose={props.onClose}>
      <h2>{props.fixture.name}</h2>
      <p class="answer-ask">{props.question.ask}</p>
      <p class="quiet">{props.question.why} If you cannot tell, leave it open.</p>
      <div class="answer-list answer-list--words">
        <For each={words()}>
          {(word) => (
            <button type="button" class="answer-choice" onClick={() => keep(word)}>
              {word.replaceAll('-', ' ')}
            </button>
          )}
        </For>
      </div>
      <div class="button-row">
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
    </Sheet>
  );
}
