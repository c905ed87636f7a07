import { describe, expect, it } from 'vitest';
import type { AnalysisInput, ResultTable } from '../../../src/analyses/contract.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { summary } from '../../../src/analyses/summary/index.ts';
import type { AttributeDefinition } from '../../../src/attributes/definition.ts';
import { CELL_STATES, type CellState } from '../../../src/cells/reading.ts';
import { collapseItems } from '../../../src/fragments/items/items.ts';
import type { Column, FragmentTable } from '../../../src/fragments/table.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { expectClose } from '../../numerics/close.ts';
import { reference } from '../../references/reference.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

type Cell = number | readonly [low: number, high: number] | CellState;

const spacing: AttributeDefinition = {
  id: 'spacing',
  label: 'Spacing',
  block: 'spacing',
  scale: 'ratio',
  unit: 'mm',
  source: 'made up for this test',
};
const site: AttributeDefinition = {
  ...spacing,
  id: 'site',
  label: 'Site',
  block: 'context',
  scale: 'nominal',
};
const pile: AttributeDefinition = {
  ...spacing,
  id: 'pile',
  label: 'Pile',
  block: 'structure',
  scale: 'presence',
};

function numbers(cells: readonly Cell[]): Column {
  const ends = cells.map((cell) => (typeof cell === 'string' ? [Number.NaN, Number.NaN] : [cell].flat()));
  return {
    kind: 'numeric',
    attribute: spacing,
    low: Float64Array.from(ends, ([low]) => low),
    high: Float64Array.from(ends, ([low, high]) => high ?? low),
    state: Uint8Array.from(cells, (cell) => (typeof cell === 'string' ? CELL_STATES.indexOf(cell) : 0)),
    raw: cells.map(String),
    readings: new Map(),
    step: new Float64Array(cells.length).fill(Number.NaN),
  };
}

function kinds(attribute: AttributeDefinition, cells: readonly (string | null)[]): Column {
  const levels = [...new Set(cells.filter((cell) => cell !== null && cell !== 'absent'))] as string[];
  return {
    kind: 'term',
    attribute,
    levels,
    codes: Int32Array.from(cells, (cell) => (cell === null ? -1 : levels.indexOf(cell))),
    state: Uint8Array.from(cells, (cell) =>
      CELL_STATES.indexOf(cell === null ? 'not-observed' : cell === 'absent' ? 'absent' : 'measured'),
    ),
    certainty: new Uint8Array(cells.length),
    raw: cells.map((cell) => cell ?? ''),
  };
}

function inputOf(columns: readonly Column[], items?: readonly string[]): AnalysisInput {
  const rows = columns[0].raw.length;
  const id = Array.from({ length: rows }, (_, row) => `F${row + 1}`);
  const fragments: FragmentTable = {
    rows,
    id,
    item: items ?? id,
    assemblage: id.map(() => ''),
    origin: id.map((_, row) => ({ source: 0, row: row + 2 })),
    sources: ['made.csv'],
    columns: new Map(columns.map((column) => [column.attribute.id, column])),
  };
  const register = {
    attributes: new Map(columns.map(({ attribute }) => [attribute.id, attribute])),
    vocabularies: new Map(),
  };
  const unit = items === undefined ? 'fragment' : 'item';
  const records = unit === 'item' ? collapseItems(fragments, register).table : fragments;
  return { fragments, records, unit, register, random: createRandom(1) };
}

/** Rows of a result table as records by column id. */
function recordsOf(table: ResultTable | undefined) {
  return (table?.rows ?? []).map((row) =>
    Object.fromEntries(row.map((cell, place) => [table?.columns[place].id ?? '', cell])),
  );
}

const ask = (input: AnalysisInput, options: object) => {
  const found = summary.compute(input, summary.options.parse(options));
  return {
    found,
    tables: summary.tables(found),
    words: summary.words(found),
    figures: summary.figures(found),
  };
};

interface Sample {
  values: number[];
  mean: number[];
  sd: number[];
  skewness: number[];
  quartiles: number[];
  mad: number[];
}
const { samples, tool, version } = reference<{ samples: Record<string, Sample> }>('moments');

describe(`numbers are described as ${tool} (${version}) does, within 1e-9`, () => {
  it.each(Object.entries(samples))('sample "%s"', (_, sample) => {
    const { tables } = ask(inputOf([numbers(sample.values)]), { of: ['spacing'] });
    const [row] = recordsOf(tables.numbers);
    expect(row.n).toBe(sample.values.length);
    expectClose(row.mean as number, sample.mean[0]);
    expectClose(row.sd as number, sample.sd[0]);
    expectClose(row.skewness as number, sample.skewness[0]);
    expectClose(row.q1 as number, sample.quartiles[0]);
    expectClose(row.median as number, sample.quartiles[1]);
    expectClose(row.q3 as number, sample.quartiles[2]);
    expectClose(row.mad as number, sample.mad[0]);
    expect([row.medianLow, row.medianHigh]).toEqual([row.median, row.median]);
  });
});

