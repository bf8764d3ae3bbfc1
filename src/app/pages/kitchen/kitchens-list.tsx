import { createSignal, For, Show } from 'solid-js';
import type { SavedKitchen } from '../../../host/kitchens/index.ts';
import { LIMITS } from '../../../core/kitchen/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import { t, written } from '../../context/language.ts';
import { wallZone } from '../../context/zone.ts';
import type { KitchenController } from '../../controllers/kitchen/kitchen-opening.ts';
import { reasonOf } from '../../controllers/failures/reason.ts';
import { Action } from '../../parts/press/action.tsx';

/** Does something with the store that may fail, and says why it did. */
type Attempt = (work: Promise<unknown>) => void;

/** All kitchens kept on this tablet, the open one marked. */
export function KitchensList(props: { kitchens: KitchenController; onOpened: () => void }) {
  const { library } = props.kitchens;
  const [expanded, setExpanded] = createSignal<string>();
  const [trouble, setTrouble] = createSignal<Message>();
  const attempt: Attempt = (work) => {
    setTrouble(undefined);
    work.catch((error: unknown) => setTrouble(reasonOf(error)));
  };
  const isOpen = (id: string) => {
    const where = props.kitchens.opened();
    return where?.kind === 'kept' && where.id === id;
  };
  return (
    <Show when={library.kept().length > 0 || library.removed().length > 0}>
      <section class="kitchens" aria-label={t('kitchen.kept')}>
        <h2>{t('kitchen.kept')}</h2>
        <ul class="kitchens-list">
          <For each={library.kept().map((row) => row.id)}>
            {(id) => (
              <Show when={library.kept().find((row) => row.id === id)}>
                {(row) => (
                  <Row
                    kitchens={props.kitchens}
                    row={row()}
                    isOpen={isOpen(id)}
                    isExpanded={expanded() === id}
                    onMore={() => setExpanded(expanded() === id ? undefined : id)}
                    attempt={attempt}
                    onOpened={props.onOpened}
                  />
                )}
              </Show>
            )}
          </For>
        </ul>
        <Show when={trouble()}>
          {(why) => (
            <p class="problems" role="alert">
              {t('kitchen.kept.failed', { why: why() })}
            </p>
          )}
        </Show>
        <For each={library.removed()}>
          {(row) => (
            <p class="put-back" role="status">
              <span>{t('kitchen.kept.deleted', { name: row.name })}</span>
              <Action class="button button--plain" onPress={() => attempt(library.putBack(row.id))}>
                {t('kitchen.kept.put-back')}
              </Action>
            </p>
          )}
        </For>
      </section>
    </Show>
  );
}

function Row(props: {
  kitchens: KitchenController;
  row: SavedKitchen;
  isOpen: boolean;
  isExpanded: boolean;
  onMore: () => void;
  attempt: Attempt;
  onOpened: () => void;
}) {
  const [sure, setSure] = createSignal(false);
  const [name, setName] = createSignal(props.row.name);
  const id = () => props.row.id;
  const changed = (): string => {
    const when = { wallMs: props.row.savedWallMs, zone: wallZone() };
    return props.isOpen ? t('kitchen.kept.open', when) : t('kitchen.kept.changed', when);
  };
  return (
    <li class="kitchen-row" aria-current={props.isOpen ? 'true' : undefined}>
      <div class="kitchen-row-head">
        <Action
          class="kitchen-open"
          onPress={() =>
            props.attempt(props.kitchens.open(id()).then((ok) => ok && props.onOpened()))
          }
        >
          <span class="kitchen-row-name">{written(props.row.name)}</span>
          <span class="quiet">{changed()}</span>
        </Action>
        <Action class="button button--plain" onPress={props.onMore}>
          {props.isExpanded ? t('kitchen.kept.less') : t('kitchen.kept.more')}
          <span class="visually-hidden"> {t('kitchen.kept.for', { name: props.row.name })}</span>
        </Action>
      </div>
      <Show when={props.isExpanded}>
        <Show
          when={!sure()}
          fallback={
            <div class="button-row kitchen-sure" role="alert">
              <Action class="button" onPress={() => setSure(false)}>
                {t('kitchen.kept.keep')}
              </Action>
              <span>{t('kitchen.kept.sure', { name: props.row.name })}</span>
              <Action
                class="button button--danger"
                onPress={() => props.attempt(props.kitchens.remove(id()))}
              >
                {t('kitchen.kept.delete-it')}
              </Action>
            </div>
          }
        >
          <div class="button-row kitchen-more">
            <label class="field">
              <span>{t('kitchen.kept.another-name')}</span>
              <input
                type="text"
                autocomplete="off"
                maxlength={LIMITS.nameLetters.most}
                value={props.row.name}
                onInput={(e) => setName(e.currentTarget.value)}
              />
            </label>
            <Action
              class="button button--plain"
              onPress={() => props.attempt(props.kitchens.rename(id(), name()))}
            >
              {t('kitchen.kept.rename')}
            </Action>
            <Action
              class="button button--plain"
              onPress={() => props.attempt(props.kitchens.duplicate(id()))}
            >
              {t('kitchen.kept.duplicate')}
            </Action>
            <Action class="button button--plain" onPress={() => setSure(true)}>
              {t('kitchen.kept.delete')}
            </Action>
          </div>
        </Show>
      </Show>
    </li>
  );
}
