import { beforeAll, describe, expect, it } from 'vitest';
import { committed, executed, figuresOf, hasJupyter, NOTEBOOKS, type Notebook, textOf } from './jupyter.ts';

it('there is a notebook for each of the three ways of working', () => {
  expect(NOTEBOOKS).toEqual([
    'check-printed-figures.ipynb',
    'position-a-site.ipynb',
    'test-a-typology.ipynb',
  ]);
});

describe.each(NOTEBOOKS)('%s as committed', (name) => {
  it('carries no outputs, so that a change shows what was changed by hand', () => {
    const code = committed(name).cells.filter(({ cell_type }) => cell_type === 'code');
    expect(code.length).toBeGreaterThan(4);
    expect(code.flatMap(({ outputs }) => outputs ?? [])).toEqual([]);
  });
});

/** Milliseconds; a busy machine takes its time to start a kernel. */
const PATIENCE = 300_000;

describe.skipIf(!hasJupyter)("in Jupyter (needs Debian's jupyter-nbconvert)", () => {
  describe('position-a-site.ipynb', () => {
    let run: Notebook;
    beforeAll(() => {
      run = executed('position-a-site.ipynb');
    }, PATIENCE);

    it('shows its figures as plotly figures', () => {
      expect(figuresOf(run).length).toBeGreaterThanOrEqual(3);
      for (const { data } of figuresOf(run)) expect(data.length).toBeGreaterThan(0);
    });

    it('says how many fragments and items it stands on', () => {
      expect(textOf(run, 'reading')).toContain('396 fragments of 258 items');
    });

    it('finds the hold more like the mixture that was planted than like any one region', () => {
      const likeness = [...textOf(run, 'like').matchAll(/^(.+?)(?: \(n = \d+\))?: (\d+) \(95 % of draws/gm)];
      const values = Object.fromEntries(likeness.map(([, name, value]) => [name!, Number(value)]));
      const { 'Shelf and Strand in equal parts': mixture, ...regions } = values;
      expect(Object.keys(regions)).toEqual(['High Shelf', 'Strand without the wreck', 'Inner Range']);
      for (const [region, value] of Object.entries(regions)) expect(value, region).toBeLessThan(mixture!);
    });
  });

  describe('test-a-typology.ipynb', () => {
    let run: Notebook;
    beforeAll(() => {
      run = executed('test-a-typology.ipynb');
    }, PATIENCE);

    it('finds the planted split, and cuts through a heap unsupported', () => {
      expect(textOf(run, 'claim')).toMatch(/^Supported: readings of row spacing are divided/m);
      const cuts = [...textOf(run, 'cut').matchAll(/^\| (\d+) \|.*\| ([^|]+) \|$/gm)];
      expect(cuts.map(([, limit, verdict]) => [Number(limit), verdict!.startsWith('Supported')])).toEqual([
        [4, false],
        [8, true],
        [12, true],
        [25, false],
      ]);
    });

    it('finds it without any one of the sites, and finds none where none was planted', () => {
      expect(textOf(run, 'without').match(/\| Supported: /g)).toHaveLength(5);
      expect(textOf(run, 'tabby')).toMatch(
        /^Not supported: the types are not told apart in anything but what defines them/m,
      );
    });
  });

  describe('check-printed-figures.ipynb', () => {
    let run: Notebook;
    beforeAll(() => {
      run = executed('check-printed-figures.ipynb');
    }, PATIENCE);

    it('finds the nine planted errors, and says what would explain those that the data can explain', () => {
      const lines = [...textOf(run, 'verdicts').matchAll(/^\| (c\d+) \|.*$/gm)];
      const wrong = lines.filter(([line]) => /\| (differs|cannot be) \|/.test(line));
      expect(wrong.map(([, id]) => id)).toEqual([
        'c9',
        'c13',
        'c18',
        'c25',
        'c27',
        'c31',
        'c32',
        'c33',
        'c40',
      ]);
      expect(textOf(run, 'verdicts')).toContain('a unit slip: ten times too small');
      expect(textOf(run, 'working')).toContain('69/20 = 3.4500');
    });
  });
});
