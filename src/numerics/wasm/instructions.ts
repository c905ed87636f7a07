/**
 * The few WebAssembly instructions that the kernels use, each as the bytes that the standard gives it
 * (WebAssembly Core Specification 2.0, 5.4 Instructions). A piece of code is a list of bytes; pieces are joined
 * by `flat`. A load takes its address from the stack and adds the constant `offset`.
 */
export type Code = readonly number[];

/** Unsigned integers in groups of seven bits (LEB128; 5.2.2). */
export function unsigned(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  do {
    const more = rest > 127 ? 128 : 0;
    bytes.push((rest & 127) | more);
    rest >>>= 7;
  } while (rest > 0);
  return bytes;
}

/** Signed integers of 32 bits, in the same groups. */
function signed(value: number): number[] {
  const bytes: number[] = [];
  let rest = value;
  for (;;) {
    const group = rest & 127;
    rest >>= 7;
    if ((rest === 0 && (group & 64) === 0) || (rest === -1 && (group & 64) !== 0)) return [...bytes, group];
    bytes.push(group | 128);
  }
}

export const TYPE = { i32: 0x7f, v128: 0x7b } as const;

/** Code pieces one after the other. */
export const flat = (...pieces: readonly Code[]): Code => pieces.flat();

export const get = (local: number): Code => [0x20, ...unsigned(local)];
export const set = (local: number): Code => [0x21, ...unsigned(local)];
/** Repeats the body as long as it leaves something other than 0 on the stack. */
export const loopWhile = (body: Code): Code => [0x03, 0x40, ...body, 0x0d, 0x00, 0x0b];

/** Whole numbers of 32 bits. */
export const i32 = {
  const: (value: number): Code => [0x41, ...signed(value)],
  add: [0x6a] as Code,
  and: [0x71] as Code,
  shiftLeft: [0x74] as Code,
  shiftRight: [0x76] as Code,
  less: [0x49] as Code,
  load: (offset: number): Code => [0x28, 0x00, ...unsigned(offset)],
  load16: (offset: number): Code => [0x2f, 0x00, ...unsigned(offset)],
} as const;

const wide = (code: number): Code => [0xfd, ...unsigned(code)];

/** Two doubles at a time (fixed-width SIMD). */
export const f64x2 = {
  /** The same number twice. */
  const: (value: number): Code => {
    const bytes = [...new Uint8Array(Float64Array.of(value, value).buffer)];
    return [...wide(0x0c), ...bytes];
  },
  load: (offset: number): Code => [...wide(0x00), 0x00, ...unsigned(offset)],
  store: (offset: number): Code => [...wide(0x0b), 0x00, ...unsigned(offset)],
  /** One number into both places. */
  loadSplat: (offset: number): Code => [...wide(0x0a), 0x00, ...unsigned(offset)],
  /** One number into the first place, 0 into the second. */
  loadFirst: (offset: number): Code => [...wide(0x5d), 0x00, ...unsigned(offset)],
  /** One number into the second place of the pair on top of the stack; the address lies below it. */
  loadSecond: (offset: number): Code => [...wide(0x57), 0x00, ...unsigned(offset), 0x01],
  abs: wide(0xec),
  add: wide(0xf0),
  sub: wide(0xf1),
  mul: wide(0xf2),
  div: wide(0xf3),
  /** The second where it is greater than the first, else the first: also where the second is NaN. */
  greaterOf: wide(0xf7),
  /** All bits set where the first is greater, none elsewhere. */
  greater: wide(0x4a),
  and: wide(0x4e),
} as const;
