import type { Unavailable } from '../../contract.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { lacking } from './lacking.ts';
import { rowsOf, type View, valuesOf } from './values.ts';

/** The readings of both selections, neither empty. */
export function twoSamples(
  figure: PrintedFigure,
  view: View,
): { a: Float64Array; b: Float64Array } | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined || figure.versus.length === 0) return lacking(figure, 'groups');
  const [a, b] = [figure.select, figure.versus].map((part) => valuesOf(view, attribute, rowsOf(view, part)));
  if ('why' in a) return a;
  if ('why' in b) return b;
  if (a.points.length === 0 || b.points.length === 0) return { why: 'a group has no reading' };
  return { a: a.points, b: b.points };
}
