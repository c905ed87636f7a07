/** The demo's two hypotheses, of which one was planted and one is false, and a circular one: datasets/demo/README.md. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { TableCell } from '../../../src/analyses/contract.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import type { AnalysisResult } from '../../../src/study/results/results.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { TRUE_ITEMS } from '../../demo/truth.ts';
import { demoAnswer, demoAsked } from '../demo-answer.ts';

const results = new Map<string, AnalysisResult>();
beforeAll(() => {
  for (const id of ['twiningTypes', 'tabbyTypes']) results.set(id, demoAnswer(id));
}, 120_000);

const lines = (result: AnalysisResult, table: string): Record<string, TableCell>[] => {
  const found = result.tables[table]!;
  return found.rows.map((row) => Object.fromEntries(found.columns.map(({ id }, i) => [id, row[i]!])));
};

describe('the split that was planted', () => {
  const twining = () => results.get('twiningTypes')!;

  it('is supported', () => {
    expect(twining().words.answer).toMatch(
      /^Supported: readings of row spacing are divided where the rules cut/,
    );
  });

  it('lies between 6 and 10 mm, where nothing was planted, with nothing between cut and threshold', () => {
    const [split] = lines(twining(), 'splits');
    for (const id of ['threshold', 'low', 'high', 'valley']) {
      expect(split[id]).toBeGreaterThan(6);
      expect(split[id]).toBeLessThan(10);
    }
    expect(split.between).toBe('0');
    // What is said is the stretch without readings, about the planted gap of 6 to 10 mm.
    expect(split.gapFrom).toBeLessThan(6);
    expect(split.gapTo).toBeGreaterThan(10);
    expect(twining().words.because.join(' ')).toMatch(
      /no reading lies between 4\.\d+ and 16\.\d mm, so that any cut there parts the same finds/,
    );
    expect(twining().words.because.join(' ')).not.toContain('cross at');
  });

  it('gives every item that it can judge the kind that was planted', () => {
    const kindOf = new Map(TRUE_ITEMS.map(({ item, kind }) => [item, kind]));
    const typed = lines(twining(), 'records').filter(({ type }) => String(type).startsWith('Rows'));
    expect(typed.length).toBeGreaterThan(100);
    for (const { id, type } of typed)
      expect(kindOf.get(String(id))).toBe(
        type === 'Rows closer than 8 mm' ? 'close twining' : 'open twining',
      );
  });

  it('is not tested on what defines it, nor on the structure that names the spacing', () => {
    const note = twining().tables.apart!.note!;
    expect(note.startsWith('Compared on')).toBe(true);
    const compared = note.slice(0, note.indexOf('Left out'));
    for (const word of ['Row spacing', 'Density of system 2', 'Structure'])
      expect(compared).not.toContain(word);
  });
});

describe('the hypothesis that is false', () => {
  const tabby = () => results.get('tabbyTypes')!;

  it('is not supported: the types are told apart in nothing else', () => {
    expect(tabby().words.answer).toBe(
      'Not supported: the types are not told apart in anything but what defines them.',
    );
  });

  it('says what could have been seen, and that the types do not pay for themselves', () => {
    const [near] = tabby().words.unless;
    expect(near).toEqual({
      what: 'if there were more readings of density of system 1',
      size: 'with 48 readings heaps of 15 and 85 % can be missed even 8 standard deviations apart',
      overturns: false,
    });
    const [pay] = lines(tabby(), 'apart').filter(
      ({ question }) => question === 'Do they pay for themselves?',
    );
    expect(pay.statistic).toBeLessThan(0);
  });
});

describe('a claim tested on its own measurement', () => {
  it('is called circular, whichever of the two units is asked for', () => {
    for (const of of [['density2', 'rowSpacing'], ['spacingClass']]) {
      const { answer, next } = demoAsked('twiningTypes', { of, relabellings: 99, resamples: 19 }).words;
      expect(answer).toMatch(/^Cannot be told: .*circular/);
      expect(answer).not.toContain('upported');
      expect(next?.join(' ')).toContain('neither define the types');
    }
  }, 60_000);

  it('keeps the free attributes and names the one used twice', () => {
    const { words, tables } = demoAsked('twiningTypes', {
      of: ['rowSpacing', 'fibre'],
      relabellings: 99,
      resamples: 19,
    });
    expect(words.because.join(' ')).toContain(
      '(row spacing left out: it would define the types and test them)',
    );
    expect(tables.apart!.note).toContain('Compared on Fibre');
  }, 60_000);
});

describe('the map and the stability of the types', () => {
  it('shows every record that was compared, ringed where another type is predicted', () => {
    for (const id of ['twiningTypes', 'tabbyTypes']) {
      const result = results.get(id)!;
      const map = lines(result, 'map');
      const strays = map.filter(({ type, predicted }) => type !== predicted).map(({ id: record }) => record);
      const confusion = lines(result, 'confusion');
      const counted = confusion.flatMap((line) =>
        Object.values(line).filter((cell) => typeof cell === 'number'),
      );
      expect(map.length).toBe(counted.reduce<number>((sum, cell) => sum + Number(cell), 0));
      const traces = result.figures.map!.data as readonly { name: string; text: readonly string[] }[];
      const ring = traces.find(({ name }) => name.startsWith('predicted'));
      expect([...(ring?.text ?? [])].sort()).toEqual([...strays].sort());
    }
  });

  it('draws what was planted apart and what was not together', () => {
    // Centres of the two types on the first axis, in standard deviations within them.
    const apart = (id: string) => {
      const map = lines(results.get(id)!, 'map');
      const [a, b] = [...new Set(map.map(({ type }) => type))].map((type) =>
        map.filter((line) => line.type === type).map(({ axis1 }) => Number(axis1)),
      );
      const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length;
      const within = [...a!.map((x) => x - mean(a!)), ...b!.map((x) => x - mean(b!))];
      return (
        Math.abs(mean(a!) - mean(b!)) / Math.sqrt(within.reduce((sum, x) => sum + x * x, 0) / within.length)
      );
    };
    expect(apart('twiningTypes')).toBeGreaterThan(3);
    expect(apart('tabbyTypes')).toBeLessThan(1);
  });

  it('finds the planted types again and not the others (0.75 and 0.6: Hennig 2007)', () => {
    const stable = (id: string) => lines(results.get(id)!, 'stability').map(({ jaccard }) => Number(jaccard));
    expect(Math.min(...stable('twiningTypes'))).toBeGreaterThan(0.75);
    expect(Math.min(...stable('tabbyTypes'))).toBeLessThan(0.6);
    expect(Object.keys(results.get('twiningTypes')!.figures)).toContain('stability');
  });
});

describe('every run', () => {
  it('gives the same answer twice', () => {
    expect(JSON.stringify(demoAsked('tabbyTypes'))).toBe(JSON.stringify(results.get('tabbyTypes')));
  }, 60_000);

  it('accounts for every record: types, none and undecided add up', () => {
    for (const result of results.values()) {
      const coverage = lines(result, 'coverage');
      const sum = coverage.reduce((total, { n }) => total + Number(n), 0);
      expect(sum).toBe(coverage[0].of);
      expect(sum).toBe(result.tables.records!.rows.length);
      const items = result.n.items + result.n.setAside.reduce((total, { fragments }) => total + fragments, 0);
      expect(items).toBe(prepareDemo().prepared.records.rows);
    }
  });

  it('sets rivals side by side on the same records and attributes', () => {
    const result = demoAsked('twiningTypes', {
      rivals: ['tabby.types.json'],
      relabellings: 99,
      resamples: 19,
    });
    const rivals = lines(result, 'rivals');
    expect(rivals.map(({ typology }) => typology)).toEqual([
      'Open and close twining are two kinds, split near 8 mm',
      'Fine and coarse tabby are two kinds, split at 10 threads per cm',
    ]);
    expect(Number(rivals[0].saved)).toBeGreaterThan(Number(rivals[1].saved));
  }, 60_000);

  it('never has a number that is none, in tables or figures', () => {
    const walk = (value: unknown): void => {
      if (typeof value === 'number') expect(Number.isNaN(value)).toBe(false);
      else if (typeof value === 'object' && value !== null) Object.values(value).forEach(walk);
    };
    for (const { tables, figures } of results.values()) walk([tables, figures]);
  });

  it('says nothing that the numbers do not: no proof, no certainty', () => {
    for (const { words } of results.values())
      expect([words.answer, ...words.because, ...words.unless.map(printTurn)].join(' ')).not.toMatch(
        /\b(prove[sd]?|certain(ly)?|clearly|confirm)/i,
      );
  });
});
