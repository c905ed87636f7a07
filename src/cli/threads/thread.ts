import { parentPort } from 'node:worker_threads';
import { answersOf } from '../../study/run-study.ts';
import { countedBy, type Errand, type Handed } from './errand.ts';

/** What one further thread of a run does: takes analyses from the common count until none is left, and hands them over. */
parentPort?.once('message', ({ prepared, files, count }: Errand) => {
  const faults: Handed['faults'] = [];
  const answers = answersOf(prepared, files, {
    claim: countedBy(count, prepared),
    onFault: (id, fault) => faults.push([id, fault]),
  });
  parentPort?.postMessage({ answers, faults } satisfies Handed);
});
