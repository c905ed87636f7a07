const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Does what must not be left half done. While it lasts, Ctrl+C and its like are a wish (`stop`), which the work
 * heeds where it can; at all other times they end the program at once, as the system has it.
 */
export async function untilStopped<T>(work: (stop: AbortSignal) => Promise<T>): Promise<T> {
  const wish = new AbortController();
  const heed = (signal: NodeJS.Signals) => wish.abort(signal);
  for (const signal of SIGNALS) process.on(signal, heed);
  try {
    return await work(wish.signal);
  } finally {
    for (const signal of SIGNALS) process.off(signal, heed);
  }
}
