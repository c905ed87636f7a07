import { readFileSync } from 'node:fs';

/** What every file of reference values says of itself. */
export interface ReferenceHead {
  /** The library or program that computed the values. */
  readonly tool: string;
  readonly version: string;
  /** How to make the file again. */
  readonly command: string;
  readonly date: string;
}

/** Reads `tests/references/<name>.json`, made by the script of the same name in `scripts/`. */
export function reference<T>(name: string): ReferenceHead & T {
  return JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), 'utf8')) as ReferenceHead & T;
}
