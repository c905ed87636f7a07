import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ANALYSES } from '../../src/analyses/register.ts';

describe('every kind of analysis', () => {
  it.each(ANALYSES.map(({ kind }) => kind))(
    '%s is tried at every option, and its demo answer is kept',
    (kind) => {
      for (const file of ['options.test.ts', 'shown.test.ts'])
        expect(existsSync(new URL(`./${kind}/${file}`, import.meta.url)), file).toBe(true);
    },
  );
});
