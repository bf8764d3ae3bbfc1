export type TextFile = {
  readonly name: string;
  readonly text: string;
  /** Media type, as "text/calendar". */
  readonly type: string;
};

/** An object address is let go after this, ms: some engines still read it after the click. */
const LET_GO_MS = 60_000;

/** Hands a text to the device as a file. The device says where it went; the page is not told. */
export function downloadText(file: TextFile): void {
  const address = URL.createObjectURL(new Blob([file.text], { type: file.type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), LET_GO_MS);
}
