import { InputError } from '../../errors.ts';
import { midpoint, termAt } from '../../fragments/accessors.ts';
import { defaultAttributes, defaultOfComplete } from '../../fragments/compared-by-default.ts';
import { scaleOf } from '../../fragments/comparison/numbers.ts';
import { termLabel } from '../../fragments/groups.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import { correlation, correlationRatio } from '../../numerics/ordination/in-common.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Axes, Supplementary } from './found.ts';
import type { OrdinationOptions } from './options.ts';

/**
 * The attributes that make the axes: those named, or all that the active records record but for the
 * supplementary ones.
 */
export function activeAttributes(active: FragmentTable, options: OrdinationOptions): readonly string[] {
  if (options.of.length > 0) return options.of;
  const all = options.method === 'pcoa' ? defaultAttributes(active) : defaultOfComplete(active);
  return all.filter((id) => !options.supplementaryAttributes.includes(id));
}

/**
 * Attributes that had no say in the axes, seen beside them: how far numbers (by logarithm where ratios
 * matter) go along each axis, and where the records of each kind lie on average (Greenacre 1984, ch. 3:
 * supplementary points are means of what they are made of). Records without a value are left out.
 *
 * @throws InputError for text, for an attribute that has a say already, and for correspondence analysis
 */
export function supplementaryOf(
  input: AnalysisInput,
  axes: Axes,
  options: OrdinationOptions,
): readonly Supplementary[] {
  const asked = options.supplementaryAttributes;
  if (asked.length === 0) return [];
  if (axes.rows.length === 0) {
    throw new InputError(
      'in correspondence analysis rows and columns of the table are supplementary, not attributes',
      { path: 'supplementaryAttributes' },
      'name labels under "supplementary", or choose another method',
    );
  }
  const count = axes.eigenvalues.length;
  const along = Array.from({ length: count }, (_, k) => axes.records.map(({ at }) => at[k]));
  return asked.flatMap((id): Supplementary[] => {
    const column = requireColumn(input.records, id, input.register);
    const { label } = column.attribute;
    if (options.of.includes(id)) {
      throw new InputError(
        `"${label}" (${id}) makes the axes already, so it cannot be supplementary to them`,
        { path: 'supplementaryAttributes' },
        'leave it out of "of" or of "supplementaryAttributes"',
      );
    }
    if (column.kind === 'numeric') {
      const { logarithm } = scaleOf(column, options.skewed);
      const values = axes.rows.map((row) => {
        const middle = midpoint(column, row);
        const value = logarithm ? ln(middle) : middle;
        return Number.isFinite(value) ? value : Number.NaN;
      });
      const at = along.map((places) => correlation(values, places));
      const n = values.filter((value) => !Number.isNaN(value)).length;
      return [{ label, role: 'number', n, at, common: at.map((r) => r * r) }];
    }
    if (column.kind === 'term') {
      const terms = axes.rows.map((row) => termAt(column, row));
      const kinds = [...new Set(terms.filter((term) => term !== null))];
      const known = terms.filter((term) => term !== null).length;
      const common = along.map((places) => correlationRatio(terms, places));
      return [
        { label, role: 'kinds together', n: known, at: [], common },
        ...kinds.map((kind): Supplementary => {
          const members = terms.flatMap((term, place) => (term === kind ? [place] : []));
          const at = along.map((places) => members.reduce((sum, i) => sum + places[i] / members.length, 0));
          const name = `${label}: ${termLabel(column.attribute, kind, input.register)}`;
          return { label: name, role: 'kind', n: members.length, at, common: [] };
        }),
      ];
    }
    throw new InputError(
      `"${label}" (${id}) is text and has no place on axes`,
      { path: 'supplementaryAttributes' },
      'name numbers or kinds',
    );
  });
}
