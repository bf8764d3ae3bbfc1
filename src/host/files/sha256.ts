/**
 * SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, as 64 lower-case hexadecimal
 * digits: of a text as it is saved, what any other program gives of the file.
 * Undefined where the page was not loaded safely, and the browser works out none.
 */
export async function sha256(text: string): Promise<string | undefined> {
  // Typed as always there; a page over plain http has none.
  const subtle = crypto.subtle as SubtleCrypto | undefined;
  if (!subtle) return undefined;
  const sum = await subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(sum)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
