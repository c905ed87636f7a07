import { describe, expect, it } from 'vitest';
import { decodeBytes } from '../../../src/sources/formats/decode.ts';
import { decodeWindows1252 } from '../../../src/sources/formats/windows-1252.ts';

// Python 3.11: bytes(b for b in range(128, 256) if b not in (0x81, 0x8d, 0x8f, 0x90, 0x9d)).decode('cp1252')
const PYTHON =
  '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ\u00A0¡¢£¤¥¦§¨©ª«¬\u00AD®¯°±²³´µ¶·¸¹º»¼½¾¿ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖ×ØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõö÷øùúûüýþÿ';

describe('decodeWindows1252', () => {
  it('spells the upper half as Python does, on every engine', () => {
    const assigned = Array.from({ length: 128 }, (_, i) => i + 128).filter(
      (byte) => ![0x81, 0x8d, 0x8f, 0x90, 0x9d].includes(byte),
    );
    expect(decodeWindows1252(Uint8Array.from(assigned))).toBe(PYTHON);
  });

  it('is what a table in that encoding is decoded with: a dash stays a dash', () => {
    const bytes = Uint8Array.from([0x46, 0xe4, 0x64, 0x65, 0x6e, 0x0a, 0x33, 0x96, 0x34]);
    expect(decodeBytes(bytes, 'a.csv')).toMatchObject({ encoding: 'windows-1252', text: 'Fäden\n3–4' });
  });
});
