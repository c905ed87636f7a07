import type { Answer, Figure, ResultTable, TableCell } from '../../src/analyses/contract.ts';
import { printTurn } from '../../src/analyses/phrasing.ts';

/** Everything that is said of one question, as text that a person can review in a snapshot. */
export function said(words: Answer, figures: Readonly<Record<string, Figure>>): string {
  const list = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ['', `${title}:`, ...lines.map((line) => `- ${line}`)];
  return [
    words.answer,
    ...list('Because', words.because),
    ...list(
      'Unless',
      words.unless.map((turn) => `${turn.overturns ? '(overturns) ' : ''}${printTurn(turn)}`),
    ),
    ...list('Next', words.next ?? []),
    ...Object.entries(figures).flatMap(([id, figure]) => [
      '',
      `Figure ${id}: ${axisTitles(figure).join(' | ')}`,
      figure.caption,
    ]),
    '',
  ].join('\n');
}

/** Titles of all axes of a figure, by the name of the axis. */
export function axisTitles({ layout }: Figure): string[] {
  return Object.entries(layout).flatMap(([name, axis]) => {
    if (!/^[xy]axis\d*$/.test(name)) return [];
    const { title } = axis as { title?: { text?: string } };
    return title?.text === undefined || title.text === '' ? [] : [`${name[0]}: ${title.text}`];
  });
}

/** The lines of a table as records by the ids of its columns. */
export function linesOf({ columns, rows }: ResultTable): Record<string, TableCell>[] {
  return rows.map((row) => Object.fromEntries(columns.map(({ id }, place) => [id, row[place]])));
}
