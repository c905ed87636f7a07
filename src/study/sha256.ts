import { sha256 as digest } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** SHA-256 (FIPS 180-4) of the bytes in lower-case hexadecimal, the same in Node and in a browser. */
export function sha256(bytes: Uint8Array): string {
  return bytesToHex(digest(bytes));
}
