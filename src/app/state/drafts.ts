import { useCallback, useSyncExternalStore } from 'react';

/**
 * What is typed and not yet taken over by the study, by the place where it is typed. Kept from the first key
 * on, so that a reload or a closed window loses nothing that was in sight.
 */
export interface Drafts {
  readonly get: (place: string) => unknown;
  /** `undefined` takes the draft away. */
  readonly set: (place: string, value: unknown) => void;
  readonly all: () => Readonly<Record<string, unknown>>;
  readonly replace: (all: Readonly<Record<string, unknown>>) => void;
  readonly subscribe: (told: () => void) => () => void;
}

export function createDrafts(start: Readonly<Record<string, unknown>> = {}): Drafts {
  let values = new Map(Object.entries(start));
  const listeners = new Set<() => void>();
  const tell = () => {
    for (const told of listeners) told();
  };
  return {
    get: (place) => values.get(place),
    set: (place, value) => {
      if (values.get(place) === value) return;
      if (value === undefined) values.delete(place);
      else values.set(place, value);
      tell();
    },
    all: () => Object.fromEntries(values),
    replace: (all) => {
      values = new Map(Object.entries(all));
      tell();
    },
    subscribe: (told) => {
      listeners.add(told);
      return () => listeners.delete(told);
    },
  };
}

/** As useState, for what is to outlive the screen, a reload and the browser. `undefined` stands for no draft. */
export function useDraftIn<T>(
  drafts: Drafts,
  place: string,
): readonly [T | undefined, (value: T | undefined) => void] {
  const value = useSyncExternalStore(drafts.subscribe, () => drafts.get(place)) as T | undefined;
  const set = useCallback((next: T | undefined) => drafts.set(place, next), [drafts, place]);
  return [value, set];
}
