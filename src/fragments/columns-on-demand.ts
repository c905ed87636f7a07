import type { Column } from './table.ts';

/**
 * Columns that are made when they are first asked for, and kept: a question rests on few of a table's columns, and with
 * many records making the others over takes longer than the question. A map like any other for whoever reads it, but of
 * functions: a table that is posted to a worker must hold plain columns.
 *
 * @param ids of all columns there are, in their order.
 */
export function columnsOnDemand(
  ids: Iterable<string>,
  make: (id: string) => Column,
): ReadonlyMap<string, Column> {
  return new ColumnsOnDemand(new Set(ids), make);
}

/** The columns with some more, or with others in the place of some; on demand where they were. */
export function withColumns(
  columns: ReadonlyMap<string, Column>,
  more: Iterable<readonly [id: string, column: Column]>,
): ReadonlyMap<string, Column> {
  const own = new Map(more);
  if (!(columns instanceof ColumnsOnDemand)) return new Map([...columns, ...own]);
  return columnsOnDemand(
    [...columns.keys(), ...own.keys()],
    (id) => own.get(id) ?? (columns.get(id) as Column),
  );
}

class ColumnsOnDemand implements ReadonlyMap<string, Column> {
  private readonly made = new Map<string, Column>();

  constructor(
    private readonly ids: ReadonlySet<string>,
    private readonly make: (id: string) => Column,
  ) {}

  get size(): number {
    return this.ids.size;
  }

  has(id: string): boolean {
    return this.ids.has(id);
  }

  get(id: string): Column | undefined {
    if (!this.ids.has(id)) return undefined;
    const known = this.made.get(id);
    if (known !== undefined) return known;
    const column = this.make(id);
    this.made.set(id, column);
    return column;
  }

  keys(): MapIterator<string> {
    return this.ids.keys();
  }

  values(): MapIterator<Column> {
    return this.all().values();
  }

  entries(): MapIterator<[string, Column]> {
    return this.all().entries();
  }

  [Symbol.iterator](): MapIterator<[string, Column]> {
    return this.entries();
  }

  forEach(call: (column: Column, id: string, columns: ReadonlyMap<string, Column>) => void): void {
    for (const [id, column] of this.all()) call(column, id, this);
  }

  private all(): ReadonlyMap<string, Column> {
    return new Map([...this.ids].map((id) => [id, this.get(id) as Column]));
  }
}
