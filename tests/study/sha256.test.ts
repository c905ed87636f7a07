import { describe, expect, it } from 'vitest';
import { sha256 } from '../../src/study/sha256.ts';

describe('SHA-256', () => {
  // FIPS 180-2, appendix B.1 and B.2, and the digest of the empty message (NIST CAVP short messages).
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('of "%s" is the published digest', (text, digest) => {
    expect(sha256(new TextEncoder().encode(text))).toBe(digest);
  });
});
