/** Bytes 0x80 to 0x9F in Windows-1252 (WHATWG Encoding, index windows-1252); five of them stay controls. */
const HIGH_CONTROLS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ';

/**
 * Windows-1252 bytes as text. The platform's own decoder is not trusted with this one encoding: Node 20 takes it
 * for Latin-1, so that dashes, quotation marks and the euro sign come out as control characters, while
 * browsers decode it as here.
 */
export function decodeWindows1252(bytes: Uint8Array): string {
  const latin1 = new TextDecoder('windows-1252').decode(bytes);
  return latin1.replace(/[\u0080-\u009F]/g, (letter) => HIGH_CONTROLS[letter.charCodeAt(0) - 0x80]);
}
