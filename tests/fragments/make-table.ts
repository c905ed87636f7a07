import type { AttributeDefinition, Register } from '../../src/attributes/definition.ts';
import { CELL_STATES, type CellState } from '../../src/cells/reading.ts';
import type { Column, FragmentTable } from '../../src/fragments/table.ts';

/** A small register of its own, so that these tests do not move with the default vocabularies. */
export const register: Register = {
  attributes: new Map(
    (
      [
        { id: 'structure', block: 'structure', scale: 'nominal', vocabulary: 'structure' },
        { id: 'fibre', block: 'fibre', scale: 'nominal', vocabulary: 'fibre' },
        {
          id: 'spacingClass',
          block: 'structure',
          scale: 'ordinal',
          levels: ['close', 'semi-open', 'open'],
          appliesTo: ['twined'],
        },
        { id: 'pile', block: 'structure', scale: 'presence' },
        { id: 'density1', block: 'spacing', scale: 'ratio', unit: 'per cm' },
        { id: 'density2', block: 'spacing', scale: 'ratio', unit: 'per cm' },
        { id: 'rowSpacing', block: 'spacing', scale: 'ratio', unit: 'mm', appliesTo: ['twined'] },
        { id: 'rowWidth', block: 'spacing', scale: 'ratio', unit: 'mm' },
        { id: 'rowGap', block: 'spacing', scale: 'ratio', unit: 'mm' },
        { id: 'gapRatio', block: 'spacing', scale: 'ratio' },
        { id: 'diameter1', block: 'spacing', scale: 'ratio', unit: 'mm' },
        { id: 'diameter2', block: 'spacing', scale: 'ratio', unit: 'mm' },
        { id: 'cover1', block: 'spacing', scale: 'ratio' },
        { id: 'cover2', block: 'spacing', scale: 'ratio' },
        { id: 'openness', block: 'spacing', scale: 'ratio' },
        { id: 'balance', block: 'spacing', scale: 'ratio' },
        { id: 'logBalance', block: 'spacing', scale: 'interval' },
        { id: 'quantity', block: 'context', scale: 'ratio' },
        { id: 'site', block: 'context', scale: 'nominal' },
        { id: 'remarks', block: 'context', scale: 'text' },
      ] as Omit<AttributeDefinition, 'label' | 'source'>[]
    ).map((attribute) => [attribute.id, { ...attribute, label: attribute.id, source: 'test' }]),
  ),
  vocabularies: new Map([
    [
      'structure',
      {
        id: 'structure',
        label: 'structure',
        terms: [
          { id: 'woven', label: 'woven', source: 'test' },
          { id: 'twined', label: 'twined', source: 'test' },
          { id: 'openTwining', label: 'open twining', parent: 'twined', source: 'test' },
          { id: 'closeTwining', label: 'close twining', parent: 'twined', source: 'test' },
        ],
      },
    ],
    [
      'fibre',
      {
        id: 'fibre',
        label: 'fibre',
        terms: [
          { id: 'treeBast', label: 'tree bast', source: 'test' },
          { id: 'limeBast', label: 'lime bast', parent: 'treeBast', source: 'test' },
          { id: 'willowBast', label: 'willow bast', parent: 'treeBast', source: 'test' },
          { id: 'wool', label: 'wool', source: 'test' },
        ],
      },
    ],
  ]),
};

/** A number, its ends, a term, or the state of a cell without a value ("-not-observed"). */
export type Cell = number | readonly [number, number] | string;

/** A table from rows of cells; `item` and `id` are taken out, every other key is an attribute. */
export function makeTable(
  rows: readonly Readonly<Record<string, Cell>>[],
  from: Register = register,
): FragmentTable {
  const ids = [...new Set(rows.flatMap((row) => Object.keys(row)))].filter(
    (id) => id !== 'item' && id !== 'id',
  );
  return {
    rows: rows.length,
    id: rows.map((row, index) => String(row.id ?? `f${index + 1}`)),
    item: rows.map((row, index) => String(row.item ?? `f${index + 1}`)),
    assemblage: rows.map((row) => String(row.site ?? '')),
    origin: rows.map((_, index) => ({ source: 0, row: index + 2 })),
    sources: ['test.csv'],
    columns: new Map(
      ids.map((id) => [
        id,
        makeColumn(
          id,
          rows.map((row) => row[id]),
          from,
        ),
      ]),
    ),
  };
}

function makeColumn(id: string, cells: readonly (Cell | undefined)[], from: Register): Column {
  const attribute = from.attributes.get(id);
  if (attribute === undefined) throw new Error(`no attribute ${id} in the register`);
  const without = (cell: Cell | undefined): CellState | undefined => {
    if (cell === undefined) return 'not-observed';
    return typeof cell === 'string' && cell.startsWith('-') ? (cell.slice(1) as CellState) : undefined;
  };
  const state = Uint8Array.from(cells, (cell) => CELL_STATES.indexOf(without(cell) ?? 'measured'));
  const raw = cells.map((cell) => (cell === undefined ? '' : String(cell)));
  if (attribute.scale === 'text') return { kind: 'text', attribute, raw, state };
  if (attribute.scale === 'ratio' || attribute.scale === 'interval') {
    const end = (which: 0 | 1) =>
      Float64Array.from(cells, (cell) =>
        without(cell) ? Number.NaN : typeof cell === 'number' ? cell : (cell as [number, number])[which],
      );
    return {
      kind: 'numeric',
      attribute,
      low: end(0),
      high: end(1),
      step: new Float64Array(cells.length).fill(Number.NaN),
      state,
      raw,
      readings: new Map(),
    };
  }
  const levels = [...new Set(cells.filter((cell) => without(cell) === undefined).map(String))];
  const codes = Int32Array.from(cells, (cell) => (without(cell) ? -1 : levels.indexOf(String(cell))));
  return { kind: 'term', attribute, codes, levels, state, certainty: new Uint8Array(cells.length), raw };
}
