import type { ResultTable, TableCell } from '../contract.ts';
import type { Supplementary } from './found.ts';

/** Attributes that had no say, beside the axes. */
export function supplementaryTable(list: readonly Supplementary[], count: number): ResultTable {
  const cells = (values: readonly number[], why: string): TableCell[] =>
    Array.from({ length: count }, (_, k) => (Number.isFinite(values[k]) ? values[k] : { why }));
  const columns = (id: string, label: string) =>
    Array.from({ length: count }, (_, k) => ({ id: `${id}${k + 1}`, label: `${label} axis ${k + 1}` }));
  return {
    title: 'Supplementary attributes',
    columns: [
      { id: 'label', label: 'attribute or kind' },
      { id: 'role', label: 'role' },
      { id: 'n', label: 'n' },
      ...columns('axis', 'on'),
      ...columns('common', 'in common with'),
    ],
    rows: list.map(({ label, role, n, at, common }) => [
      label,
      role,
      n,
      ...cells(at, role === 'number' ? 'too few values, or all the same' : 'kinds together have no place'),
      ...cells(common, role === 'kind' ? 'given for the kinds together' : 'too few values, or all the same'),
    ]),
    note:
      'They had no say in the axes. Numbers: correlation with each axis, by logarithm where ratios matter; kinds: mean of their records. ' +
      'In common: squared correlation, or the share of the axis that lies between kinds.',
  };
}
