import type { Unavailable } from '../../contract.ts';
import type { Way } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { ofPairs } from './correlations.ts';
import { crossed, ofTable } from './crossed.ts';
import type { Recomputed } from './recomputed.ts';
import { ofGroups } from './several-groups.ts';
import { ofTwoGroups, type Results, standardNormal } from './two-groups.ts';
import { rowsOf, termsOf, type View, valuesOf } from './values.ts';

/**
 * Statistic, degrees of freedom or p of the test that a figure names, recomputed from the records.
 *
 * @param place which of the two degrees of freedom of F; the last printed one if left out.
 */
export function testWays(
  figure: PrintedFigure,
  view: View,
  place = figure.values.length - 1,
): Recomputed | Unavailable {
  const method = figure.method ?? (figure.quantity === 'correlation' ? 'r' : null);
  if (method === null && figure.quantity !== 'p') return { why: 'the test is not named' };
  const results = method === null ? usualTests(figure, view) : resultsOf(method, figure, view);
  if ('why' in results) return results;
  const half = figure.sided === 'one' && figure.quantity === 'p' ? 0.5 : 1;
  const ways = results.list.flatMap((result): Way[] => {
    if (figure.quantity === 'p')
      return half === 1
        ? [{ said: result.said, value: result.p }]
        : [
            { said: result.said, value: result.p * half },
            { said: `${result.said}, against the side that was asked about`, value: 1 - result.p * half },
          ];
    if (figure.quantity === 'df') {
      const value = result.df[place];
      return value === undefined ? [] : [{ said: result.said, value }];
    }
    return result.statistic === null ? [] : [{ said: result.said, value: result.statistic }];
  });
  return ways.length === 0
    ? { why: `the ${method} test has no such figure` }
    : { ways, basis: results.basis };
}

/** A p without a name: of kinds by kinds, or of a number by kinds, in each of the tests in which that is asked. */
function usualTests(figure: PrintedFigure, view: View): Results {
  const [first, second] = figure.attributes;
  if (first === undefined) return { why: 'the test is not named' };
  const numeric = !('why' in valuesOf(view, first, []));
  const pair = numeric && second !== undefined ? twoOf(second, figure, view) : null;
  const asked: readonly (readonly [method: string, of: PrintedFigure])[] = !numeric
    ? [['chi-squared', figure], ...(smallEnough(figure, view) ? [['fisher', figure] as const] : [])]
    : [['F', figure], ['H', figure], ...(pair === null ? [] : [['t', pair] as const, ['U', pair] as const])];
  const found = asked.flatMap(([method, of]) => {
    const results = resultsOf(method, of, view);
    return 'why' in results ? [] : [results];
  });
  return found.length === 0
    ? { why: 'the test is not named' }
    : { list: found.flatMap(({ list }) => list), basis: found[0].basis };
}

const MOST_LISTED = 100;

/** Whether anybody would have listed every table of these sums: two by two, or few records. */
function smallEnough(figure: PrintedFigure, view: View): boolean {
  const counts = crossed(figure, view);
  if ('why' in counts) return false;
  const n = counts.table.flat().reduce((sum, one) => sum + one, 0);
  return n <= MOST_LISTED || (counts.table.length === 2 && counts.table[0].length === 2);
}

/** The two kinds of an attribute as two selections; null where there are more. */
function twoOf(kinds: string, figure: PrintedFigure, view: View): PrintedFigure | null {
  const terms = termsOf(view, kinds, rowsOf(view, figure.select));
  if ('why' in terms) return null;
  const names = [...new Set(terms)].filter((term) => term !== null);
  if (names.length !== 2) return null;
  const [select, versus] = names.map((name) => [...figure.select, { attribute: kinds, in: [name] }]);
  return { ...figure, attributes: figure.attributes.slice(0, 1), select, versus };
}

function resultsOf(method: string, figure: PrintedFigure, view: View): Results {
  switch (method) {
    case 't':
      return figure.attributes.length === 2 && figure.versus.length === 0
        ? ofPairs(method, figure, view)
        : ofTwoGroups(method, figure, view);
    case 'U':
    case 'W':
      return ofTwoGroups('U', figure, view);
    case 'z':
      return standardNormal(figure, view);
    case 'F':
      return ofGroups(figure, view);
    case 'H':
      return ofGroups(figure, view, 'H');
    case 'chi-squared':
    case 'G':
    case 'fisher':
      return ofTable(method, figure, view);
    case 'r':
    case 'rho':
    case 'tau':
    case 'signed-rank':
      return ofPairs(method, figure, view);
    default:
      return { why: `"${method}" is not recomputed from data` };
  }
}
