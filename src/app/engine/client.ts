import * as Comlink from 'comlink';
import type { Progress } from '../../study/prepare.ts';
import type { Engine } from './protocol.ts';

/** Said when the reader has stopped a run; nobody shows it as a fault. */
export class Stopped extends Error {
  override readonly name = 'Stopped';
}

export interface EngineClient {
  /** Sends the files that are not there yet and forgets those that are gone. */
  sync(files: ReadonlyMap<string, Uint8Array>): Promise<void>;
  ask<T>(question: (engine: Comlink.Remote<Engine>) => Promise<T>): Promise<T>;
  /** Ends whatever runs; the worker starts afresh with the next question. */
  stop(): void;
}

/** A worker that computes; at most one, started when first asked and again after a stop. */
export function createEngineClient(): EngineClient {
  let worker: Worker | null = null;
  let remote: Comlink.Remote<Engine> | null = null;
  let sent: ReadonlyMap<string, Uint8Array> = new Map();
  let wanted: ReadonlyMap<string, Uint8Array> = new Map();
  const refusals = new Set<(error: Error) => void>();

  const start = (): Comlink.Remote<Engine> => {
    if (remote !== null) return remote;
    worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    remote = Comlink.wrap<Engine>(worker);
    return remote;
  };

  const push = async () => {
    const engine = start();
    const files = wanted;
    const changed = new Map([...files].filter(([name, bytes]) => sent.get(name) !== bytes));
    const gone = [...sent.keys()].filter((name) => !files.has(name));
    if (changed.size === 0 && gone.length === 0) return;
    sent = files;
    await engine.keepFiles(changed, gone);
  };

  return {
    sync: async (files) => {
      wanted = files;
      await push();
    },
    ask: async (question) => {
      await push();
      const engine = start();
      return await new Promise((resolve, reject) => {
        refusals.add(reject);
        question(engine)
          .then(resolve, (error: unknown) => reject(error))
          .finally(() => refusals.delete(reject));
      });
    },
    stop: () => {
      worker?.terminate();
      worker = null;
      remote = null;
      sent = new Map();
      for (const refuse of refusals) refuse(new Stopped('stopped'));
      refusals.clear();
    },
  };
}

/** Progress reports cross the worker's border as a proxy. */
export function reporting(report: Progress): Progress {
  return Comlink.proxy(report);
}

/** The sentence of a fault, without what the platform adds. */
export function faultText(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
