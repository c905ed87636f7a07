import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import type { AttributeDefinition, Register, Vocabulary } from '../../../src/attributes/definition.ts';
import type { Column, FragmentTable } from '../../../src/fragments/table.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

type Values = readonly (number | string | null)[];
export interface MadeColumn {
  readonly attribute: AttributeDefinition;
  readonly values: Values;
}

export const attribute = (
  id: string,
  block: AttributeDefinition['block'],
  scale: AttributeDefinition['scale'],
  more: Partial<AttributeDefinition> = {},
): AttributeDefinition => ({ id, label: id, block, scale, source: 'made up for this test', ...more });

/** A fragment table straight from lists of numbers or kinds, null for a gap. */
export function madeTable(columns: readonly MadeColumn[], items?: readonly string[]): FragmentTable {
  const rows = columns[0].values.length;
  const id = Array.from({ length: rows }, (_, row) => `F${row + 1}`);
  return {
    rows,
    id,
    item: items ?? id,
    assemblage: id.map(() => ''),
    origin: id.map((_, row) => ({ source: 0, row: row + 2 })),
    sources: ['made.csv'],
    columns: new Map(columns.map(({ attribute: a, values }) => [a.id, madeColumn(a, values)])),
  };
}

function madeColumn(definition: AttributeDefinition, values: Values): Column {
  const raw = values.map((value) => (value === null ? '' : String(value)));
  const state = Uint8Array.from(values, (value) => (value === null ? 1 : 0));
  if (definition.scale === 'ratio' || definition.scale === 'interval') {
    const numbers = Float64Array.from(values, (value) => (value === null ? Number.NaN : Number(value)));
    return {
      kind: 'numeric',
      attribute: definition,
      low: numbers,
      high: numbers.slice(),
      state,
      raw,
      readings: new Map(),
      step: new Float64Array(values.length).fill(Number.NaN),
    };
  }
  const levels = [...new Set(values.filter((value) => value !== null).map(String))].sort();
  return {
    kind: 'term',
    attribute: definition,
    codes: Int32Array.from(values, (value) => (value === null ? -1 : levels.indexOf(String(value)))),
    levels,
    state,
    certainty: new Uint8Array(values.length),
    raw,
  };
}

export function madeInput(
  columns: readonly MadeColumn[],
  more: {
    items?: readonly string[];
    vocabularies?: readonly Vocabulary[];
    seed?: number;
    unit?: 'fragment' | 'item';
  } = {},
): AnalysisInput {
  const table = madeTable(columns, more.items);
  const register: Register = {
    attributes: new Map(columns.map(({ attribute: a }) => [a.id, a])),
    vocabularies: new Map((more.vocabularies ?? []).map((vocabulary) => [vocabulary.id, vocabulary])),
  };
  return {
    fragments: table,
    records: table,
    unit: more.unit ?? 'fragment',
    register,
    random: createRandom(more.seed ?? 1),
  };
}
