import { type JSX, onCleanup, onMount, Show, useContext } from 'solid-js';
import { Guarded } from './guarded.tsx';
import { countSheets } from './sheets/open-sheets.ts';
import { SheetCorner, SheetTop } from './sheets/sheet-corner.ts';

/**
 * A modal sheet over the page; Escape and the given close action end it. The
 * focus goes to the sheet itself, on no button: a key that was on its way
 * presses nothing. At the end it goes back to where it came from. What the page
 * keeps in reach (SheetCorner) and in sight (SheetTop) stays so.
 */
export function Sheet(props: {
  label: string;
  onClose: () => void;
  children: JSX.Element;
  /** As wide as the screen. */
  wide?: boolean;
}) {
  const corner = useContext(SheetCorner);
  const top = useContext(SheetTop);
  let dialog: HTMLDialogElement | undefined;
  let body: HTMLDivElement | undefined;
  onMount(() => {
    countSheets(1);
    dialog?.showModal();
    body?.focus();
  });
  onCleanup(() => {
    countSheets(-1);
    // Closing, not only taking away, gives the focus back.
    if (dialog?.open) dialog.close();
  });
  return (
    <dialog
      ref={(element) => (dialog = element)}
      class="sheet"
      classList={{ 'sheet--wide': props.wide ?? false }}
      aria-label={props.label}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
    >
      <div
        ref={(element) => (body = element)}
        class="sheet-body"
        tabindex="-1"
        data-scrolls=""
        autofocus
      >
        <Guarded part="sheet">{props.children}</Guarded>
      </div>
      <Show when={corner}>{(inReach) => inReach()()}</Show>
      <Show when={top}>{(inSight) => inSight()()}</Show>
    </dialog>
  );
}
