/** Puts a text on the clipboard, from a touch; false where the browser does not let a page. Never rejects. */
export async function copyText(text: string): Promise<boolean> {
  // Typed as always there; a page over plain http has none.
  const clipboard = navigator.clipboard as Clipboard | undefined;
  try {
    await clipboard?.writeText(text);
    return clipboard !== undefined;
  } catch {
    return false;
  }
}
