import { createSignal, For, type JSX, Show } from 'solid-js';
import '../../../styles/handouts/handouts.css';
import '../../../styles/handouts/labels.css';
import '../../../styles/handouts/questions.css';
import '../../../styles/handouts/covers.css';
import '../../../styles/handouts/utensils.css';
import '../../../styles/handouts/products.css';
import '../../../styles/handouts/door-and-crew.css';
import '../../../styles/handouts/print.css';
import { t } from '../../../context/language.ts';
import type { HandoutProps } from './frame/handout-props.ts';
import { CoverHandout } from './covers.tsx';
import { CrewHandout } from './crew.tsx';
import { DoorHandout } from './door.tsx';
import { LabelHandout } from './labels.tsx';
import { RabbiHandout } from './rabbi.tsx';
import { ShoppingHandout } from './shopping.tsx';
import { UtensilHandout } from './utensils.tsx';

const HANDOUTS = ['labels', 'rabbi', 'covers', 'utensils', 'shopping', 'crew', 'door'] as const;
type HandoutId = (typeof HANDOUTS)[number];

/** What is printed to be used around the fixtures: one at a time, printed alone. */
export function Handouts(props: HandoutProps) {
  const [open, setOpen] = createSignal<HandoutId>(HANDOUTS[0]);
  const handouts: Readonly<Record<HandoutId, () => JSX.Element>> = {
    labels: () => <LabelHandout {...props} />,
    rabbi: () => <RabbiHandout {...props} />,
    covers: () => <CoverHandout {...props} />,
    utensils: () => <UtensilHandout {...props} />,
    shopping: () => <ShoppingHandout {...props} />,
    crew: () => <CrewHandout {...props} />,
    door: () => <DoorHandout {...props} />,
  };
  /** One person alone needs no sheet of their own: the plan is it. */
  const shown = () => HANDOUTS.filter((id) => id !== 'crew' || props.course.lanes.length > 1);
  return (
    <div class="handouts">
      <div class="handouts-choose" role="group" aria-label={t('handouts.choose')}>
        <For each={shown()}>
          {(id) => (
            <button
              type="button"
              class="handouts-choice"
              data-handout={id}
              aria-pressed={open() === id}
              onClick={() => setOpen(id)}
            >
              {t(`handouts.name.${id}`)}
            </button>
          )}
        </For>
      </div>
      <Show when={open()} keyed>
        {(id) => handouts[id]()}
      </Show>
    </div>
  );
}
