import { type Code, unsigned } from './instructions.ts';

/** One function over one memory. */
export interface KernelSource {
  /** Parameters, all whole numbers of 32 bits. */
  readonly parameters: number;
  /** Types of the locals that follow the parameters. */
  readonly locals: readonly number[];
  readonly body: Code;
  /** Bytes of memory that it needs. */
  readonly memory: number;
}

export interface Kernel {
  readonly run: (...parameters: number[]) => void;
  readonly memory: ArrayBuffer;
}

const PAGE = 65_536;

/**
 * Puts the parts of a module together (WebAssembly Core Specification 2.0, 5.5 Modules) and starts it: no
 * compiler, no file, no fetch. Null where the engine has no WebAssembly or no SIMD; callers then take
 * their plain loops, which must give the same numbers.
 */
export function startKernel(source: KernelSource): Kernel | null {
  if (typeof WebAssembly === 'undefined') return null;
  const bytes = moduleBytes(source);
  if (!WebAssembly.validate(bytes)) return null;
  const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytes));
  return {
    run: exports.run as Kernel['run'],
    memory: (exports.memory as WebAssembly.Memory).buffer,
  };
}

/** The bytes of the module: a memory and a function, exported as `memory` and `run`. */
export function moduleBytes({ parameters, locals, body, memory }: KernelSource): Uint8Array<ArrayBuffer> {
  const function0 = [...list(locals.map((type) => [1, type])), ...body, 0x0b];
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, list([[0x60, ...list(Array.from({ length: parameters }, () => [0x7f])), 0x00]])),
    ...section(3, list([[0x00]])),
    ...section(5, list([[0x00, ...unsigned(Math.ceil(memory / PAGE))]])),
    ...section(
      7,
      list([
        [...name('memory'), 0x02, 0x00],
        [...name('run'), 0x00, 0x00],
      ]),
    ),
    ...section(10, list([[...unsigned(function0.length), ...function0]])),
  ]);
}

const list = (items: readonly Code[]): number[] => [...unsigned(items.length), ...items.flat()];
const section = (id: number, content: Code): number[] => [id, ...unsigned(content.length), ...content];
const name = (text: string): number[] => list([...text].map((letter) => [letter.charCodeAt(0)]));
