import { createSignal, For, type JSX, Show } from 'solid-js';
import '../../../styles/plan/sheets.css';
import { t } from '../../../context/language.ts';
import type { SheetProps } from './sheet-props.ts';
import { CoverSheet } from './covers.tsx';
import { DoorSheet } from './door.tsx';
import { LabelSheet } from './labels.tsx';
import { RabbiSheet } from './rabbi.tsx';
import { ShoppingSheet } from './shopping-sheet.tsx';
import { UtensilSheet } from './utensils.tsx';

const SHEETS = ['labels', 'rabbi', 'covers', 'utensils', 'shopping', 'door'] as const;
type SheetId = (typeof SHEETS)[number];

/** What is printed to be used around the fixtures: one sheet at a time, printed alone. */
export function Sheets(props: SheetProps) {
  const [open, setOpen] = createSignal<SheetId>(SHEETS[0]);
  const sheets: Readonly<Record<SheetId, () => JSX.Element>> = {
    labels: () => <LabelSheet {...props} />,
    rabbi: () => <RabbiSheet {...props} />,
    covers: () => <CoverSheet {...props} />,
    utensils: () => <UtensilSheet {...props} />,
    shopping: () => <ShoppingSheet {...props} />,
    door: () => <DoorSheet {...props} />,
  };
  return (
    <div class="sheets">
      <div class="sheets-choose" role="group" aria-label={t('sheets.choose')}>
        <For each={SHEETS}>
          {(id) => (
            <button
              type="button"
              class="sheets-choice"
              data-sheet={id}
              aria-pressed={open() === id}
              onClick={() => setOpen(id)}
            >
              {t(`sheets.name.${id}`)}
            </button>
          )}
        </For>
      </div>
      <Show when={open()} keyed>
        {(id) => sheets[id]()}
      </Show>
    </div>
  );
}
