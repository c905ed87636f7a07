import { printTurn } from '../../src/analyses/phrasing.ts';
import { columnHead } from '../../src/analyses/table-numbers.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import { axisTitles } from './said.ts';
import { cellText } from './shown.ts';

/** Rows of a table that are written out. */
const MOST_ROWS = 3;

/** All that is said of one question, a line each: the answer, its tables with their first rows, titles and captions of its figures. */
export function linesSaid({ words, n, tables, figures }: AnalysisResult): readonly string[] {
  const { answer, because, unless, next = [] } = words;
  return [
    answer,
    ...because.map((line) => `· ${line}`),
    ...unless.map((turn) => `${turn.overturns ? '!!' : '!'} ${printTurn(turn)}`),
    ...next.map((line) => `> ${line}`),
    ...n.setAside.map(({ reason, fragments }) => `set aside: ${fragments}, ${reason}`),
    ...Object.values(tables).flatMap(({ title, columns, rows, note }) => [
      `[table] ${title}: ${columns.map(columnHead).join(' | ')}`,
      ...rows.slice(0, MOST_ROWS).map((row) => `  ${row.map(cellText).join(' | ')}`),
      ...(rows.length > MOST_ROWS ? [`  … ${rows.length} rows`] : []),
      ...(note === undefined ? [] : [`[note] ${note}`]),
    ]),
    ...Object.values(figures).flatMap((figure) => [
      `[figure] ${axisTitles(figure).join(' | ')}`,
      `[traces] ${figure.data.map((trace) => String(trace.name ?? trace.type)).join(' | ')}`,
      `[caption] ${figure.caption}`,
    ]),
  ];
}
