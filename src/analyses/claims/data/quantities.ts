import type { Unavailable } from '../../contract.ts';
import { diversityWays, similarityWays } from '../conventions/composition.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { effectWays } from './effects.ts';
import { lacking } from './lacking.ts';
import { limitsOf } from './limits.ts';
import { basisOf, type Departure, type Recomputed } from './recomputed.ts';
import { ofReadings, ofTwoMeans } from './samples.ts';
import { testWays } from './tests.ts';
import { emptySelection, filledRows, known, rowsOf, termsOf, type View } from './values.ts';

/** A figure recomputed from the records. @throws InputError for selections that the data cannot answer. */
export function recompute(
  figure: PrintedFigure,
  view: View,
  departure: Departure = {},
): Recomputed | (Unavailable & { readonly mend?: string }) {
  const found = recomputeOf(figure, view, departure);
  if ('why' in found || figure.selectOr === undefined) return found;
  const others = figure.selectOr.flatMap((select) => {
    const other = recomputeOf({ ...figure, select }, view, departure);
    return 'why' in other
      ? []
      : other.ways.map(({ said, value }) => ({ said: `${said}, ${other.basis}`, value }));
  });
  return { ...found, ways: [...found.ways, ...others] };
}

function recomputeOf(
  figure: PrintedFigure,
  view: View,
  departure: Departure,
): Recomputed | (Unavailable & { readonly mend?: string }) {
  const labels = [
    [figure.selectText, figure.select],
    [figure.versusText, figure.versus],
  ] as const;
  const label = labels.find(([text, conditions]) => text !== '' && conditions.length === 0);
  if (figure.placed !== true && label !== undefined)
    return { why: `"${label[0]}" is the label of a printed table, not a condition on the data` };
  const empty = emptySelection(view, figure.select) ?? emptySelection(view, figure.versus);
  // None of a known kind is a count like any other.
  const counting = figure.quantity === 'n' || figure.quantity === 'count';
  if (empty !== null && (empty.unknown || !counting)) return { why: empty.why, mend: empty.mend };
  switch (figure.quantity) {
    case 'n':
    case 'count':
      return countOf(figure, view);
    case 'total':
      return figure.attributes.length === 0 ? countOf(figure, view) : ofReadings(figure, view, departure);
    case 'share':
      return shareOf(figure, view);
    case 'reading':
    case 'interval':
      return { why: 'a single reading is one cell of the data; look it up there' };
    case 'difference':
    case 'ratio':
      return ofTwoMeans(figure, view);
    case 'low':
    case 'high':
      return figure.vague ? anyEnds(figure, view) : limitsOf(figure, view);
    case 'effect':
      return effectWays(figure, view);
    case 'estimate':
      return { why: 'a fitted model is not computed here' };
    case 'sum-of-squares':
    case 'mean-square':
      return { why: 'a line of an analysis of variance is checked from its own table' };
    case 'correlation':
    case 'statistic':
    case 'df':
    case 'p':
      return testWays(figure, view, departure.place);
    case 'similarity':
    case 'diversity':
      return ofKinds(figure, view);
    default:
      return ofReadings(figure, view, departure);
  }
}

/** Two ends of which the print does not say what they are: an interval, the quartiles, or the range. */
function anyEnds(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const limits = limitsOf(figure, view);
  if (figure.versus.length > 0 || figure.counted.length > 0) return limits;
  const names = figure.quantity === 'low' ? (['q1', 'min'] as const) : (['q3', 'max'] as const);
  const ends = names.map((quantity) => ofReadings({ ...figure, vague: false, quantity }, view, {}));
  const found = [limits, ...ends].flatMap((one) => ('why' in one ? [] : [one]));
  const [first] = found;
  return first === undefined ? limits : { ...first, ways: found.flatMap(({ ways }) => ways) };
}

function countOf(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const { quantity, set, select, counted: kinds, attributes } = figure;
  if (quantity === 'n' && set !== '' && select.length + kinds.length + attributes.length === 0)
    return { why: 'neither an attribute nor a selection says which records are meant' };
  if (quantity === 'count' && figure.placed !== true && select.length + kinds.length === 0)
    return { why: 'a count needs "counted" or "select": which records it counts' };
  const rows = rowsOf(view, figure.select);
  // A test of two attributes rests on the records that have both.
  const filled = (of: readonly number[]) =>
    attributes.reduce((left, attribute) => filledRows(view, attribute, left), of);
  const counted = kinds.length > 0 ? rowsOf(view, [...figure.select, ...kinds]) : filled(rows);
  const value = view.zeros ? rows.length : counted.length;
  const ways = [{ said: 'counted', value }];
  if (quantity === 'n' && figure.versus.length > 0) {
    const other = filled(rowsOf(view, figure.versus)).length;
    ways.push({ said: 'of the other group', value: other }, { said: 'of both groups', value: value + other });
  }
  return { ways, basis: basisOf(view, rows.length) };
}

/** Of the selected records that have a value of what is counted. */
function shareOf(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  if (figure.counted.length === 0)
    return { why: 'a share needs "counted": which of the selected records it counts' };
  const all = rowsOf(view, figure.select);
  const base = view.zeros ? all : rowsOf(view, [...figure.select, ...known(figure.counted)]);
  const counted = rowsOf(view, [...figure.select, ...figure.counted]);
  if (base.length === 0) return { why: 'no record is left to take a share of' };
  return {
    ways: [{ said: `${counted.length}/${base.length}`, value: counted.length / base.length }],
    basis: basisOf(view, base.length, all.length - base.length, 'a record of it'),
  };
}

function ofKinds(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return lacking(figure, 'attribute');
  const sides = figure.quantity === 'similarity' ? [figure.select, figure.versus] : [figure.select];
  if (sides.some((part) => part.length === 0)) return { why: 'an assemblage is not selected' };
  const lists = sides.map((part) => termsOf(view, attribute, rowsOf(view, part)));
  const refused = lists.find((list) => 'why' in list);
  if (refused !== undefined) return refused as Unavailable;
  const terms = lists as readonly (readonly (string | null)[])[];
  const kinds = [...new Set(terms.flat())].filter((term) => term !== null);
  const [a, b] = terms.map((list) => kinds.map((kind) => list.filter((term) => term === kind).length));
  const ways = b === undefined ? diversityWays(figure.method, a) : similarityWays(figure.method, a, b);
  const n = (list: readonly number[]) => list.reduce((sum, count) => sum + count, 0);
  return { ways, basis: b === undefined ? basisOf(view, n(a)) : `${n(a)} and ${basisOf(view, n(b))}` };
}
