import { describe, expect, it } from 'vitest';
import { moduleBytes, startKernel } from '../../../src/numerics/wasm/assemble.ts';
import {
  f64x2,
  flat,
  get,
  i32,
  loopWhile,
  set,
  TYPE,
  unsigned,
} from '../../../src/numerics/wasm/instructions.ts';

describe('assembler', () => {
  it('writes unsigned integers as in the worked example of the LEB128 article (624485)', () => {
    expect(unsigned(624485)).toEqual([0xe5, 0x8e, 0x26]);
    expect([unsigned(0), unsigned(127), unsigned(128)]).toEqual([[0], [0x7f], [0x80, 0x01]]);
  });

  it('writes signed integers so that the engine reads the same number', () => {
    for (const value of [0, 1, 63, 64, -1, -64, -65, 8191, 8192, 2147483647, -2147483648]) {
      const body = flat(i32.const(0), i32.const(value), [0x36, 0x00, 0x00]);
      const kernel = startKernel({ parameters: 0, locals: [], body, memory: 8 });
      kernel?.run();
      expect(new Int32Array(kernel?.memory ?? new ArrayBuffer(4))[0]).toBe(value);
    }
  });

  it('runs a loop over pairs of doubles: |x - 1| * 2 of each', () => {
    const [end, at] = [0, 1];
    const sum = 2;
    const body = loopWhile(
      flat(
        ...[get(at), f64x2.load(0), f64x2.const(1), f64x2.sub, f64x2.abs, set(sum)],
        ...[get(at), get(sum), get(sum), f64x2.add, f64x2.store(0)],
        ...[get(at), i32.const(16), i32.add, set(at), get(at), get(end), i32.less],
      ),
    );
    const kernel = startKernel({ parameters: 1, locals: [TYPE.i32, TYPE.v128], body, memory: 64 });
    const numbers = new Float64Array(kernel?.memory ?? new ArrayBuffer(0), 0, 4);
    numbers.set([3, -2, 0.5, 7]);
    kernel?.run(32);
    expect([...numbers]).toEqual([4, 6, 1, 12]);
  });

  it('gives bytes that the engine accepts, and none where a type is wrong', () => {
    const good = { parameters: 0, locals: [], body: [], memory: 1 };
    expect(WebAssembly.validate(moduleBytes(good))).toBe(true);
    expect(startKernel({ ...good, body: i32.const(1) })).toBeNull();
  });
});
