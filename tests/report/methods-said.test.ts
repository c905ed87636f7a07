import { describe, expect, it } from 'vitest';
import { ANALYSES } from '../../src/analyses/register.ts';
import { REFERENCES } from '../../src/report/methods/references.ts';
import { methodsSaid } from '../../src/report/methods/said.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';

const NEEDED: Readonly<Record<string, object>> = {
  summary: { of: ['structure'] },
  contrast: { of: ['density1'], by: 'site' },
  crosstab: { rows: 'site', columns: 'structure' },
  similarity: { of: 'structure' },
  typology: { rules: 'a.json' },
  standing: { site: 'Holm' },
};

const asked = (kind: string, more: object = {}) =>
  methodsSaid([{ kind, options: { ...NEEDED[kind], ...more } } as unknown as AnalysisResult]);

describe('the paragraph of methods', () => {
  it.each(ANALYSES.map(({ kind }) => kind))(
    'has a sentence for %s, whose every citation is in the references',
    (kind) => {
      const { sentences, cited } = asked(kind);
      expect(sentences).toHaveLength(1);
      expect(sentences[0]).not.toMatch(/[[\]]|undefined|NaN/);
      for (const name of cited) {
        const [author] = name.split(/[ ,]/);
        expect(REFERENCES[name], name).toContain(author);
        expect(REFERENCES[name], name).toContain(/\d{4}/.exec(name)?.[0]);
      }
    },
  );

  it('says what was asked, and the default where nothing was', () => {
    expect(asked('similarity').sentences[0]).toContain('Brainerd-Robinson');
    expect(asked('similarity').cited).toContain('Robinson 1951');
    const other = asked('similarity', { coefficient: 'jaccard', confidence: 0.9 });
    expect(other.sentences[0]).toMatch(/Jaccard index \(Jaccard 1901\).* 90 % limits/);
    expect(other.cited).not.toContain('Robinson 1951');
    expect(asked('summary', { limits: 'exact' }).cited).toContain('Clopper & Pearson 1934');
    expect(asked('grouping', { method: 'ward' }).sentences[0]).toContain(
      'a tree (ward linkage; Murtagh 1983)',
    );
  });

  it('says nothing of a question that could not be computed, and the same thing once', () => {
    const one = { kind: 'claims', options: {} } as unknown as AnalysisResult;
    expect(methodsSaid([one, one]).sentences).toHaveLength(1);
    expect(methodsSaid([{ ...one, why: 'no data' }]).sentences).toEqual([]);
  });
});
