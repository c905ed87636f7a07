/** Every change can be taken back; nothing is copied but the references. */
export interface Step<T> {
  readonly value: T;
  /** What the step did, in words, for "Undo: …". */
  readonly what: string;
}

export interface History<T> {
  readonly past: readonly Step<T>[];
  readonly present: Step<T>;
  readonly future: readonly Step<T>[];
}

const MOST_STEPS = 200;

export function startHistory<T>(value: T, what = 'start'): History<T> {
  return { past: [], present: { value, what }, future: [] };
}

export function commit<T>(history: History<T>, value: T, what: string): History<T> {
  if (value === history.present.value) return history;
  return {
    past: [...history.past, history.present].slice(-MOST_STEPS),
    present: { value, what },
    future: [],
  };
}

export function undo<T>(history: History<T>): History<T> {
  const previous = history.past.at(-1);
  if (previous === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: previous,
    future: [history.present, ...history.future],
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.present], present: next, future: rest };
}
