import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { addUtensil, removeUtensil } from '../../../../core/editing/index.ts';
import {
  CONDITIONS,
  DESIGNATIONS,
  LIMITS,
  UTENSIL_KINDS,
  UTENSIL_MATERIALS,
  UTENSIL_USES,
  type Kitchen,
  type Utensil,
  type UtensilKind,
  type UtensilMaterial,
} from '../../../../core/kitchen/index.ts';
import { asWritten, message } from '../../../../core/messages/index.ts';
import { t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';

/** Kinds whose name says what they are made of. */
const NAMED_MATERIAL: Readonly<Partial<Record<UtensilKind, UtensilMaterial>>> = {
  'wooden-spoon': 'wood',
  glass: 'glass',
  silver: 'silver',
};

/** Nothing is guessed: what is left open is planned the strict way. */
const OPEN: Omit<Utensil, 'id'> = {
  kind: 'pot',
  count: 1,
  material: 'unknown',
  use: 'unknown',
  condition: 'unknown',
  designation: 'undecided',
};

/** Lines of utensils are added and taken out here; what is done with them is worked out anew. */
export function UtensilForm(props: { kitchen: Kitchen; onKitchen: (kitchen: Kitchen) => void }) {
  const [told, setTold] = createSignal(OPEN);
  const set = (change: Partial<typeof OPEN>) => setTold((now) => ({ ...now, ...change }));
  // The first line that is told must not shut it.
  const beginsOpen = (props.kitchen.utensils ?? []).length === 0;
  const isFull = () => (props.kitchen.utensils ?? []).length >= LIMITS.utensils.most;
  return (
    <details class="utensil-form" open={beginsOpen}>
      <summary>{t('handouts.utensil.tell')}</summary>
      <p class="quiet">{t('handouts.utensil.tell.about')}</p>
      <div class="utensil-fields">
        <Choose
          label={t('handouts.utensil.kind')}
          choices={UTENSIL_KINDS}
          value={told().kind}
          nameOf={(kind) => t(`utensils.kind.${kind}`)}
          onPick={(kind) => set({ kind, material: NAMED_MATERIAL[kind] ?? told().material })}
        />
        <Count value={told().count} onValue={(count) => set({ count })} />
        <Choose
          label={t('handouts.utensil.material')}
          choices={UTENSIL_MATERIALS}
          value={told().material}
          nameOf={(material) => t(`handouts.material.${material}`)}
          onPick={(material) => set({ material })}
        />
        <Choose
          label={t('handouts.utensil.use')}
          choices={UTENSIL_USES}
          value={told().use}
          nameOf={(use) => t(`handouts.use.${use}`)}
          onPick={(use) => set({ use })}
        />
        <Choose
          label={t('handouts.utensil.condition')}
          choices={CONDITIONS}
          value={told().condition}
          nameOf={(condition) => t(`common.condition.${condition}`)}
          onPick={(condition) => set({ condition })}
        />
        <Choose
          label={t('handouts.utensil.designation')}
          choices={DESIGNATIONS}
          value={told().designation}
          nameOf={(designation) => t(`common.designation.${designation}`)}
          onPick={(designation) => set({ designation })}
        />
      </div>
      <Action
        class="button"
        name="add-utensil"
        disabled={isFull()}
        onPress={() => {
          props.onKitchen(addUtensil(props.kitchen, told()));
          setTold(OPEN);
        }}
      >
        {t('handouts.utensil.add')}
      </Action>
      <Told kitchen={props.kitchen} onKitchen={props.onKitchen} />
    </details>
  );
}

/** What is told by now, each line to be taken out again. */
function Told(props: { kitchen: Kitchen; onKitchen: (kitchen: Kitchen) => void }) {
  const nameOf = ({ name, kind, count }: Utensil) =>
    message('utensils.count', {
      count,
      name: name === undefined ? message(`utensils.kind.${kind}`) : asWritten(name),
    });
  return (
    <Show when={(props.kitchen.utensils ?? []).length > 0}>
      <ul class="utensils-told" aria-label={t('handouts.utensil.told')}>
        <For each={props.kitchen.utensils}>
          {(utensil) => (
            <li>
              <Action
                class="word-button"
                name="take-out-utensil"
                onPress={() => props.onKitchen(removeUtensil(props.kitchen, utensil.id))}
              >
                {t('handouts.utensil.take-out', { what: nameOf(utensil) })}
              </Action>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

function Count(props: { value: number; onValue: (count: number) => void }) {
  const id = createUniqueId();
  const { least, most } = LIMITS.utensilCount;
  const read = (text: string) => {
    const count = Math.round(Number(text));
    return Number.isFinite(count) ? Math.min(most, Math.max(least, count)) : props.value;
  };
  return (
    <div class="field">
      <label for={id}>{t('handouts.utensil.count')}</label>
      <input
        id={id}
        type="number"
        inputmode="numeric"
        min={least}
        max={most}
        value={props.value}
        onChange={(event) => {
          const count = read(event.currentTarget.value);
          event.currentTarget.value = String(count);
          props.onValue(count);
        }}
      />
    </div>
  );
}

function Choose<T extends string>(props: {
  label: string;
  choices: readonly T[];
  value: T;
  nameOf: (id: T) => string;
  onPick: (id: T) => void;
}) {
  const id = createUniqueId();
  return (
    <div class="field">
      <label for={id}>{props.label}</label>
      <select id={id} onChange={(event) => props.onPick(event.currentTarget.value as T)}>
        <For each={props.choices}>
          {(choice) => (
            <option value={choice} selected={choice === props.value}>
              {props.nameOf(choice)}
            </option>
          )}
        </For>
      </select>
    </div>
  );
}
