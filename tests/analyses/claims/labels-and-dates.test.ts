import { describe, expect, it } from 'vitest';
import { readPrinted } from '../../../src/analyses/claims/reading/printed-text.ts';
import { labelStatistic } from '../../../src/analyses/claims/reading/table/label-statistic.ts';
import type { Quantity } from '../../../src/analyses/claims/reading/terms.ts';
import { check } from './claims.ts';

describe('labels that say what their line holds', () => {
  it.each([
    ['Row spacing (mm), mean (SD)', 'Row spacing (mm)', 'mean', 'sd'],
    ['Mean age (SD)', 'age', 'mean', 'sd'],
    ['Spacing, median [IQR]', 'Spacing', 'median', undefined],
    ['Fibre, n (%)', 'Fibre', 'count', undefined],
    ['Fibre, No. (%)', 'Fibre', 'count', undefined],
    ['tabby (%)', 'tabby', 'share', undefined],
    ['Höhe, Mittelwert (Standardabweichung)', 'Höhe', 'mean', 'sd'],
    ['Longueur, médiane [quartiles]', 'Longueur', 'median', undefined],
    ['Thickness: mean ± SE', 'Thickness', 'mean', 'se'],
    ['Spacing, n', 'Spacing', 'n', undefined],
  ])('%s', (label, of, role, second) => {
    const parted = labelStatistic(label);
    expect([parted?.of, parted?.reading.role, parted?.reading.second]).toEqual([of, role, second]);
  });

  it.each(['Quorrimel Cave', 'Early, Middle', 'tabby (balanced)', 'Layer 3', 'Site A, s', 'n', 'Mean'])(
    'no statistic is heard in "%s"',
    (label) => expect(labelStatistic(label)).toBeUndefined(),
  );

  it('two groups called P and F are groups, and P beside real values of p is p', () => {
    const groups = check([{ quantity: 'reading', printed: '1' }], {
      't.csv': ',F,P\nn,12,14\nMean,5.2,6.1\nSD,1.4,1.2\n',
    });
    expect(groups.counts['cannot be']).toBe(0);
    expect(groups.judged.filter(({ figure }) => figure.quantity === 'mean')).toHaveLength(2);
    const tested = check([{ quantity: 'reading', printed: '1' }], {
      't.csv':
        ',Early,Late,P\n"Spacing, mean (SD)",5.2 (1.4),6.1 (1.2),.03\n"Width, mean (SD)",5.2 (1.4),6.1 (1.2),<.001\n',
    });
    expect(tested.judged.filter(({ figure }) => figure.quantity === 'p')).toHaveLength(2);
    expect(tested.unread).toEqual([]);
  });

  it('a report in a note is held against the table above it', () => {
    const table = (chi: string) => ({
      't.csv': `Kind;A;B;Total\ntabby;10;20;30\ntwill;30;10;40\nTotal;40;30;70\nNote. χ²(1, N = 70) = ${chi}, p < .001\n`,
    });
    // R: chisq.test(matrix(c(10, 30, 20, 10), 2), correct = FALSE): 12.153.
    const verdict = (chi: string) =>
      check([{ quantity: 'reading', printed: '1' }], table(chi)).judged.find(
        ({ figure }) => figure.quantity === 'statistic',
      )?.verdict;
    expect(verdict('12.15')).toBe('agrees');
    expect(verdict('15.12')).toBe('cannot be');
  });
});

describe('dates and the spans of phases', () => {
  // ISO 8601-1: 1 BC is the year 0, n BC is 1 - n.
  const read = (text: string, quantity: Quantity) =>
    readPrinted(text, quantity)?.parts.map(({ quantity: of, values: [{ relation, number }] }) => [
      of,
      relation,
      Number(number.digits),
    ]);
  it.each([
    ['1200 BC', 'min', [['min', '=', -1199]]],
    ['AD 45', 'mean', [['mean', '=', 45]]],
    ['c. 1200 BC', 'mean', [['mean', '~', -1199]]],
    [
      '50 BC–AD 20',
      'range',
      [
        ['min', '=', -49],
        ['max', '=', 20],
      ],
    ],
    [
      '1310–1120 cal BC',
      'interval',
      [
        ['low', '=', -1309],
        ['high', '=', -1119],
      ],
    ],
    [
      '3rd century BC',
      'range',
      [
        ['min', '=', -299],
        ['max', '=', -200],
      ],
    ],
    [
      '1200/1150 v. Chr.',
      'range',
      [
        ['min', '=', -1199],
        ['max', '=', -1149],
      ],
    ],
    [
      '1210 ± 30 BC',
      'mean',
      [
        ['mean', '=', -1209],
        ['sd', '=', 30],
      ],
    ],
  ] as const)('%s as %s', (text, quantity, parts) => {
    expect(read(text, quantity)).toEqual(parts);
  });

  it('run in their own order, and are told in words', () => {
    const found = check([
      { id: 'from', set: 'phase', quantity: 'min', printed: '1150 BC' },
      { id: 'mid', set: 'phase', quantity: 'median', printed: '1180 BC' },
      { id: 'to', set: 'phase', quantity: 'max', printed: '1200 BC' },
    ]);
    expect(found.counts['cannot be']).toBeGreaterThan(0);
    expect(found.judged.map(({ why }) => why).join(' ')).not.toMatch(/-11\d\d/);
  });
});

describe('what was tried', () => {
  it('ends every figure that cannot be', () => {
    const found = check([
      { id: 'n', set: 's', quantity: 'n', printed: '28' },
      { id: 'm', set: 's', quantity: 'mean', step: '1', printed: '5.19' },
      { id: 'p', quantity: 'p', printed: '1.3' },
      { id: 'r', set: 'o', quantity: 'range', printed: '9-2' },
      { id: 's', set: 'x', quantity: 'count', printed: '12/35 (43.4 %)' },
    ]);
    const impossible = found.judged.filter(({ verdict }) => verdict === 'cannot be');
    expect(impossible.length).toBeGreaterThanOrEqual(3);
    for (const { why, figure } of impossible)
      expect(why, figure.id).toMatch(/Tried: .+\.|No convention allows it\./);
  });
});
