import type { ResultTable } from '../contract.ts';
import { type ClaimsFound, type JudgedFigure, type LastDigits, VERDICTS } from './found.ts';

/** The answer as tables: one line a figure, one line a check, and the last digits of columns of readings. */
export function claimsTables({
  judged,
  counts,
  digits,
  withData,
}: ClaimsFound): Readonly<Record<string, ResultTable>> {
  return {
    figures: figuresTable(judged),
    verdicts: {
      title: 'Verdicts',
      columns: [
        { id: 'verdict', label: 'verdict' },
        { id: 'n', label: 'figures' },
        ...(withData ? [{ id: 'unheld', label: 'of them not held against the data' }] : []),
      ],
      rows: VERDICTS.map((verdict) => [
        verdict,
        counts[verdict],
        ...(withData ? [judged.filter((one) => one.verdict === verdict && one.unheld !== '').length] : []),
      ]),
    },
    checks: checksTable(judged),
    ...(digits.length === 0 ? {} : { digits: digitsTable(digits) }),
  };
}

function figuresTable(judged: readonly JudgedFigure[]): ResultTable {
  return {
    title: 'Printed figures',
    columns: [
      { id: 'id', label: 'id' },
      { id: 'place', label: 'place' },
      { id: 'quantity', label: 'quantity' },
      { id: 'printed', label: 'printed' },
      { id: 'verdict', label: 'verdict' },
      { id: 'why', label: 'why' },
      { id: 'explained', label: 'would be explained by' },
      { id: 'resolve', label: 'to settle it' },
      { id: 'note', label: 'note' },
    ],
    rows: judged.map(({ figure, says, why, explained, resolve }) => [
      figure.id,
      figure.place,
      figure.quantity,
      figure.printed,
      says,
      why,
      explained,
      resolve,
      figure.note,
    ]),
    briefly: ['id', 'printed', 'verdict', 'why'],
    note:
      'Each figure stands for all values that print so, rounded half up, half to even or cut off. Printing slips, ' +
      'other rounding or other data can explain a difference.',
  };
}

function checksTable(judged: readonly JudgedFigure[]): ResultTable {
  return {
    title: 'Every check',
    columns: [
      { id: 'id', label: 'id' },
      { id: 'from', label: 'from' },
      { id: 'check', label: 'check' },
      { id: 'outcome', label: 'outcome' },
      { id: 'working', label: 'working' },
      { id: 'with', label: 'rests on' },
    ],
    rows: judged.flatMap(({ figure, checks }) =>
      checks.map((check) => [
        figure.id,
        check.from === 'data' ? 'the data' : 'the other printed figures',
        check.name,
        check.outcome === 'agrees only if rounded'
          ? `${check.outcome} ${check.rounded ?? ''}`
          : check.outcome,
        check.working,
        check.with.join(', '),
      ]),
    ),
    note: '"passes" says that nothing speaks against the figure; "open" that something is missing.',
  };
}

function digitsTable(digits: readonly LastDigits[]): ResultTable {
  return {
    title: 'Last digits of columns of readings',
    columns: [
      { id: 'set', label: 'set' },
      { id: 'attribute', label: 'attribute' },
      { id: 'n', label: 'n' },
      ...Array.from({ length: 10 }, (_, digit) => ({ id: `digit${digit}`, label: String(digit) })),
      { id: 'zeroOrFive', label: 'share of 0 and 5' },
      { id: 'statistic', label: 'chi-squared' },
      { id: 'p', label: 'p' },
    ],
    rows: digits.map((each) => [
      each.set,
      each.attribute,
      each.n,
      ...each.digits,
      each.zeroOrFive,
      each.statistic,
      each.p,
    ]),
    note: 'Against equal frequencies, 9 degrees of freedom. Uneven last digits say how finely was measured, no more.',
  };
}
