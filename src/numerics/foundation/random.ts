/**
 * The one source of chance in Thrum: xoshiro128** 1.1 (Blackman & Vigna 2018, "Scrambled linear
 * pseudorandom number generators", https://prng.di.unimi.it/xoshiro128starstar.c), seeded through
 * splitmix32. Every stream is named, so the numbers that one step draws never depend on how many
 * another step drew, nor on how many workers share the job.
 */
export interface Random {
  /** Uniform on [0, 1) with 53 random bits. */
  next(): number;
  /** Uniform on the whole numbers 0 … count - 1. */
  integer(count: number): number;
  /** An independent stream that depends on this stream's seed and the name alone. */
  stream(name: string): Random;
}

/** @param seed any finite number; the whole-number part modulo 2^32 counts. */
export function createRandom(seed: number): Random {
  return fromSeed(seed >>> 0);
}

function fromSeed(seed: number): Random {
  const draw = xoshiro128(splitmix32(seed));
  const next = () => {
    const upper = draw() >>> 5;
    const lower = draw() >>> 6;
    return (upper * 2 ** 26 + lower) / 2 ** 53;
  };
  return {
    next,
    integer: (count) => Math.floor(next() * count),
    stream: (name) => fromSeed(fnv1a(name, seed)),
  };
}

/** The generator on its four 32-bit words of state; exported so that it can be checked against the reference. */
function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const product = Math.imul(b, 5);
    const result = Math.imul((product << 7) | (product >>> 25), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result;
  };
}

function splitmix32(seed: number): [number, number, number, number] {
  let state = seed;
  const draw = () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    return (mixed ^ (mixed >>> 15)) | 0;
  };
  return [draw(), draw(), draw(), draw()];
}

/** FNV-1a, 32 bits, over the UTF-16 code units of the name, started from the seed. */
function fnv1a(name: string, seed: number): number {
  let hash = 0x811c9dc5 ^ seed;
  for (let i = 0; i < name.length; i++) {
    const unit = name.charCodeAt(i);
    hash = Math.imul(hash ^ (unit & 0xff), 0x01000193);
    hash = Math.imul(hash ^ (unit >>> 8), 0x01000193);
  }
  return hash >>> 0;
}
