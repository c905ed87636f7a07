/** Stands where a number cannot be computed; `why` is shown to the reader as it is. */
export interface Unavailable {
  readonly why: string;
}

/** True when `value` is a reason instead of a number, a text, a yes/no or nothing. */
export function isUnavailable(value: unknown): value is Unavailable {
  return typeof value === 'object' && value !== null && 'why' in value;
}
