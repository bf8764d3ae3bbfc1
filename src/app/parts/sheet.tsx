import { type JSX, onMount } from 'solid-js';

/** A modal sheet over the page; Escape and the given close action end it. */
export function Sheet(props: { label: string; onClose: () => void; children: JSX.Element }) {
  let dialog: HTMLDialogElement | undefined;
  onMount(() => dialog?.showModal());
  return (
    <dialog
      ref={(element) => (dialog = element)}
      class="sheet"
      aria-label={props.label}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
    >
      <div class="sheet-body">{props.children}</div>
    </dialog>
  );
}
