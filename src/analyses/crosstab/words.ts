import { margins } from '../../numerics/tests/contingency.ts';
import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import type { CrosstabFound } from './compute.ts';
import { LOUD, share } from './tables.ts';

/** Below this many records a row or column says little. */
const SMALL_LINE = 5;

/** One sentence with test, strength and the cells that carry it, and what to mind. */
export function crosstabWords(found: CrosstabFound): Words {
  const { test, association, interval, table, options } = found;
  const { rowsLabel, columnsLabel, n } = found;
  const pair = `${rowsLabel} and ${columnsLabel}`;
  if ('why' in test)
    return {
      sentence: `The association of ${pair} cannot be tested: ${test.why}.`,
      cautions: cautionsOf(found),
    };
  const level = `${Number((options.confidence * 100).toPrecision(6))} %`;
  const strength =
    `bias-corrected Cramér's V ${printNumber(association.cramersVCorrected, 2)}` +
    ('why' in interval
      ? ''
      : ` (${level} ${printNumber(interval.low, 2)} to ${printNumber(interval.high, 2)})`);
  const tested =
    test.name === 'chi-square'
      ? `chi-square = ${printNumber(association.chiSquared, 4)}, df = ${association.df}, ${printP(test.p)}${test.method === 'chi-squared' ? '' : ` (${test.method})`}`
      : `${test.name} test, ${printP(test.p)}${test.method === 'exact' ? '' : ` (${test.method})`}; chi-square = ${printNumber(association.chiSquared, 4)}, df = ${association.df}`;
  const size =
    n.fragments === n.items
      ? printCount(n.items, 'item')
      : `${printCount(n.items, 'item')} in ${printCount(n.fragments, 'fragment')}`;
  const said = `${tested}; ${strength}; n = ${size}`;
  const sentence =
    test.p < 1 - options.confidence
      ? `${pair} are associated: ${said}${cellWords(found)}.`
      : `${pair} are not distinguishable from unassociated: ${said}.`;
  return {
    sentence: table.entries.length === 0 ? 'No record has both.' : sentence,
    cautions: cautionsOf(found),
  };
}

function cellWords({ association, table }: CrosstabFound): string {
  const sums = margins(table.counts);
  const loud = association.residuals
    .flatMap((line, row) => line.map((residual, column) => ({ residual, row, column })))
    .filter(({ residual }) => Math.abs(residual) >= LOUD)
    .sort((a, b) => Math.abs(b.residual) - Math.abs(a.residual))
    .slice(0, 4)
    .map(
      ({ residual, row, column }) =>
        `${residual > 0 ? 'more' : 'fewer'} ${table.columns[column]} in ${table.rows[row]} (${share(table.counts[row][column], sums.rows[row])})`,
    );
  return loud.length === 0 ? '; no single cell stands out' : `; carried most by ${printList(loud)}`;
}

function cautionsOf(found: CrosstabFound): string[] {
  const { test, table, unit, n } = found;
  const sums = margins(table.counts);
  const cautions: string[] = [];
  if (!('why' in test) && test.reason !== 'as asked' && test.method !== 'chi-squared') {
    const by = test.method === 'exact' ? test.name : `${test.name} (${test.method})`;
    cautions.push(`p by ${by}, because ${test.reason}.`);
  }
  if (
    !('why' in test) &&
    test.reason === 'as asked' &&
    found.association.smallestExpected < SMALL_LINE &&
    test.name === 'chi-square'
  ) {
    cautions.push(
      `Chi-square was asked for; its p is doubtful, the smallest expected count is ${printNumber(found.association.smallestExpected, 2)}.`,
    );
  }
  const small = [
    ...table.rows.flatMap((label, row) =>
      sums.rows[row] < SMALL_LINE ? [`${label} (${sums.rows[row]})`] : [],
    ),
    ...table.columns.flatMap((label, column) =>
      sums.columns[column] < SMALL_LINE ? [`${label} (${sums.columns[column]})`] : [],
    ),
  ];
  if (small.length > 0)
    cautions.push(`Fewer than ${SMALL_LINE} ${unit}s in ${printList(small)}: their shares say little.`);
  if (unit === 'fragment' && n.items < n.fragments) {
    cautions.push(
      `${n.fragments} fragments come from ${n.items} items; fragments of one item are not independent, so items were dealt and drawn whole.`,
    );
  }
  if (table.nested.length > 0) {
    cautions.push(
      `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same: some records counted there may belong to those, which makes rows differ by how closely they were recorded.`,
    );
  }
  const cells = table.rows.length * table.columns.length;
  cautions.push(
    `Shares of one line sum to 1, so that a rise of one kind is a fall of others; of ${cells} residuals about ${Math.max(1, Math.round(cells / 20))} would pass ±${LOUD} by chance.`,
  );
  const aside = n.setAside.reduce((sum, entry) => sum + entry.fragments, 0);
  if (aside > 0) {
    cautions.push(
      `${printCount(aside, 'fragment')} set aside: ${n.setAside.map(({ reason }) => reason).join('; ')}. A gap is no absence.`,
    );
  }
  return cautions;
}
