import { countBehind } from '../../fragments/behind.ts';
import { type CrossedTable, crossedTable } from '../../fragments/crossed-table.ts';
import type { ResampledInterval } from '../../numerics/resampling/bootstrap.ts';
import { type Association, association } from '../../numerics/tests/contingency.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import type { CrosstabOptions } from './options.ts';
import { crosstabTables } from './tables.ts';
import { type ChosenTest, chooseTest, cramersInterval } from './tests.ts';

export interface CrosstabFound extends FindingsWithTables {
  readonly options: CrosstabOptions;
  readonly unit: 'fragment' | 'item';
  readonly rowsLabel: string;
  readonly columnsLabel: string;
  readonly table: CrossedTable;
  readonly association: Association;
  readonly test: ChosenTest | Unavailable;
  readonly interval: ResampledInterval | Unavailable;
}

/**
 * Which kinds go with which? Counts of two attributes, their association, its strength, and the cells
 * that carry it. Records that lack either are set aside and counted.
 *
 * @throws InputError for numbers, and when either attribute has fewer than two values.
 */
export function computeCrosstab(input: AnalysisInput, options: CrosstabOptions): CrosstabFound {
  const { records, register, unit, random } = input;
  const table = crossedTable(records, options.rows, options.columns, register);
  const found = association(table.counts);
  if ('why' in found) throw new Error(`a table without empty lines has an association: ${found.why}`);
  const labelOf = (id: string) =>
    register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
  const test = chooseTest(table, found, options, random.stream('test'));
  input.onProgress?.(0.5, 'drawing items');
  const compared = {
    options,
    unit,
    rowsLabel: labelOf(options.rows),
    columnsLabel: labelOf(options.columns),
    table,
    association: found,
    test,
    interval: cramersInterval(table, options, random.stream('interval')),
  };
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, unit, rows);
  return {
    ...compared,
    n: {
      ...behind(table.entries.map(({ record }) => record)),
      setAside: table.lacking.map(({ attribute, rows }) => ({
        reason: `${labelOf(attribute)} not recorded`,
        fragments: behind(rows).fragments,
      })),
    },
    tables: crosstabTables(input, compared),
  };
}
