let wanted: string | undefined;

/** What was pressed on the picture, for the editor that opens next. */
export function editNext(id: string | undefined): void {
  wanted = id;
}

/** What is to be edited first; asked once. */
export function takeEditNext(): string | undefined {
  const id = wanted;
  wanted = undefined;
  return id;
}
