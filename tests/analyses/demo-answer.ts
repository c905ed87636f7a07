import type { Answer, Figure, ResultTable } from '../../src/analyses/contract.ts';
import { printNumber, printTurn } from '../../src/analyses/phrasing.ts';
import { columnPrinter } from '../../src/analyses/table-numbers.ts';
import { entriesOf } from '../../src/study/load.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import { analyseOne } from '../../src/study/run-study.ts';
import { prepareDemo } from '../demo/prepared.ts';

const answered = new Map<string, AnalysisResult>();

/** What the demo study answers to its analysis of this id, computed once for all test files of a worker. */
export function demoAnswer(id: string): AnalysisResult {
  const answer = answered.get(id) ?? demoAsked(id);
  answered.set(id, answer);
  return answer;
}

/** The same with these options changed, computed whenever it is asked. */
export function demoAsked(id: string, changed: Readonly<Record<string, unknown>> = {}): AnalysisResult {
  const { study, prepared, files } = prepareDemo([id]);
  const entry = entriesOf(study).find((one) => one.id === id);
  if (entry === undefined) throw new Error(`the demo has no analysis "${id}"`);
  return analyseOne(prepared, { ...entry, ...changed }, files, {
    onFault: (_, fault) => {
      throw fault;
    },
  });
}

/** Answer, figure captions and axis titles as text, to be read and kept beside the tests. */
export function readable({
  words,
  figures,
}: {
  readonly words: Answer;
  readonly figures: Readonly<Record<string, Figure>>;
}): string {
  const { answer, because, unless, next = [] } = words;
  const lines = [
    answer,
    ...because.map((line) => `· ${line}`),
    ...unless.map((turn) => `${turn.overturns ? '!!' : '!'} ${printTurn(turn)}`),
    ...next.map((line) => `> ${line}`),
  ];
  for (const [name, { caption, layout, data }] of Object.entries(figures)) {
    const titles = Object.entries(layout).flatMap(([key, value]) =>
      /^[xy]axis/.test(key) ? [`${key} "${titleOf(value)}"`] : [],
    );
    const bars = data.filter(({ error_x: x, error_y: y }) => x !== undefined || y !== undefined).length;
    lines.push('', `[${name}] ${titles.join(', ')}${bars > 0 ? `, ${bars} with error bars` : ''}`, caption);
  }
  return `${lines.join('\n')}\n`;
}

function titleOf(value: unknown): string {
  const title = (value as { title?: string | { text?: string } }).title;
  return typeof title === 'string' ? title : (title?.text ?? '');
}

/** Numbers of the evidence that stand in no table of the same answer, nor among its counts. */
export function numbersWithoutSource(
  { because }: Answer,
  tables: Readonly<Record<string, ResultTable>>,
  more: readonly number[] = [],
): string[] {
  const printed = new Set<string>();
  const add = (value: number) => {
    for (const digits of [1, 2, 3, 4]) {
      printed.add(printNumber(value, digits));
      printed.add(printNumber(value * 100, digits));
    }
    printed.add(columnPrinter({ id: 'p', label: 'p' }, [])(value));
    printed.add(String(Math.round(value * 100)));
  };
  for (const value of more) add(value);
  for (const { rows, note = '' } of Object.values(tables)) {
    for (const cell of rows.flat()) {
      if (typeof cell === 'number') add(cell);
      if (typeof cell === 'string') for (const text of numbersIn(cell)) printed.add(text);
    }
    for (const text of numbersIn(note)) printed.add(text);
  }
  return because.flatMap(numbersIn).filter((text) => !printed.has(text));
}

const numbersIn = (text: string): string[] => text.match(/(?<![\p{L}\d-])[−]?\d+(?:\.\d+)?/gu) ?? [];
