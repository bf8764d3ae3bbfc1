import { createSignal, For, Show } from 'solid-js';
import type { SavedKitchen } from '../../../host/kitchens/index.ts';
import { Action } from '../../parts/action.tsx';
import type { KitchenController } from '../../controllers/kitchen/kitchen-opening.ts';

function changedText(wallMs: number): string {
  const when = new Intl.DateTimeFormat('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    hour: '2-digit',
    minute: '2-digit',
  });
  return `changed ${when.format(wallMs)}`;
}

/** A deed of the store that may fail. */
type Attempt = (deed: Promise<unknown>) => void;

/** All kitchens kept on this tablet, the one on the desk marked. */
export function KitchensList(props: { desk: KitchenController; onOpened: () => void }) {
  const { shelf } = props.desk;
  const [open, setOpen] = createSignal<string>();
  const [trouble, setTrouble] = createSignal<string>();
  const attempt: Attempt = (deed) => {
    setTrouble(undefined);
    deed.catch((error: unknown) => setTrouble(error instanceof Error ? error.message : ''));
  };
  const onDesk = (id: string) => {
    const where = props.desk.onDesk();
    return where?.kind === 'kept' && where.id === id;
  };
  return (
    <Show when={shelf.kept().length > 0 || shelf.removed().length > 0}>
      <section class="kitchens" aria-label="Kitchens on this tablet">
        <h2>Kitchens on this tablet</h2>
        <ul class="kitchens-list">
          <For each={shelf.kept().map((row) => row.id)}>
            {(id) => (
              <Show when={shelf.kept().find((row) => row.id === id)}>
                {(row) => (
                  <Row
                    desk={props.desk}
                    row={row()}
                    onDesk={onDesk(id)}
                    more={open() === id}
                    onMore={() => setOpen(open() === id ? undefined : id)}
                    attempt={attempt}
                    onOpened={props.onOpened}
                  />
                )}
              </Show>
            )}
          </For>
        </ul>
        <Show when={trouble() !== undefined}>
          <p class="problems" role="alert">
            This tablet’s store did not answer, and nothing was changed. {trouble()}
          </p>
        </Show>
        <For each={shelf.removed()}>
          {(row) => (
            <p class="put-back" role="status">
              <span>“{row.name}” was deleted. It can be put back for a week.</span>
              <Action class="button button--plain" onPress={() => attempt(shelf.putBack(row.id))}>
                Put back
              </Action>
            </p>
          )}
        </For>
      </section>
    </Show>
  );
}

function Row(props: {
  desk: KitchenController;
  row: SavedKitchen;
  onDesk: boolean;
  more: boolean;
  onMore: () => void;
  attempt: Attempt;
  onOpened: () => void;
}) {
  const [sure, setSure] = createSignal(false);
  const [name, setName] = createSignal(props.row.name);
  const id = () => props.row.id;
  return (
    <li class="kitchen-row" aria-current={props.onDesk ? 'true' : undefined}>
      <div class="kitchen-row-head">
        <Action
          class="kitchen-open"
          onPress={() => props.attempt(props.desk.open(id()).then((ok) => ok && props.onOpened()))}
        >
          <span class="kitchen-row-name">{props.row.name}</span>
          <span class="quiet">
            {props.onDesk ? 'open now, ' : ''}
            {changedText(props.row.savedWallMs)}
          </span>
        </Action>
        <Action class="button button--plain" onPress={props.onMore}>
          {props.more ? 'Less' : 'More'}
          <span class="visually-hidden"> for “{props.row.name}”</span>
        </Action>
      </div>
      <Show when={props.more}>
        <Show
          when={!sure()}
          fallback={
            <div class="button-row kitchen-sure" role="alert">
              <Action class="button" onPress={() => setSure(false)}>
                Keep it
              </Action>
              <span>Delete “{props.row.name}”?</span>
              <Action
                class="button button--danger"
                onPress={() => props.attempt(props.desk.remove(id()))}
              >
                Delete it
              </Action>
            </div>
          }
        >
          <div class="button-row kitchen-more">
            <label class="field">
              <span>Another name</span>
              <input
                type="text"
                autocomplete="off"
                maxlength={80}
                value={props.row.name}
                onInput={(e) => setName(e.currentTarget.value)}
              />
            </label>
            <Action
              class="button button--plain"
              onPress={() => props.attempt(props.desk.rename(id(), name()))}
            >
              Rename
            </Action>
            <Action
              class="button button--plain"
              onPress={() => props.attempt(props.desk.duplicate(id()))}
            >
              Duplicate
            </Action>
            <Action class="button button--plain" onPress={() => setSure(true)}>
              Delete
            </Action>
          </div>
        </Show>
      </Show>
    </li>
  );
}
