import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ANALYSES } from '../../src/analyses/register.ts';
import { ROOT, thrum } from './thrum.ts';

describe('thrum explain', () => {
  it('lists every kind of analysis with its question', async () => {
    const { status, out } = await thrum('explain');
    expect(status).toBe(0);
    expect(out.trimEnd().split('\n')).toHaveLength(ANALYSES.length);
    expect(out).toMatch(/^crosstab +Which kinds go with which\?$/m);
  });

  it.each(ANALYSES.map(({ kind }) => kind))(
    '%s: question, every option with its default, a page of methods',
    async (kind) => {
      const { status, out } = await thrum('explain', kind);
      expect(status).toBe(0);
      const analysis = ANALYSES.find((known) => known.kind === kind)!;
      expect(out.startsWith(`${kind}: ${analysis.question}\n`)).toBe(true);
      for (const name of Object.keys(analysis.options.shape))
        expect(out).toMatch(new RegExp(`^  ${name}  .*\\(`, 'm'));
      const page = /Method and sources: (\S+)/.exec(out)?.[1] ?? '';
      expect(existsSync(join(ROOT, page)), page).toBe(true);
    },
  );

  it('says the default as the schema has it', async () => {
    const { out } = await thrum('explain', 'crosstab');
    expect(out).toContain('confidence  Confidence (above 0.5 and below 1; 0.95 if left out)');
    expect(out).toContain('rows  Rows (must be given)');
    expect(out).toMatch(/resamples {2}Resamples \(from \d+ to \d+; 1999 if left out\)/);
  });

  it('says what shape a value has, and ends what it says of it', async () => {
    const { out } = await thrum('explain', 'contrast');
    expect(out).toContain('of  Attributes (a list; must be given)');
    expect(out).toContain('means  Means as well (true or false; false if left out)');
    expect(out).toContain('weights  Weights of the blocks (none if left out)');
    expect(out).toContain('1 where not named, 0 leaves it out.\n');
  });

  it.each(ANALYSES.map(({ kind }) => kind))('%s: names no end that nobody set', async (kind) => {
    expect((await thrum('explain', kind)).out).not.toContain(String(Number.MAX_SAFE_INTEGER));
  });

  it('says what a word of answers means', async () => {
    expect((await thrum('explain', 'medoid')).out).toBe(
      'medoid: the record of a group that is nearest to all its others\n',
    );
    expect((await thrum('explain', 'Limits')).out).toMatch(/^interval, limits: /);
  });

  it('prints the schema for machines', async () => {
    const { out } = await thrum('explain', 'crosstab', '--json');
    expect(JSON.parse(out)).toMatchObject({ type: 'object', properties: { rows: { type: 'string' } } });
  });

  it('refuses an unknown kind in one sentence, with 2', async () => {
    const { status, err } = await thrum('explain', 'crostab');
    expect(status).toBe(2);
    expect(err).toMatch(/^.*no analysis of kind "crostab".*crosstab.*\n$/);
  });
});
