import { describe, expect, it } from 'vitest';
import { summary } from '../../../src/analyses/summary/index.ts';
import { overlapShares } from '../../../src/numerics/assemblages/time-overlap.ts';
import { expectClose } from '../../numerics/close.ts';
import { ask, everyNumber, inputFrom, linesOf } from '../ask.ts';

describe('limits of mean and median', () => {
  const values = [2.1, 3.7, 4.2, 5.8, 6.3, 7.9, 8.4, 9.1];
  it('enclose them, and are the same for the same seed', () => {
    const answer = () =>
      ask(summary, inputFrom(values.map((rowSpacing) => ({ rowSpacing }))), { of: ['rowSpacing'] });
    const [line] = linesOf(answer().tables.limits);
    expect(line.median).toBe(6.05);
    for (const name of ['mean', 'median']) {
      expect(line[`${name}Low`] as number).toBeLessThan(line[name] as number);
      expect(line[`${name}High`] as number).toBeGreaterThan(line[name] as number);
    }
    expect(JSON.stringify(answer())).toBe(JSON.stringify(answer()));
  });

  it('draw items, not fragments: one item of many fragments allows none', () => {
    const rows = values.map((rowSpacing) => ({ rowSpacing, item: 'one' }));
    const [line] = linesOf(ask(summary, inputFrom(rows), { of: ['rowSpacing'] }).tables.limits);
    expect(line).toMatchObject({
      n: 8,
      items: 1,
      meanLow: { why: 'an interval by resampling needs at least 2 items' },
      medianLow: { why: 'fewer than 6 items allow no limits of a median' },
    });
  });

  it('2, <1, 3.5, <0.5, 1.5 have the median 1.5 whatever the ranges hide (cf. Helsel 2012)', () => {
    const cells = [2, [0, 1], 3.5, [0, 0.5], 1.5] as const;
    const { tables } = ask(summary, inputFrom(cells.map((rowSpacing) => ({ rowSpacing }))), {
      of: ['rowSpacing'],
    });
    expect(linesOf(tables.limits)[0]).toMatchObject({
      median: 1.5,
      censoredLow: 1.5,
      censoredHigh: 1.5,
    });
  });

  it('are refused in words where nothing can be said, and left out when not asked for', () => {
    const open = [3, 4, [5, Number.POSITIVE_INFINITY]] as const;
    const { tables } = ask(summary, inputFrom(open.map((rowSpacing) => ({ rowSpacing }))), {
      of: ['rowSpacing'],
    });
    expect(linesOf(tables.limits)[0].mean).toEqual({ why: '1 of 3 readings is open-ended' });
    expect(everyNumber(tables).some(Number.isNaN)).toBe(false);
    const without = ask(summary, inputFrom([{ rowSpacing: 3 }]), { of: ['rowSpacing'], resamples: 0 });
    expect(Object.keys(without.tables)).toEqual(['numbers']);
  });
});

it('limits of few values: by order and by t, or refused; none without width', () => {
  const limitsOf = (values: readonly number[]) =>
    linesOf(
      ask(summary, inputFrom(values.map((rowSpacing) => ({ rowSpacing }))), { of: ['rowSpacing'] }).tables
        .limits,
    )[0];
  // R 4.2: t.test(c(2, 4, 9))$conf.int
  const three = limitsOf([2, 4, 9]);
  expect(three.medianLow).toEqual({ why: 'fewer than 6 values allow no limits of a median at 95 %' });
  expectClose(three.meanLow as number, -3.956685895, 1e-9);
  expectClose(three.meanHigh as number, 13.956685895, 1e-9);
  expect(limitsOf([6, 6, 6, 6, 6, 6, 6]).medianLow).toEqual({
    why: 'the readings are too coarse to give limits a width',
  });
});

describe('limits of shares', () => {
  const rows = [
    ...Array.from({ length: 15 }, () => ({ fibre: 'wool' })),
    ...Array.from({ length: 133 }, () => ({ fibre: 'limeBast' })),
  ];
  // 15 of 148: Newcombe 1998, Stat. Med. 17:857 (case from memory), limits to six digits from R binom.test and prop.test.
  it.each([
    ['wilson', 0.062386, 0.160487],
    ['exact', 0.057844, 0.16165],
  ] as const)('%s', (limits, low, high) => {
    const line = linesOf(ask(summary, inputFrom(rows), { of: ['fibre'], limits }).tables.kinds).find(
      ({ term }) => term === 'wool',
    );
    expect(line?.low as number).toBeCloseTo(low, 6);
    expect(line?.high as number).toBeCloseTo(high, 6);
  });
  it('jeffreys lie within the exact ones', () => {
    const line = linesOf(
      ask(summary, inputFrom(rows), { of: ['fibre'], limits: 'jeffreys' }).tables.kinds,
    ).find(({ term }) => term === 'wool');
    expect(line?.low as number).toBeGreaterThan(0.057844);
    expect(line?.high as number).toBeLessThan(0.16165);
  });
});

describe('time', () => {
  it('the span [-350, -150) gives bins of a century from -400 the shares 0.25, 0.5, 0.25 (rule: Crema 2012)', () => {
    expect(Array.from(overlapShares(-350, -150, [-400, -300, -200, -100]))).toEqual([0.25, 0.5, 0.25]);
    expect(Array.from(overlapShares(-300, -300, [-400, -300, -200, -100]))).toEqual([0, 1, 0]);
    expect(Array.from(overlapShares(0, 10, [20, 30]))).toEqual([0]);
  });

  it('every dated record weighs 1 in all, and undated ones are counted', () => {
    const rows = [
      { fibre: 'wool', date: [-350, -150] as const },
      { fibre: 'wool', date: [-250, -200] as const },
      { fibre: 'wool' },
    ];
    const { tables } = ask(summary, inputFrom(rows), {
      of: ['fibre'],
      timeBins: { from: -400, to: -100, width: 100 },
    });
    const lines = linesOf(tables.time);
    expect(lines.map(({ weight }) => weight)).toEqual([0.25, 1.5, 0.25]);
    expect(lines[0]).toMatchObject({ term: 'wool', from: -400, to: -300, n: 2, undated: 1 });
    expectClose(
      lines.reduce((sum, { weight }) => sum + (weight as number), 0),
      2,
    );
  });

  it('cannot be shared out without dates, nor into no bins', () => {
    const bins = (from: number, to: number) => ({ of: ['fibre'], timeBins: { from, to, width: 100 } });
    expect(() => ask(summary, inputFrom([{ fibre: 'wool' }]), bins(0, 100))).toThrow(
      'timeBins: no source records dates',
    );
    expect(() => ask(summary, inputFrom([{ fibre: 'wool', date: 3 }]), bins(100, 0))).toThrow(
      'ask for 1 to 200 bins',
    );
  });
});
