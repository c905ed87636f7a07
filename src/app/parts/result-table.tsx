import { useVirtualizer } from '@tanstack/react-virtual';
import { useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { ResultTable, TableCell } from '../../analyses/contract.ts';
import { columnHead, type TableNumber, tablePrinter } from '../../analyses/table-numbers.ts';
import { tableCsv } from '../../report/table-csv.ts';
import { download, fileStem } from '../files.ts';
import { Button as SaveButton } from './controls.tsx';
import { readable } from './numbers.ts';
import { ScrollRegion } from './scroll-region.tsx';

export interface ResultTableProps {
  readonly table: ResultTable;
  /** Column whose text names the record of a row; rows are then pickable. */
  readonly pickBy?: string;
  readonly picked?: readonly string[];
  readonly onPick?: (id: string, add: boolean) => void;
  readonly height?: number;
}

const ROW = 28;
/** Shorter tables are drawn whole. */
const MOST_DRAWN_WHOLE = 120;

/** A result as a table: sortable by any column, figures aligned, only the rows in sight drawn. */
export function ResultTableView({ table, pickBy, picked, onPick, height = 360 }: ResultTableProps) {
  const [order, setOrder] = useState<{ column: number; down: boolean } | null>(null);
  const frame = useRef<HTMLDivElement>(null);
  const printer = useMemo(() => tablePrinter(table), [table]);
  const rows = useMemo(() => sorted(table.rows, order), [table.rows, order]);
  const pickColumn = pickBy === undefined ? -1 : table.columns.findIndex((column) => column.id === pickBy);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => frame.current,
    estimateSize: () => ROW,
    overscan: rows.length <= MOST_DRAWN_WHOLE ? MOST_DRAWN_WHOLE : 12,
    initialRect: { width: 600, height },
  });
  const seen = virtual.getVirtualItems();
  const before = seen[0]?.start ?? 0;
  const after = virtual.getTotalSize() - (seen.at(-1)?.end ?? 0);
  return (
    <div className="stack tight">
      <ScrollRegion name={table.title} className="table-frame" ref={frame} style={{ maxHeight: height }}>
        <table className="table" aria-rowcount={rows.length}>
          <caption>{table.title}</caption>
          <thead>
            <tr>
              {table.columns.map((column, i) => (
                <th
                  key={column.id}
                  scope="col"
                  className={isNumeric(table, i) ? 'number' : ''}
                  aria-sort={order?.column === i ? (order.down ? 'descending' : 'ascending') : 'none'}
                >
                  <Button
                    className="sort"
                    onPress={() =>
                      setOrder(
                        order?.column === i ? { column: i, down: !order.down } : { column: i, down: false },
                      )
                    }
                  >
                    {columnHead(column)}
                    <span aria-hidden="true">{order?.column === i ? (order.down ? ' ↓' : ' ↑') : ''}</span>
                  </Button>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {before > 0 ? <Spacer height={before} columns={table.columns.length} /> : null}
            {seen.map((item) => {
              const row = rows[item.index] ?? [];
              const id = pickColumn < 0 ? undefined : String(row[pickColumn]);
              return (
                <tr
                  key={item.key}
                  data-index={item.index}
                  ref={virtual.measureElement}
                  aria-rowindex={item.index + 1}
                  data-picked={id !== undefined && picked?.includes(id) ? true : undefined}
                >
                  {table.columns.map((column, i) => (
                    <td
                      key={column.id}
                      className={
                        i === pickColumn ? 'name' : isNumeric(table, i) ? 'number' : textClass(row[i])
                      }
                    >
                      {i === pickColumn && id !== undefined && onPick !== undefined ? (
                        <PickButton id={id} picked={picked?.includes(id) ?? false} onPick={onPick} />
                      ) : (
                        <Cell cell={row[i] ?? null} print={printer(row, i)} />
                      )}
                    </td>
                  ))}
                </tr>
              );
            })}
            {after > 0 ? <Spacer height={after} columns={table.columns.length} /> : null}
          </tbody>
        </table>
      </ScrollRegion>
      <div className="line note-and-file">
        <p className="small soft">{table.note}</p>
        <SaveButton
          look="plain small"
          label={`Save the table "${table.title}" as CSV`}
          onPress={() => download(`${fileStem(table.title)}.csv`, tableCsv(table), 'text/csv')}
        >
          CSV
        </SaveButton>
      </div>
    </div>
  );
}

function PickButton({
  id,
  picked,
  onPick,
}: {
  id: string;
  picked: boolean;
  onPick: (id: string, add: boolean) => void;
}) {
  return (
    <Button
      className="pick"
      aria-pressed={picked}
      onPress={(event) => onPick(id, event.shiftKey || event.ctrlKey || event.metaKey)}
    >
      {id}
    </Button>
  );
}

function Spacer({ height, columns }: { height: number; columns: number }) {
  return (
    <tr>
      <td colSpan={columns} style={{ height, padding: 0, border: 0 }} />
    </tr>
  );
}

export function Cell({ cell, print = plain }: { cell: TableCell; print?: (value: number) => TableNumber }) {
  if (cell === null) return <span className="soft">–</span>;
  if (typeof cell === 'number') {
    const { text, full } = print(cell);
    return <span title={full}>{text}</span>;
  }
  if (typeof cell === 'boolean') return <>{cell ? 'yes' : 'no'}</>;
  if (typeof cell === 'string') return <>{cell}</>;
  return <span className="why">{cell.why}</span>;
}

function plain(value: number): TableNumber {
  return { text: readable(value), full: String(value) };
}

/** Texts of more than a few words get room, so that they do not stand one word a line. */
const LONG = 40;

function textClass(cell: TableCell | undefined): string {
  const text = typeof cell === 'string' ? cell : typeof cell === 'object' ? (cell?.why ?? '') : '';
  return text.length > LONG ? 'text long' : 'text';
}

function isNumeric(table: ResultTable, column: number): boolean {
  const cells = table.rows
    .map((row) => row[column])
    .filter((cell) => cell !== null && typeof cell !== 'object');
  return cells.length > 0 && cells.every((cell) => typeof cell === 'number');
}

function sorted(
  rows: ResultTable['rows'],
  order: { column: number; down: boolean } | null,
): ResultTable['rows'] {
  if (order === null) return rows;
  const sign = order.down ? -1 : 1;
  return [...rows].sort((a, b) => {
    const [x, y] = [a[order.column] ?? null, b[order.column] ?? null];
    const [gapX, gapY] = [x === null || typeof x === 'object', y === null || typeof y === 'object'];
    if (gapX || gapY) return Number(gapX) - Number(gapY);
    if (typeof x === 'number' && typeof y === 'number') return sign * (x - y);
    return sign * String(x).localeCompare(String(y), 'en', { numeric: true });
  });
}
