import type { AttributeDefinition } from '../../src/attributes/definition.ts';
import type { FragmentTable, NumericColumn, TermColumn } from '../../src/fragments/table.ts';

const attribute = (id: string, scale: AttributeDefinition['scale'], unit?: string): AttributeDefinition => ({
  id,
  label: id,
  block: 'find',
  scale,
  source: 'made up for this test',
  ...(unit === undefined ? {} : { unit }),
});

const numeric = (id: string, ends: readonly (readonly [number, number])[]): NumericColumn => ({
  kind: 'numeric',
  attribute: attribute(id, 'ratio', 'mm'),
  low: Float64Array.from(ends, ([low]) => low),
  high: Float64Array.from(ends, ([, high]) => high),
  state: Uint8Array.from(ends, ([low]) => (Number.isNaN(low) ? 2 : 0)),
  raw: ends.map(() => ''),
  readings: new Map(),
  step: new Float64Array(ends.length).fill(Number.NaN),
});

const terms = (id: string, codes: readonly number[], levels: readonly string[]): TermColumn => ({
  kind: 'term',
  attribute: attribute(id, 'nominal'),
  codes: Int32Array.from(codes),
  levels,
  state: Uint8Array.from(codes, (code) => (code < 0 ? 2 : 0)),
  certainty: new Uint8Array(codes.length),
  raw: codes.map((code) => levels[code] ?? ''),
});

const none: readonly [number, number] = [Number.NaN, Number.NaN];

/** Four fragments: identifiers with leading zeros, a range, a bound, gaps, a text like a formula. */
export const SAMPLE: FragmentTable = {
  rows: 4,
  id: ['001', '002', '010', '=1+1'],
  item: ['A', 'A', 'B', 'C'],
  assemblage: ['Cave, upper', 'Cave, upper', '', 'Cave, upper'],
  origin: [1, 2, 3, 4].map((row) => ({ source: 0, row })),
  sources: ['sample'],
  columns: new Map(
    [
      numeric('width', [[10, 10], [12.5, 12.5], none, [7, 7]]),
      numeric('rowSpacing', [[3, 4], [35, 35], none, [20, Number.POSITIVE_INFINITY]]),
      terms('structure', [0, 1, -1, 0], ['tabby', 'openTwining']),
    ].map((column) => [column.attribute.id, column] as const),
  ),
};
