import { useEffect, useRef, useState } from 'react';
import { cellId, tableName } from '../../../analyses/claims/reading/printed-table.ts';
import type { JudgedView } from '../../engine/views/claims.ts';
import { download } from '../../files.ts';
import { Button } from '../../parts/controls.tsx';
import {
  gridBytes,
  type PrintedGrid,
  withCell,
  withColumn,
  withoutColumn,
  withoutRow,
  withRow,
} from './table-grid.ts';
import { VerdictMark } from './verdict-mark.tsx';

export interface TableFormProps {
  readonly file: string;
  readonly grid: PrintedGrid;
  readonly judged: readonly JudgedView[];
  /** Why the table cannot be read as it stands. */
  readonly fault: string | null;
  /** A table that was just started takes the keyboard. */
  readonly fresh: boolean;
  readonly onChange: (update: (grid: PrintedGrid) => PrintedGrid, what: string) => void;
  /** A cell was entered; it holds this figure, or none that is checked yet. */
  readonly onEnter: (id: string | null) => void;
}

interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** A whole printed table, cell by cell, each with the mark of its verdict. */
export function TableForm({ file, grid, judged, fault, fresh, onChange, onEnter }: TableFormProps) {
  const [at, setAt] = useState<CellPlace>({ row: 1, column: 1 });
  const frame = useRef<HTMLTableElement>(null);
  useEffect(() => {
    if (fresh) frame.current?.querySelectorAll('input')[1]?.focus();
  }, [fresh]);
  const [heads = []] = grid;
  const within = { row: Math.min(at.row, grid.length - 1), column: Math.min(at.column, heads.length - 1) };
  // A cell such as "12 (34 %)" holds two figures; the one to look at is shown.
  const figureIn = ({ row, column }: CellPlace) => {
    if (row === 0 || column === 0) return undefined;
    const id = cellId(tableName(file), grid[row]?.[0] ?? '', heads[column] ?? '');
    const own = judged.filter((one) => one.id === id || one.id.startsWith(`${id} (`));
    return own.find(({ verdict }) => verdict !== 'agrees') ?? own[0];
  };
  const nameOf = ({ row, column }: CellPlace) => {
    if (row === 0 && column === 0) return 'corner';
    if (row === 0) return `head of column ${column + 1}`;
    if (column === 0) return `label of row ${row + 1}`;
    return `${grid[row]?.[0] || `row ${row + 1}`}, ${heads[column] || `column ${column + 1}`}`;
  };
  /** @returns whether there is a cell below to go on to. */
  const goBelow = ({ row, column }: CellPlace): boolean => {
    const next = frame.current?.querySelectorAll('tr')[row + 1]?.querySelectorAll('input')[column];
    next?.focus();
    return next !== undefined;
  };
  return (
    <section className="stack" aria-label={`The table ${file}`}>
      <div className="line apart">
        <h3>{file}</h3>
        <Button
          look="small"
          label={`Save the table ${file}`}
          onPress={() => download(file, gridBytes(grid), 'text/csv')}
        >
          Save
        </Button>
      </div>
      {fault === null ? null : (
        <p className="small" role="status">
          Not read yet: {fault}
        </p>
      )}
      <div className="printed-table">
        <table ref={frame} aria-label={`Cells of ${file}`}>
          <tbody>
            {grid.map((line, row) => (
              // Rows and columns have no name of their own; a cell keeps its text by its place.
              <tr key={row}>
                {line.map((text, column) => {
                  const place = { row, column };
                  const figure = figureIn(place);
                  return (
                    <td key={column} className={row === 0 || column === 0 ? 'label' : ''}>
                      {figure === undefined ? null : <VerdictMark verdict={figure.verdict} />}
                      <CellEntry
                        text={text}
                        name={`${nameOf(place)}${figure === undefined ? '' : `: ${figure.says}`}`}
                        hint={hintOf(place)}
                        onEnter={() => {
                          setAt(place);
                          onEnter(figure?.id ?? null);
                        }}
                        onDone={(next) =>
                          onChange((now) => withCell(now, row, column, next), `${nameOf(place)} of ${file}`)
                        }
                        goBelow={() => goBelow(place)}
                      />
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="line">
        <Button look="small" onPress={() => onChange(withRow, `another row of ${file}`)}>
          Add a row
        </Button>
        <Button look="small" onPress={() => onChange(withColumn, `another column of ${file}`)}>
          Add a column
        </Button>
        <Button
          look="plain small"
          disabled={grid.length < 3 || within.row < 1}
          onPress={() => onChange((now) => withoutRow(now, within.row), `a row less in ${file}`)}
        >
          Remove {within.row < 1 ? 'this row' : `the row ${grid[within.row]?.[0] || within.row + 1}`}
        </Button>
        <Button
          look="plain small"
          disabled={heads.length < 3 || within.column < 1}
          onPress={() => onChange((now) => withoutColumn(now, within.column), `a column less in ${file}`)}
        >
          Remove{' '}
          {within.column < 1 ? 'this column' : `the column ${heads[within.column] || within.column + 1}`}
        </Button>
      </div>
      <p className="small soft">
        Labels in the first row and column. Heads such as n, mean and sd make each row a sample, and a column
        “step” gives the grid of its readings; otherwise the cells are counts or percentages, and “total”
        heads sums.
      </p>
    </section>
  );
}

function hintOf({ row, column }: CellPlace): string {
  if (row === 0) return column === 0 ? '' : 'head';
  return column === 0 ? 'label' : '';
}

interface CellEntryProps {
  readonly text: string;
  readonly name: string;
  readonly hint: string;
  readonly onEnter: () => void;
  readonly onDone: (text: string) => void;
  readonly goBelow: () => boolean;
}

/** Text that is taken when the reader is done with the cell; Enter goes on to the one below. */
function CellEntry({ text, name, hint, onEnter, onDone, goBelow }: CellEntryProps) {
  const [typed, setTyped] = useState(text);
  useEffect(() => setTyped(text), [text]);
  const done = () => typed.trim() !== text && onDone(typed.trim());
  return (
    <input
      className="input"
      aria-label={name}
      placeholder={hint}
      value={typed}
      onChange={(event) => setTyped(event.target.value)}
      onFocus={onEnter}
      onBlur={done}
      onKeyDown={(event) => {
        if (event.key === 'Escape') setTyped(text);
        // To leave a cell is to be done with it.
        if (event.key === 'Enter' && !goBelow()) done();
      }}
    />
  );
}
