import type { Figure, ResultTable } from '../../analyses/contract.ts';
import { ANALYSES } from '../../analyses/register.ts';
import type { AnalysisResult, Results } from '../../study/results/results.ts';

/** A figure with its number in the report, and the name under which it is linked and saved. */
export interface NumberedFigure {
  readonly number: number;
  readonly name: string;
  readonly figure: Figure;
}

export interface NumberedTable {
  readonly number: number;
  readonly name: string;
  readonly table: ResultTable;
  /** The file that holds every line and column of it, beside the report. */
  readonly file: string;
}

/** One question of a report: what carries its answer, and what else was computed. */
export interface ReportQuestion {
  readonly id: string;
  readonly result: AnalysisResult;
  readonly figure: NumberedFigure | null;
  readonly table: NumberedTable | null;
  readonly furtherFigures: readonly NumberedFigure[];
  readonly furtherTables: readonly NumberedTable[];
}

/** Longer tables than this do not stand in the text of a report. */
const MOST_LINES = 30;

/** Every figure and table of a study numbered through in the order in which the report shows them. */
export function outlineOf({ analyses }: Results): readonly ReportQuestion[] {
  let [figures, tables] = [0, 0];
  return Object.entries(analyses).map(([id, result]) => {
    const lead = ANALYSES.find(({ kind }) => kind === result.kind)?.leads ?? {};
    const drawn = leading(Object.entries(result.figures), lead.figure);
    const filled = Object.entries(result.tables).filter(([, { rows }]) => rows.length > 0);
    const short = filled.filter(([, { rows }]) => rows.length <= MOST_LINES);
    const [first] = leading(short, lead.table);
    const ordered = first === undefined ? filled : [first, ...filled.filter((entry) => entry !== first)];
    const numbered = drawn.map(
      ([name, figure]): NumberedFigure => ({ number: ++figures, name: anchor(`${id}-${name}`), figure }),
    );
    const listed = ordered.map(
      ([name, table]): NumberedTable => ({
        number: ++tables,
        name: anchor(`${id}-${name}`),
        table,
        file: `tables/${id}-${name}.csv`,
      }),
    );
    return {
      id,
      result,
      figure: numbered[0] ?? null,
      table: first === undefined ? null : (listed[0] ?? null),
      furtherFigures: numbered.slice(1),
      furtherTables: first === undefined ? listed : listed.slice(1),
    };
  });
}

/** The entries with the one that leads first: its name begins so, as an attribute may follow. */
function leading<T>(entries: readonly (readonly [string, T])[], name: string | undefined) {
  const lead = name === undefined ? undefined : entries.find(([own]) => own.startsWith(name));
  return lead === undefined ? entries : [lead, ...entries.filter((entry) => entry !== lead)];
}

function anchor(name: string): string {
  return name.replace(/[^A-Za-z0-9_-]+/g, '-');
}

/** "Figure 3", "Figures 3 and 4", "Figures 3 to 6". */
export function cite(word: 'Figure' | 'Table', numbers: readonly number[]): string {
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (first === undefined) return '';
  if (numbers.length === 1) return `${word} ${first}`;
  return `${word}s ${first} ${numbers.length === 2 ? 'and' : 'to'} ${last}`;
}
