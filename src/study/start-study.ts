import type { AttributeDefinition, Block } from '../attributes/definition.ts';
import { isMissing } from '../fragments/missing.ts';
import type { Column, FragmentTable } from '../fragments/table.ts';
import { checkStudy } from './load.ts';
import type { StudyInput } from './schema.ts';

/** Attributes of one sort that a first study asks about, those recorded most often first. */
const MOST = 6;

/** Fewer records than this are not worth grouping at the start. */
const FEWEST_TO_GROUP = 10;

const DESCRIBING: readonly Block[] = ['structure', 'spacing', 'fibre', 'find'];
const NUMBERS: readonly AttributeDefinition['scale'][] = ['ratio', 'interval'];

/**
 * A study to begin with: the table and first questions that it can answer, to be edited. What the table
 * does not record is not asked about.
 *
 * @param source the table and its profile, as the study file is to name them.
 * @param table what was read of it.
 */
export function startStudy(
  title: string,
  source: StudyInput['sources'][number],
  table: FragmentTable,
): StudyInput {
  const recorded = [...table.columns.values()]
    .map((column) => ({
      attribute: column.attribute,
      n: filled(column, table.rows),
      values: valuesOf(column),
    }))
    .filter(({ attribute, n }) => n > 0 && DESCRIBING.includes(attribute.block) && attribute.scale !== 'text')
    .sort((a, b) => b.n - a.n);
  const ids = (wanted: readonly { readonly attribute: AttributeDefinition }[]) =>
    wanted.slice(0, MOST).map(({ attribute }) => attribute.id);
  const numbers = recorded.filter(({ attribute }) => NUMBERS.includes(attribute.scale));
  const kinds = recorded.filter(({ attribute }) => !NUMBERS.includes(attribute.scale));
  const varied = kinds.filter(({ values }) => values > 1);
  const site = table.columns.get('site');
  const sites = site === undefined ? 0 : valuesOf(site);
  const by = sites > 0 ? { by: ['site'] } : {};
  const analyses: unknown[] = [];
  if (numbers.length > 0) analyses.push({ id: 'numbers', kind: 'summary', of: ids(numbers), ...by });
  if (kinds.length > 0) analyses.push({ id: 'kinds', kind: 'summary', of: ids(kinds), ...by });
  if (sites > 1 && numbers.length > 0)
    analyses.push({ id: 'differ', kind: 'contrast', of: ids(numbers), by: 'site' });
  if (sites > 1 && varied.length > 0)
    analyses.push({ id: 'table', kind: 'crosstab', rows: 'site', columns: varied[0].attribute.id });
  const weighed = recorded.filter(({ attribute }) => attribute.block !== 'find');
  if (table.rows >= FEWEST_TO_GROUP && weighed.length > 1)
    analyses.push({ id: 'groups', kind: 'grouping', of: ids(weighed) });
  const study = { title, seed: 1, unit: 'item', sources: [source], analyses };
  checkStudy(study, title);
  return study as StudyInput;
}

function filled(column: Column, rows: number): number {
  return Array.from({ length: rows }, (_, row) => row).filter((row) => !isMissing(column, row)).length;
}

/** Different values of a column of kinds; 0 for numbers. */
function valuesOf(column: Column): number {
  return column.kind === 'term' ? new Set(column.codes.filter((code) => code >= 0)).size : 0;
}
