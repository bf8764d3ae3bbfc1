import '../../styles/kitchen/custom.css';
import { createSignal, For, Show } from 'solid-js';
import {
  ownCustomOf,
  rowsToChange,
  withOwnCustom,
  withoutOwnCustom,
  withoutOwnRow,
  type CustomRow,
} from '../../../core/custom/index.ts';
import type { Kitchen, OwnRow } from '../../../core/kitchen/index.ts';
import { Action } from '../../parts/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { CUSTOM_NAMES, METHOD_NAMES } from '../../labels/names.ts';
import { RowSheet } from './row-sheet.tsx';
import { rowName, wayWords } from './row-words.ts';

const FIRST_NAME = 'Our custom';

type Props = {
  kitchen: Kitchen;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
};

/** A custom of one's own: copied by name from the one the household follows, changed row by row. */
export function OwnCustomSheet(props: Props) {
  const own = () => ownCustomOf(props.kitchen.household);
  return (
    <Sheet label="A custom of your own" onClose={props.onClose}>
      <Show when={own()} fallback={<Copy {...props} />}>
        {(custom) => <Rows {...props} name={custom().name} />}
      </Show>
    </Sheet>
  );
}

function Copy(props: Props) {
  const [name, setName] = createSignal(FIRST_NAME);
  const base = () => CUSTOM_NAMES[props.kitchen.household.custom];
  const resting = () => props.kitchen.household.ownCustom;
  return (
    <>
      <h2>Make a custom of our own</h2>
      <p>
        It starts as a copy of the {base()}. You change the rows that are otherwise with you, each
        with who said it, when and why. It is kept in the kitchen file and goes with it.
      </p>
      <Show when={resting()}>
        {(other) => (
          <p class="method-ask">
            “{other().name}”, copied from the {CUSTOM_NAMES[other().basedOn]}, is kept and not used
            now. A new copy takes its place.
          </p>
        )}
      </Show>
      <label class="field">
        <span>What you call it</span>
        <input
          name="customName"
          maxLength={80}
          value={name()}
          onInput={(e) => setName(e.currentTarget.value)}
        />
      </label>
      <div class="button-row">
        <Action
          class="button button--ember"
          disabled={name().trim() === ''}
          onPress={() => props.onKitchen(withOwnCustom(props.kitchen, name().trim()))}
        >
          Copy the {base()}
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
    </>
  );
}

function Rows(props: Props & { name: string }) {
  const [row, setRow] = createSignal<CustomRow>();
  const [sure, setSure] = createSignal(false);
  const rows = () => rowsToChange(props.kitchen);
  const changes = () => rows().filter(({ changed }) => changed).length;
  const rename = (name: string) => {
    if (name.trim() !== '') props.onKitchen(withOwnCustom(props.kitchen, name.trim()));
  };
  return (
    <>
      <h2>{props.name}</h2>
      <p class="quiet">
        Copied from the {CUSTOM_NAMES[props.kitchen.household.custom]};{' '}
        {changes() === 0
          ? 'no row is changed yet'
          : `${changes()} of ${rows().length} rows changed`}
        . An answer about one fixture goes before it. What cracks and scratches change stays as it
        is.
      </p>
      <label class="field own-name">
        <span>What you call it</span>
        <input
          name="customName"
          maxLength={80}
          value={props.name}
          onChange={(e) => rename(e.currentTarget.value)}
        />
      </label>
      <ul class="own-rows">
        <For each={rows()}>
          {({ row: base, changed }) => (
            <OwnRowLine
              base={base}
              changed={changed}
              onChange={() => setRow(base)}
              onBack={() => props.onKitchen(withoutOwnRow(props.kitchen, base.id))}
            />
          )}
        </For>
      </ul>
      <div class="button-row">
        <Action class="button button--ember" onPress={props.onClose}>
          Done
        </Action>
        <Show
          when={sure()}
          fallback={
            <Action class="button button--plain" onPress={() => setSure(true)}>
              Delete this custom
            </Action>
          }
        >
          <Action
            class="button button--danger"
            onPress={() => props.onKitchen(withoutOwnCustom(props.kitchen))}
          >
            Yes, delete “{props.name}”
          </Action>
          <Action class="button button--plain" onPress={() => setSure(false)}>
            Keep it
          </Action>
        </Show>
      </div>
      <Show when={row()}>
        {(base) => (
          <RowSheet
            kitchen={props.kitchen}
            base={base()}
            name={props.name}
            onKitchen={props.onKitchen}
            onClose={() => setRow(undefined)}
          />
        )}
      </Show>
    </>
  );
}

function OwnRowLine(props: {
  base: CustomRow;
  changed: OwnRow | undefined;
  onChange: () => void;
  onBack: () => void;
}) {
  return (
    <li class="own-row" data-row={props.base.id}>
      <div>
        <h3>{rowName(props.base)}</h3>
        <p classList={{ 'own-row--was': props.changed !== undefined }}>
          {wayWords(props.base, METHOD_NAMES)}
        </p>
        <Show when={props.changed}>
          {(own) => (
            <p class="own-row-now">
              {wayWords(own(), METHOD_NAMES)}.{' '}
              <span class="quiet">
                {own().why} ({own().saidBy}, {own().saidOn})
              </span>
            </p>
          )}
        </Show>
      </div>
      <div class="button-row">
        <Action class="button button--plain" onPress={props.onChange}>
          Change
        </Action>
        <Show when={props.changed}>
          <Action class="button button--plain" onPress={props.onBack}>
            Back to the custom’s row
          </Action>
        </Show>
      </div>
    </li>
  );
}
