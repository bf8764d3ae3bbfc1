/**
 * CRC-32 as in ISO 3309 / ITU-T V.42 and RFC 1952 §8: reflected polynomial
 * 0xEDB88320, start and final exclusive-or 0xFFFFFFFF. It finds damage, not
 * malice.
 */
const POLYNOMIAL = 0xedb88320;

const TABLE: readonly number[] = Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) {
    rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  }
  return rest >>> 0;
});

/** CRC-32 of a text's UTF-8 bytes, as 8 lower-case hexadecimal digits. */
export function crc32(text: string): string {
  let rest = 0xffffffff;
  for (const byte of utf8(text)) {
    rest = (rest >>> 8) ^ (TABLE[(rest ^ byte) & 0xff] ?? 0);
  }
  return ((rest ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}

/** Bytes of a text in UTF-8 (RFC 3629); a lone surrogate becomes U+FFFD. Own code: the core knows no encoder of the platform. */
function* utf8(text: string): Generator<number> {
  for (const character of text) {
    let code = character.codePointAt(0) ?? 0xfffd;
    if (code >= 0xd800 && code <= 0xdfff) code = 0xfffd;
    if (code < 0x80) {
      yield code;
    } else if (code < 0x800) {
      yield 0xc0 | (code >> 6);
      yield 0x80 | (code & 0x3f);
    } else if (code < 0x10000) {
      yield 0xe0 | (code >> 12);
      yield 0x80 | ((code >> 6) & 0x3f);
      yield 0x80 | (code & 0x3f);
    } else {
      yield 0xf0 | (code >> 18);
      yield 0x80 | ((code >> 12) & 0x3f);
      yield 0x80 | ((code >> 6) & 0x3f);
      yield 0x80 | (code & 0x3f);
    }
  }
}
