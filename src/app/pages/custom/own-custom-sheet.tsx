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
import { LIMITS, type Kitchen, type OwnRow } from '../../../core/kitchen/index.ts';
import { message } from '../../../core/messages/index.ts';
import { say, t, written } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { RowSheet } from './row-sheet.tsx';
import { rowName, wayMessage } from './row-messages.ts';

type Props = {
  kitchen: Kitchen;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
};

/** A custom of one's own: copied by name from the one the household follows, changed row by row. */
export function OwnCustomSheet(props: Props) {
  const own = () => ownCustomOf(props.kitchen.household);
  return (
    <Sheet label={t('kitchen.custom.title')} onClose={props.onClose}>
      <Show when={own()} fallback={<Copy {...props} />}>
        {(custom) => <Rows {...props} name={custom().name} />}
      </Show>
    </Sheet>
  );
}

function Copy(props: Props) {
  const [name, setName] = createSignal(t('kitchen.custom.first-name'));
  const base = () => ({ custom: message(`common.custom.${props.kitchen.household.custom}`) });
  const resting = () => props.kitchen.household.ownCustom;
  return (
    <>
      <h2>{t('kitchen.custom.make')}</h2>
      <p>{t('kitchen.custom.about', base())}</p>
      <Show when={resting()}>
        {(other) => (
          <p class="method-ask">
            {t('kitchen.custom.resting', {
              name: other().name,
              custom: message(`common.custom.${other().basedOn}`),
            })}
          </p>
        )}
      </Show>
      <label class="field">
        <span>{t('kitchen.custom.called')}</span>
        <input
          name="customName"
          maxLength={LIMITS.nameLetters.most}
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
          {t('kitchen.custom.copy', base())}
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          {t('kitchen.custom.back')}
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
      <h2>{written(props.name)}</h2>
      <p class="quiet">
        {t('kitchen.custom.copied', {
          custom: message(`common.custom.${props.kitchen.household.custom}`),
          changed: changes(),
          rows: rows().length,
        })}
      </p>
      <label class="field own-name">
        <span>{t('kitchen.custom.called')}</span>
        <input
          name="customName"
          maxLength={LIMITS.nameLetters.most}
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
          {t('kitchen.custom.done')}
        </Action>
        <Show
          when={sure()}
          fallback={
            <Action class="button button--plain" onPress={() => setSure(true)}>
              {t('kitchen.custom.delete')}
            </Action>
          }
        >
          <Action
            class="button button--danger"
            onPress={() => props.onKitchen(withoutOwnCustom(props.kitchen))}
          >
            {t('kitchen.custom.delete-sure', { name: props.name })}
          </Action>
          <Action class="button button--plain" onPress={() => setSure(false)}>
            {t('kitchen.custom.keep')}
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
        <h3>{say(rowName(props.base))}</h3>
        <p classList={{ 'own-row--was': props.changed !== undefined }}>
          {say(wayMessage(props.base))}
        </p>
        <Show when={props.changed}>
          {(own) => (
            <p class="own-row-now">
              {t('kitchen.custom.own-way', { way: wayMessage(own()) })}{' '}
              <span class="quiet">
                {t('kitchen.custom.said', {
                  why: own().why,
                  saidBy: own().saidBy,
                  saidOn: own().saidOn,
                })}
              </span>
            </p>
          )}
        </Show>
      </div>
      <div class="button-row">
        <Action class="button button--plain" onPress={props.onChange}>
          {t('kitchen.custom.change')}
        </Action>
        <Show when={props.changed}>
          <Action class="button button--plain" onPress={props.onBack}>
            {t('kitchen.custom.back-to-row')}
          </Action>
        </Show>
      </div>
    </li>
  );
}
