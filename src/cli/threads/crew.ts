import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { entriesOf } from '../../study/load.ts';
import type { Study } from '../../study/schema.ts';
import type { Errand, Handed } from './errand.ts';

/** The further threads of a run. */
export interface Crew {
  /** Gives the errand to each of them; nothing is handed over by one that cannot be started or runs out of memory. */
  readonly send: (errand: Errand) => readonly Promise<Handed>[];
  /** Ends those that wait for an errand; none is sent on one after that. */
  readonly dismiss: () => void;
}

const NOTHING: Handed = { answers: new Map(), faults: [] };

/**
 * Starts the further threads of a run, one for each core and question beyond the first, so that they load while this
 * thread reads the sources.
 *
 * @param threads how many at most, this one included; all cores by default.
 */
export function startCrew(study: Study, threads = availableParallelism()): Crew {
  let workers = Array.from({ length: Math.min(threads, entriesOf(study).length) - 1 }, started);
  return {
    send: (errand) => workers.map((worker) => handedBy(worker, errand)),
    dismiss: () => {
      for (const worker of workers) worker.terminate().catch(() => undefined);
      workers = [];
    },
  };
}

function started(): Worker {
  const here = import.meta.url;
  const worker = new Worker(new URL(`./thread${here.slice(here.lastIndexOf('.'))}`, here));
  // One that waits for its errand keeps no program from ending; what becomes of it is asked when it has one.
  worker.unref();
  worker.on('error', () => undefined);
  return worker;
}

function handedBy(worker: Worker, errand: Errand): Promise<Handed> {
  // One that has ended already has no number any more.
  if (worker.threadId === -1) return Promise.resolve(NOTHING);
  return new Promise((settle) => {
    worker.once('message', settle);
    worker.once('error', () => settle(NOTHING));
    worker.once('exit', () => settle(NOTHING));
    worker.ref();
    worker.postMessage(errand);
  });
}
