/** The page and the sheet are drawn within this time, ms; then the field can be found. */
const DRAWN_MS = 60;

/** "fixtures[0].material" and "fixtures.sink.material" both end in what is asked for. */
function find(path: string): HTMLElement | undefined {
  const all = [...document.querySelectorAll<HTMLElement>('[data-path]')].filter(
    (one) => one.dataset['path'],
  );
  const exact = all.find((one) => one.dataset['path'] === path);
  if (exact) return exact;
  const last = path.split('.').at(-1) ?? path;
  return (
    all.find((one) => path.startsWith(`${one.dataset['path']}.`)) ??
    all.find((one) => one.dataset['path']?.startsWith(path)) ??
    all.find((one) => one.dataset['path']?.endsWith(`.${last}`))
  );
}

/** Brings the field of a path under the hand, once it is on the page. */
export function goToField(path: string): void {
  setTimeout(() => {
    const field = find(path);
    field?.scrollIntoView({ block: 'center' });
    (field?.matches('[role=group]') ? field.querySelector<HTMLElement>('button') : field)?.focus();
  }, DRAWN_MS);
}
