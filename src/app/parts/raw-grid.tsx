import { useVirtualizer } from '@tanstack/react-virtual';
import { type CSSProperties, useEffect, useMemo, useRef, useState } from 'react';
import { useWorkbench } from '../state/workbench.tsx';
import { ScrollRegion } from './scroll-region.tsx';

/** The raw rows of a source as they stand in the file; only those in sight are fetched and drawn. */

export interface GridColumn {
  readonly header: string;
  /** Stands under the header: what the column was understood as. */
  readonly understood: string;
  readonly tone: 'taken' | 'ask' | 'text' | 'out';
  /** Share of the kept rows that are filled, 0 to 1. */
  readonly filled: number;
  readonly colour?: string;
}

export interface CellMark {
  readonly tone: 'read' | 'flagged' | 'not-understood';
  readonly why: string;
}

export interface RawGridProps {
  readonly source: number;
  readonly rows: number;
  readonly headerRow: number;
  readonly columns: readonly GridColumn[];
  /** Row of the grid (1 = first) -> why it was set aside. */
  readonly setAside: ReadonlyMap<number, string>;
  /** `row:column` -> how the cell was read, where there is something to say. */
  readonly marks: ReadonlyMap<string, CellMark>;
  /** Cell to bring into view. */
  readonly target: { readonly row: number; readonly column: number } | null;
  readonly onColumn: (column: number) => void;
  /** Changes whenever the rows have to be fetched again. */
  readonly version: unknown;
}

const PAGE = 100;
const ROW = 26;
const HEAD = 62;
const TALLEST = 560;
const SCROLLBAR = 18;
const COLUMN = 124;
const GUTTER = 52;

export function RawGrid(props: RawGridProps) {
  const { source, rows, headerRow, columns, setAside, marks, target, onColumn, version } = props;
  const frame = useRef<HTMLDivElement>(null);
  const texts = useRows(source, version);
  const down = useVirtualizer({
    count: rows,
    getScrollElement: () => frame.current,
    estimateSize: () => ROW,
    overscan: 8,
  });
  const across = useVirtualizer({
    horizontal: true,
    count: columns.length,
    getScrollElement: () => frame.current,
    estimateSize: () => COLUMN,
    overscan: 3,
  });
  useEffect(() => {
    if (target === null) return;
    if (target.row > 0) down.scrollToIndex(target.row - 1, { align: 'center' });
    across.scrollToIndex(target.column, { align: 'center' });
  }, [target, down, across]);
  const seenRows = down.getVirtualItems();
  const seenColumns = across.getVirtualItems();
  const firstRow = seenRows[0]?.index ?? 0;
  const lastRow = seenRows.at(-1)?.index ?? 0;
  useEffect(() => texts.want(firstRow, lastRow), [texts, firstRow, lastRow]);
  const width = across.getTotalSize() + GUTTER;
  const place = (start: number, size: number): CSSProperties => ({ left: start + GUTTER, width: size });
  return (
    <ScrollRegion
      name="Rows as they stand in the file"
      className="raw-grid"
      ref={frame}
      style={{ height: Math.min(TALLEST, HEAD + rows * ROW + SCROLLBAR) }}
    >
      <div className="raw-head" style={{ width }}>
        {seenColumns.map((item) => {
          const column = columns[item.index];
          if (column === undefined) return null;
          const chosen = target?.column === item.index;
          return (
            <button
              type="button"
              key={item.key}
              className={`raw-column ${column.tone} ${chosen ? 'chosen' : ''}`}
              style={place(item.start, item.size)}
              onClick={() => onColumn(item.index)}
              title={`${column.header}: ${column.understood}; ${Math.round(column.filled * 100)} % filled`}
            >
              <span className="raw-name">{column.header}</span>
              <span className="raw-sense">{column.understood}</span>
              <span className="raw-bar" aria-hidden="true">
                <span
                  style={{ height: `${column.filled * 100}%`, background: column.colour ?? 'var(--ink)' }}
                />
              </span>
            </button>
          );
        })}
      </div>
      <div className="raw-body" style={{ height: down.getTotalSize(), width }}>
        {seenRows.map((row) => {
          const why = setAside.get(row.index + 1);
          const isHead = row.index + 1 === headerRow;
          const cells = texts.row(row.index);
          return (
            <div
              key={row.key}
              className={`raw-row ${why === undefined ? '' : 'aside'} ${isHead ? 'header' : ''}`}
              style={{ transform: `translateY(${row.start}px)`, height: ROW }}
              title={why === undefined ? undefined : `Set aside: ${why}`}
            >
              <span className="raw-number">{row.index + 1}</span>
              {seenColumns.map((item) => {
                const mark = marks.get(`${row.index + 1}:${item.index}`);
                const chosen = target?.row === row.index + 1 && target.column === item.index;
                return (
                  <span
                    key={item.key}
                    className={`raw-cell ${mark?.tone ?? ''} ${chosen ? 'chosen' : ''}`}
                    style={place(item.start, item.size)}
                    title={mark?.why}
                  >
                    {cells?.[item.index] ?? ''}
                  </span>
                );
              })}
            </div>
          );
        })}
      </div>
    </ScrollRegion>
  );
}

interface Rows {
  readonly row: (index: number) => readonly string[] | undefined;
  readonly want: (from: number, to: number) => void;
}

/** Pages of rows, fetched from the worker once each. */
function useRows(source: number, version: unknown): Rows {
  const { engine } = useWorkbench();
  const [arrived, setArrived] = useState(0);
  // A new version means new pages
  const pages = useMemo(() => new Map<number, readonly (readonly string[])[] | null>(), [source, version]);
  // `arrived` redraws the rows that have come in
  return useMemo(
    () => ({
      row: (index) => pages.get(Math.floor(index / PAGE))?.[index % PAGE],
      want: (from, to) => {
        for (let page = Math.floor(from / PAGE); page <= Math.floor(to / PAGE); page++) {
          if (pages.has(page)) continue;
          pages.set(page, null);
          engine
            .ask(
              (remote) =>
                remote.gridRows(source, page * PAGE, PAGE) as Promise<readonly (readonly string[])[]>,
            )
            .then(
              (rows) => {
                pages.set(page, rows);
                setArrived((count) => count + 1);
              },
              () => pages.delete(page),
            );
        }
      },
    }),
    [pages, engine, source, arrived],
  );
}
