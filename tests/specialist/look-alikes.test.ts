import { describe, expect, it } from 'vitest';
import { LOOK_ALIKES } from '../../src/attributes/look-alikes.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { lookAlikeInWords } from '../../src/sources/quality/look-alikes.ts';
import { reportQuality } from '../../src/sources/quality/quality.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';
import { read } from '../sources/support.ts';

const register = defaultRegister();
const met = (csv: string) => reportQuality(read(csv).table, register).lookAlikes;
const HEAD = 'Find no.,Structure\n';

// Mazăre 2011, Marisia 31 (linking and sprang); Archaeol. Anthropol. Sci. 11 (2019) 2329 (splicing); else common practice.
describe('terms that another may hide behind', () => {
  it.each<[id: string, csv: string, counts: readonly [number, number]]>([
    ['linking-sprang', `${HEAD}A,sprang\nB,linking\nC,interlinked sprang\n`, [1, 2]],
    ['linking-sprang', `${HEAD}A,Sprang\n`, [0, 1]],
    ['cross-knit-knitting', `${HEAD}A,cross-knit looping\nB,tabby\n`, [1, 0]],
    ['looping-purl', `${HEAD}A,knitting\n`, [0, 1]],
    ['spliced-spun', 'Find no.,Structure,Fibre prep\nA,tabby,spliced\nB,tabby,draft-spun\n', [1, 1]],
    ['basket-twill', `${HEAD}A,2/2 twill\nB,basket weave\n`, [1, 1]],
    ['braid-tabby', `${HEAD}A,braid\n`, [1, 0]],
    ['repp-twining', 'Find no.,Structure,Preservation\nA,repp,mineralised on iron\nB,repp,charred\n', [1, 0]],
  ])('%s', (id, csv, counts) => {
    const found = met(csv).find((one) => one.of.id === id);
    expect(found?.counts).toEqual(counts);
  });

  it('what is named plainly raises none', () => {
    expect(met(`${HEAD}A,coiled\nB,2/2 twill\nC,twining\nD,tabby\n`)).toEqual([]);
    expect(met('Find no.,Structure,Preservation\nA,twining,desiccated\n')).toEqual([]);
  });

  it('each pair says what tells it apart, and by whom', () => {
    for (const { tells, source, sides } of LOOK_ALIKES) {
      expect([tells, source]).not.toContain('');
      for (const { attribute, terms } of sides) {
        const vocabulary = register.vocabularies.get(register.attributes.get(attribute)?.vocabulary ?? '');
        const ids = vocabulary?.terms.map(({ id }) => id);
        for (const term of terms) expect(ids).toContain(term);
      }
    }
  });

  it('a study in which they carry a verdict says so among its cautions, with numbers', () => {
    const csv = 'Find no.,Site,Structure\nA,Holm,sprang\nB,Holm,linking\nC,Ness,sprang\nD,Ness,tabby\n';
    const files = new Map([['a.csv', new TextEncoder().encode(csv)]]);
    const study = {
      title: 't',
      sources: [{ file: 'a.csv' }],
      witness: { is: 'row' },
      analyses: [{ id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure' }],
    };
    const { cautions } = analyse(prepareStudy(checkStudy(study, 'study.json'), files), files).study;
    const said = cautions.find((caution) => caution.startsWith('Look-alikes'));
    expect(said).toContain('Linking and sprang (1 and 2) are told apart by the meeting line');
    expect(said).toContain('Mazăre 2011');
    expect(lookAlikeInWords({ of: LOOK_ALIKES[0]!, counts: [1, 2] })).toMatch(/^Linking and sprang/);
  });

  describe('where an answer leans on telling them apart', () => {
    const answers = (holm: readonly string[], ness: readonly string[]) => {
      const rows = [holm, ness].flatMap((all, place) =>
        Array.from(
          { length: 12 },
          (_, i) => `${place}${i},${place === 0 ? 'Holm' : 'Ness'},${all[i % all.length]}`,
        ),
      );
      const files = new Map([
        ['a.csv', new TextEncoder().encode(['Find no.,Site,Structure', ...rows].join('\n'))],
      ]);
      const study = {
        title: 't',
        sources: [{ file: 'a.csv' }],
        witness: { is: 'row' },
        analyses: [
          { id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure', relabellings: 499 },
          {
            id: 'alike',
            kind: 'similarity',
            assemblages: 'site',
            of: 'structure',
            resamples: 199,
            relabellings: 499,
          },
        ],
      };
      return analyse(prepareStudy(checkStudy(study, 'study.json'), files), files).analyses;
    };
    /** Twelve finds a place, with counts, dates and coordinates. */
    const answerTo = (question: object, places: readonly (readonly [string, readonly string[]])[]) => {
      const rows = places.flatMap(([site, all], place) =>
        Array.from(
          { length: 12 },
          (_, i) =>
            `${site}${i},${site},${all[i % all.length]},${6 + ((i * 5 + place * 3) % 9)},${i < 6 ? '400 BC' : '200 BC'},4${place},1${place}`,
        ),
      );
      const head = 'Find no.,Site,Structure,warp/cm,date,latitude,longitude';
      const files = new Map([['a.csv', new TextEncoder().encode([head, ...rows].join('\n'))]]);
      const study = {
        title: 't',
        sources: [{ file: 'a.csv' }],
        witness: { is: 'row' },
        analyses: [{ id: 'asked', ...question }],
      };
      return analyse(prepareStudy(checkStudy(study, 'study.json'), files), files).analyses.asked!;
    };
    const asked = (question: object, holm: readonly string[], ness: readonly string[]) =>
      answerTo(question, [
        ['Holm', holm],
        ['Ness', ness],
      ]).words.unless;
    const turnOf = (unless: readonly { what: string; size: string; overturns: boolean }[]) =>
      unless.find(({ what }) => what.includes('which a piece may show alike'));

    it('the pair is named among what would overturn it, and the verdict hangs on it', () => {
      const { table } = answers(['linking', 'linking', 'tabby'], ['sprang', 'sprang', 'tabby']);
      expect(turnOf(table!.words.unless)).toMatchObject({ overturns: true });
      expect(turnOf(table!.words.unless)!.what).toMatch(/linked and sprang|sprang and linked/);
      expect(table!.words.answer).toMatch(
        /only as long as (?:linked and sprang|sprang and linked) are told apart/,
      );
    });

    it('where others carry it, it is said that it stays, and how strongly', () => {
      const { table } = answers(
        ['linking', 'tabby', 'tabby', 'tabby'],
        ['sprang', 'coiled', 'coiled', 'coiled'],
      );
      expect(turnOf(table!.words.unless)).toMatchObject({ overturns: false });
      expect(turnOf(table!.words.unless)!.size).toMatch(/^still told apart \(p/);
    });

    it('the likeness of assemblages says what it would be', () => {
      const { alike } = answers(['linking', 'linking', 'tabby'], ['sprang', 'sprang', 'tabby']);
      expect(turnOf(alike!.words.unless)?.size).toContain('most alike');
    });

    it.each([
      ['standing', { kind: 'standing', among: 'site', site: 'Holm', of: 'structure', resamples: 199 }],
      ['contrast', { kind: 'contrast', of: ['density1'], by: 'structure' }],
      ['chronology', { kind: 'chronology', of: 'structure', places: 'site', draws: 5, relabellings: 99 }],
      ['map', { kind: 'map', of: 'structure', deals: 199 }],
      ['placement', { kind: 'placement', find: { structure: 'sprang', density1: '9' }, labels: ['site'] }],
      ['grouping', { kind: 'grouping', resamples: 20 }],
    ])('%s is asked again with both as one, and says what it then is', (_, question) => {
      const turn = turnOf(asked(question, ['linking', 'sprang', 'tabby'], ['sprang', 'linking', 'coiled']));
      expect(turn?.what).toMatch(/^Linking and sprang \(\d+ finds and \d+\), which a piece may show alike/);
      expect(turn?.size).not.toBe('');
    });

    it('a verdict that turns with them says that it hangs on telling them apart', () => {
      const { words } = answerTo(
        { kind: 'standing', among: 'site', site: 'Holm', of: 'structure', resamples: 199 },
        [
          ['Holm', ['linking']],
          ['Ness', ['sprang']],
          ['Ford', ['linking', 'tabby', 'tabby', 'tabby']],
        ],
      );
      expect(turnOf(words.unless)).toMatchObject({ overturns: true });
      expect(`${words.answer} ${words.because.join(' ')}`).toMatch(/look-alikes|linking and sprang/i);
    });

    it('and is not where either is too rare to carry a verdict', () => {
      const question = { kind: 'contrast', of: ['density1'], by: 'structure' };
      const rare = ['sprang', ...Array.from({ length: 11 }, () => 'linking')];
      expect(
        turnOf(
          asked(
            question,
            rare,
            Array.from({ length: 12 }, () => 'tabby'),
          ),
        ),
      ).toBeUndefined();
    });

    it('and nothing is said where only one of them is counted', () => {
      const { table, alike } = answers(['sprang', 'tabby'], ['sprang', 'coiled']);
      expect(turnOf(table!.words.unless)).toBeUndefined();
      expect(turnOf(alike!.words.unless)).toBeUndefined();
    });
  });
});