describe('gaps', () => {
  it('are counted by their reason and enter no statistic', () => {
    const cells: Cell[] = [2, 'not-observed', 4, 'not-applicable', 'absent', 6, 'not-observed'];
    const { tables } = ask(inputOf([numbers(cells)]), { of: ['spacing'] });
    const [row] = recordsOf(tables.numbers);
    expect(row).toMatchObject({
      n: 3,
      missing: 4,
      notObserved: 2,
      notApplicable: 1,
      absent: 1,
      mean: 4,
      median: 4,
    });
  });

  it('everywhere leave words instead of numbers, never a NaN', () => {
    const { tables, words, figures } = ask(inputOf([numbers(['not-observed', 'not-observed'])]), {
      of: ['spacing'],
    });
    const cells = (tables.numbers?.rows ?? []).flat();
    expect(cells.some((cell) => typeof cell === 'number' && Number.isNaN(cell))).toBe(false);
    expect(words.answer).toBe('Spacing has no value.');
    expect(Object.keys(figures)).toEqual(['spacing']);
  });

  it('of a yes/no attribute: absent is a value, not observed is a gap', () => {
    const column = kinds(pile, ['present', 'absent', null, 'absent', null]);
    const { tables } = ask(inputOf([column]), { of: ['pile'] });
    expect(
      recordsOf(tables.kinds).map(({ term, count, share, n, missing }) => [term, count, share, n, missing]),
    ).toEqual([
      ['present', 1, 1 / 3, 3, 2],
      ['absent', 2, 2 / 3, 3, 2],
    ]);
  });
});

describe('interval readings', () => {
  // 2, <1, 3.5, <0.5, 1.5 with 0 as the lowest possible (as in Helsel 2012): the median is exactly 1.5.
  it('give the bounds of the median and keep the mean at midpoints', () => {
    const { tables } = ask(inputOf([numbers([2, [0, 1], 3.5, [0, 0.5], 1.5])]), { of: ['spacing'] });
    const [row] = recordsOf(tables.numbers);
    expect([row.medianLow, row.median, row.medianHigh]).toEqual([1.5, 1.5, 1.5]);
    expectClose(row.mean as number, (2 + 0.5 + 3.5 + 0.25 + 1.5) / 5, 1e-15);
    expect([row.min, row.max]).toEqual([0, 3.5]);
  });

  it('that are open-ended take away the mean but not the median', () => {
    const { tables, words } = ask(inputOf([numbers([1, 2, 3, 4, [30, Infinity]])]), { of: ['spacing'] });
    const [row] = recordsOf(tables.numbers);
    expect(row.mean).toEqual({ why: '1 of 5 readings is open-ended' });
    expect(row.sd).toEqual({ why: '1 of 5 readings is open-ended' });
    expect(row.max).toEqual({ why: 'a reading is open-ended' });
    expect([row.medianLow, row.median, row.medianHigh]).toEqual([3, 3, 3]);
    expect(words.unless.map(printTurn)).toContain(
      'Open-ended readings in spacing: mean and standard deviation are not given; the median stands between its bounds.',
    );
  });
});

