import { type Code, flat, set, TYPE } from '../wasm/instructions.ts';

/** The value of the record from outside in one lane: its scaled middle, or the code of its kind. */
export interface OwnValue {
  readonly middle: number;
  readonly code: number;
}

type Values = Float64Array | Int32Array | Uint16Array;

/** Where everything lies in memory, which locals are in use, and what a run begins with. */
export interface Plan {
  readonly size: () => number;
  readonly results: number;
  readonly contents: readonly (readonly [offset: number, values: Values])[];
  readonly locals: readonly number[];
  readonly start: readonly Code[];
  /** Puts the values of a record from outside in the place of the first. */
  readonly own: ((memory: DataView, values: readonly OwnValue[]) => void)[];
  /** A local that stays 0. */
  readonly zero: number;
  readonly total: number;
  readonly weight: number;
  readonly local: (type: number) => number;
  /** Finds room for values that are written before the first run. */
  readonly place: (values: Values) => number;
  /** A local that holds what this code leaves on the stack when a run begins. */
  readonly begin: (type: number, code: Code) => number;
}

export function createPlan(n: number): Plan {
  let size = 0;
  const contents: (readonly [number, Values])[] = [];
  const locals: number[] = [TYPE.i32, TYPE.i32, TYPE.i32, TYPE.i32];
  const start: Code[] = [];
  const local = (type: number) => PARAMETERS + locals.push(type) - 1;
  const reserve = (bytes: number) => {
    const offset = size;
    // Two records more than there are, so that the last pair may reach beyond the end.
    size += Math.ceil((bytes + 16) / 8) * 8;
    return offset;
  };
  return {
    size: () => size,
    results: reserve(8 * n),
    own: [],
    contents,
    locals,
    start,
    zero: local(TYPE.v128),
    total: local(TYPE.v128),
    weight: local(TYPE.v128),
    local,
    place: (values) => {
      const offset = reserve(values.byteLength);
      contents.push([offset, values]);
      return offset;
    },
    begin: (type, code) => {
      const name = local(type);
      start.push(flat(code, set(name)));
      return name;
    },
  };
}

/** Parameters: the record itself and the end, as places of doubles in bytes. */
export const PARAMETERS = 2;
export const OWN = 0;
export const END = 1;
/** Places of the pair at hand: in doubles, in whole numbers of 32 bits and of 16, and in the results. */
export const AT = 2;
export const AT4 = 3;
export const AT2 = 4;
export const OUT = 5;
