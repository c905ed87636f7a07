import { useState } from 'react';
import type { AnalysisResult } from '../../../study/results/results.ts';
import { Choice, Toggles } from '../controls.tsx';
import { FigureView } from './figure.tsx';

export interface ResultFiguresProps {
  readonly result: AnalysisResult;
  /** Figure -> its name on screen; a figure without one goes by its key. */
  readonly names?: Readonly<Record<string, string>>;
  /** Figure -> the table behind it, where that is not the first one. */
  readonly tables?: Readonly<Record<string, string>>;
  /** Figures to show; all where not said. */
  readonly only?: readonly string[];
  /** Stem of the file names. */
  readonly stem: string;
}

/** More figures than this are chosen from a list. */
const MOST_SIDE_BY_SIDE = 5;

/** The figures of one answer, one at a time, each with its table and its files. */
export function ResultFigures({ result, names = {}, tables = {}, only, stem }: ResultFiguresProps) {
  const [shown, setShown] = useState<string | null>(null);
  const available = Object.keys(result.figures)
    .filter((id) => only?.includes(id) ?? true)
    .map((id) => ({ id, label: names[id] ?? id.replace(/-/g, ' ') }));
  const current = available.some(({ id }) => id === shown) ? (shown as string) : available[0]?.id;
  if (current === undefined)
    return <p className="soft">There is nothing to draw here; see what can be said.</p>;
  const table = result.tables[tables[current] ?? ''] ?? Object.values(result.tables)[0];
  return (
    <div className="stack">
      {available.length < 2 ? null : available.length <= MOST_SIDE_BY_SIDE ? (
        <Toggles label="Which figure" value={current} options={available} onChange={setShown} />
      ) : (
        <Choice label="Which figure" value={current} options={available} onChange={setShown} />
      )}
      <FigureView
        key={current}
        figure={result.figures[current]}
        name={`${stem}.${current}`}
        {...(table === undefined ? {} : { table })}
      />
    </div>
  );
}