describe('groups', () => {
  const cells = numbers([10, 20, 30, 1, 2, 3, 4, 5]);
  const sites = kinds(site, ['Site 10', 'Site 10', 'Site 10', 'Site 2', 'Site 2', 'Site 2', 'Site 2', null]);

  it('are described each on its own and together, in natural order', () => {
    const { tables, words } = ask(inputOf([cells, sites]), { of: ['spacing'], by: ['site'] });
    expect(recordsOf(tables.numbers).map((row) => [row.site, row.n, row.median])).toEqual([
      ['Site 2', 4, 2.5],
      ['Site 10', 3, 20],
      ['all', 7, 4],
    ]);
    // Neither group has the five values that it takes to be quoted.
    expect(words.answer).toBe('Spacing has a median of 4 mm for 7 fragments.');
    expect(words.unless.map(printTurn)).toContain(
      'Few values in Site 2 (4) and Site 10 (3): nothing is typical of so few, and they are not quoted.',
    );
  });

  it('of enough values are set in order by their medians, and equal ones are called equal', () => {
    const both = (more: number) => {
      const values = Array.from({ length: 12 }, (_, at) => 1 + at / 4);
      return ask(
        inputOf([
          numbers([...values, ...values.map((value) => value + more)]),
          kinds(site, [...Array(12).fill('Holm'), ...Array(12).fill('Ness')]),
        ]),
        { of: ['spacing'], by: ['site'] },
      ).words.answer;
    };
    expect(both(7)).toBe('Spacing is least in Holm and greatest in Ness (medians 2.38 and 9.38 mm).');
    expect(both(-7)).toBe('Spacing is least in Ness and greatest in Holm (medians \u22124.63 and 2.38 mm).');
    // The limits of both medians hold both: nothing is ranked.
    expect(both(0.5)).toBe('Medians of spacing run from 2.38 to 2.88 mm, and their limits overlap.');
    expect(both(0)).toBe('Spacing has the same median in all two, 2.38 mm.');
  });

  it('leave out what has no group, and say so', () => {
    const { found } = ask(inputOf([cells, sites]), { of: ['spacing'], by: ['site'] });
    expect(found.n).toEqual({
      fragments: 7,
      items: 7,
      setAside: [{ reason: 'Site not recorded', fragments: 1 }],
    });
  });

  it('below three values have no standard deviation', () => {
    const { tables } = ask(inputOf([numbers([1, 2])]), { of: ['spacing'] });
    expect(recordsOf(tables.numbers)[0].sd).toEqual({ why: 'not given for fewer than 3 values' });
  });

  it('stay the same when the rows change places', () => {
    const back = ask(
      inputOf([
        numbers([5, 4, 3, 2, 1, 30, 20, 10]),
        kinds(site, [null, 'Site 2', 'Site 2', 'Site 2', 'Site 2', 'Site 10', 'Site 10', 'Site 10']),
      ]),
      { of: ['spacing'], by: ['site'] },
    );
    const forth = ask(inputOf([cells, sites]), { of: ['spacing'], by: ['site'] });
    expect(back.tables).toEqual(forth.tables);
  });

  it('cannot be formed by a number', () => {
    expect(() => ask(inputOf([cells, sites]), { of: ['site'], by: ['spacing'] })).toThrow(
      'is a number and forms no groups',
    );
  });
});

describe('items', () => {
  it('count once, however many fragments survive of them', () => {
    const items = ['A', 'A', 'A', 'B', 'C'];
    const { tables } = ask(inputOf([numbers([1, 2, 9, 4, 'not-observed'])], items), { of: ['spacing'] });
    const [row] = recordsOf(tables.numbers);
    // Item A stands at the median of its fragments, 2; so the mean of A and B is 3.
    expect(row).toMatchObject({ n: 2, items: 2, fragments: 4, missing: 1, mean: 3 });
  });
});

describe('shares of kinds', () => {
  // Wilson limits of 15 in 148 at 95 %: Newcombe 1998, Stat. Med. 17:857 (case from memory), R 4.2.2 prop.test.
  it('carry score limits', () => {
    const cells = Array.from({ length: 148 }, (_, row) => (row < 15 ? 'open' : 'close'));
    const { tables, words } = ask(inputOf([kinds(site, cells)]), { of: ['site'] });
    const [open] = recordsOf(tables.kinds);
    expect(open).toMatchObject({ term: 'open', count: 15, n: 148 });
    expect(open.low as number).toBeCloseTo(0.062386, 6);
    expect(open.high as number).toBeCloseTo(0.160487, 6);
    expect(words.answer).toBe('Commonest in site is close, 133 of 148 fragments.');
    expect(words.because).toEqual([
      'Site, 148 fragments: close 133 (90 %, limits 84 to 94 %) and open 15 (10 %, limits 6 to 16 %).',
    ]);
  });
  it('that are equal are a tie, and those not told apart are said to be so', () => {
    const cells = [...Array(12).fill('a'), ...Array(12).fill('b'), ...Array(2).fill('c')];
    const tie = ask(inputOf([kinds(site, cells)]), { of: ['site'] });
    expect(tie.words.answer).toBe('Commonest in site are a and b (a tie of two).');
    // 12 against 9: sign test p = 0.66 (R binom.test).
    const near = ask(inputOf([kinds(site, [...Array(12).fill('a'), ...Array(9).fill('b')])]), {
      of: ['site'],
    });
    expect(near.words.answer).toBe('Commonest in site are a and b (not told apart).');
  });
});

it.each(['made', 'spacing'])('the demo: %s, as read and kept', async (id) => {
  const result = demoAnswer(id);
  expect(faultsOfAnswer(result.words)).toEqual([]);
  expect(numbersWithoutSource(result.words, result.tables, [result.n.items, 95])).toEqual([]);
  await expect(readable(result)).toMatchFileSnapshot(`snapshots/demo-${id}.txt`);
});
