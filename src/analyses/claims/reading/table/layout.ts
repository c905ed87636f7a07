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
    : withVariance(withErrors(plainLayout(rows, heads, texts, corner, roles)));
}

/** Heads of a table of variances in other languages: "QS", "FG", "MQ" say so only together. */
const VARIANCE_HEADS: readonly (readonly [pattern: RegExp, role: Role])[] = [
  [
    /^(?:qs|saq|sq|sc|quadratsumme|s(?:umma|omme|uma) .*(?:quadr|carr|cuadr).*|kvadratsum)$/i,
    'sum-of-squares',
  ],
  [
    /^(?:mq|mqs|cm|qm|mittl.*quadr.*|carré moyen|cuadrado medio|quadrato medio|middelkvadrat)$/i,
    'mean-square',
  ],
  [/^(?:fg|ddl|g\.?\s?l\.?|freiheitsgrade|frihedsgrader)$/i, 'df'],
];

/** Beside coefficients "SF" heads their standard errors, as the word is cut short abroad. */
function withErrors(laid: Layout): Layout {
  if (!laid.columns.some(({ reading }) => reading?.role === 'estimate')) return laid;
  const columns = laid.columns.map((column) =>
    /^(?:sf|ef|e\.?\s?e\.?)$/i.test(column.head.trim())
      ? { ...column, reading: { role: 'se' as const } }
      : column,
  );
  return { ...laid, columns };
}

/** In an analysis of variance the residual is a line of its own, and not what is left beside counts. */
function withVariance(asRead: Layout): Layout {
  const abroad = asRead.columns.map(
    ({ head }) => VARIANCE_HEADS.find(([pattern]) => pattern.test(head.trim()))?.[1],
  );
  const together = new Set(abroad.filter((role) => role !== undefined)).size >= 2;
  const laid = together
    ? {
        ...asRead,
        columns: asRead.columns.map((column, c) => {
          const role = abroad[c];
          return role === undefined ? column : { ...column, reading: { role } };
        }),
      }
    : asRead;
  const ofVariance = laid.columns.some(
    ({ reading }) => reading?.role === 'sum-of-squares' || reading?.role === 'mean-square',
  );
  if (!ofVariance) return laid;
  const rows = laid.rows.map((row) =>
    row.line === 'aside' && /(?:^|, )residuals?(?: \(\d+\))?$/i.test(row.label)
      ? { ...row, line: 'part' as const }
      : row,
  );
  return { ...laid, rows };
}
