import { Button, Choice } from '../../parts/controls.tsx';
import type { TableSaid } from './bring.tsx';

export interface PrintedTablesProps {
  readonly tables: readonly TableSaid[];
  /** File -> why it cannot be read. */
  readonly faults: Readonly<Record<string, string>>;
  /** Attributes of the data; none where the tables are held against each other only. */
  readonly attributes: readonly { readonly id: string; readonly label: string }[];
  readonly onEdit: (file: string) => void;
  readonly onChange: (tables: readonly TableSaid[], what: string) => void;
}

const ASKED = [
  ['rows', 'Rows are'],
  ['columns', 'Columns are'],
  ['attribute', 'Means of'],
] as const;

/** The whole printed tables of a list, and what of the data they are of. */
export function PrintedTables({ tables, faults, attributes, onEdit, onChange }: PrintedTablesProps) {
  if (tables.length === 0) return null;
  const options = [{ id: '', label: 'not said' }, ...attributes];
  return (
    <ul className="kept-finds" aria-label="Printed tables">
      {tables.map((table, place) => (
        <li key={table.file} className="stack tight">
          <div className="line apart">
            <Button
              look="plain small"
              label={`Open the table ${table.file}`}
              onPress={() => onEdit(table.file)}
            >
              {table.file}
            </Button>
            <Button
              look="plain small"
              label={`Remove the table ${table.file}`}
              onPress={() => onChange(tables.toSpliced(place, 1), 'without the table')}
            >
              remove
            </Button>
          </div>
          {faults[table.file] === undefined ? null : <p className="small fault">{faults[table.file]}</p>}
          {attributes.length === 0
            ? null
            : ASKED.map(([part, label]) => (
                <Choice
                  key={part}
                  label={`${label}`}
                  options={options}
                  value={table[part] ?? ''}
                  onChange={(id) => {
                    const { [part]: _before, ...rest } = table;
                    const said = id === '' ? rest : { ...rest, [part]: id };
                    onChange(tables.with(place, said), 'what the table is of');
                  }}
                />
              ))}
        </li>
      ))}
    </ul>
  );
}
