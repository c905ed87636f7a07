import { countLabelColumns, hasTwoHeads, headsOf } from './head-rows.ts';
import { withHeadedSections } from './headed-sections.ts';
import { type Role, readHead } from './heads.ts';
import { labelsOf, lineOf } from './labels.ts';
import type { Layout } from './laid.ts';
import { isOfTest } from './role-kinds.ts';
import { namesStatistics, plainLayout, turnedLayout } from './turned.ts';

/** Finds heads, sections and labels; turns a table whose statistics stand in the first column. */
export function layOut(grid: readonly (readonly string[])[], roles: Readonly<Record<string, Role>>): Layout {
  const headRows = hasTwoHeads(grid) ? 2 : 1;
  const labelColumns = countLabelColumns(grid.slice(headRows));
  const body = grid.slice(headRows);
  const heads = headsOf(grid.slice(0, headRows), labelColumns);
  const labelled = labelsOf(
    body,
    labelColumns,
    heads.map(({ head }) => isOfTest(readHead(head))),
  );
  const texts = labelled.map(({ at }) => body[at].slice(labelColumns));
  const indents = labelled.map(({ at }) => body[at][0].length - body[at][0].trimStart().length);
  const rows = withHeadedSections(
    labelled,
    indents,
    texts,
    ({ own, line, under }) => line === undefined && under === null && lineOf(own) === 'part',
  );
  const corner = grid[0].slice(0, labelColumns).join(' ').trim();
  return namesStatistics(rows, heads) && labelColumns === 1
    ? turnedLayout(rows, heads, texts, corner, roles)
    : plainLayout(rows, heads, texts, corner, roles);
}
