/** Numbers of arrays that the host has laid into memory, each array named by the byte at which it begins. */

// @ts-expect-error: the compiler knows decorators of functions
@inline
export function f64At(array: usize, place: i32): f64 {
  return load<f64>(array + ((<usize>place) << 3));
}

// @ts-expect-error: the compiler knows decorators of functions
@inline
export function setF64(array: usize, place: i32, value: f64): void {
  store<f64>(array + ((<usize>place) << 3), value);
}

// @ts-expect-error: the compiler knows decorators of functions
@inline
export function i32At(array: usize, place: i32): i32 {
  return load<i32>(array + ((<usize>place) << 2));
}

// @ts-expect-error: the compiler knows decorators of functions
@inline
export function setI32(array: usize, place: i32, value: i32): void {
  store<i32>(array + ((<usize>place) << 2), value);
}
