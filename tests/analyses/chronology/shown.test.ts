import { expect, it } from 'vitest';
import { demoAnswer } from '../demo-answer.ts';
import { shown } from '../shown.ts';

/** Every table and trace of the demo's answer, read and kept: what moves them shows itself. */
it.each(['time'])('%s shows the tables and traces that were read', async (id) => {
  await expect(shown(demoAnswer(id))).toMatchFileSnapshot(`./snapshots/${id}-shown.txt`);
});
