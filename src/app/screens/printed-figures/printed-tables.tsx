import type { ClaimsView } from '../../engine/views/claims.ts';
import { Button, Choice } from '../../parts/controls.tsx';
import type { TableSaid } from './table-said.ts';

export interface PrintedTablesProps {
  readonly tables: readonly TableSaid[];
  /** File -> why it cannot be read. */
  readonly faults: Readonly<Record<string, string>>;
  /** What the worker made of each table. */
  readonly read: readonly ReadView[];
  /** Attributes of the data; none where the tables are held against each other only. */
  readonly attributes: readonly { readonly id: string; readonly label: string }[];
  readonly onEdit: (file: string) => void;
  readonly onChange: (tables: readonly TableSaid[], what: string) => void;
}

export type ReadView = ClaimsView['printed'][number];

const ASKED = [
  ['rows', 'Rows are'],
  ['columns', 'Columns are'],
  ['attribute', 'Means of'],
] as const;

/** The whole printed tables of a list, and what of the data they are of. */
export function PrintedTables({ tables, faults, read, attributes, onEdit, onChange }: PrintedTablesProps) {
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
          <ColumnRoles
            view={read.find(({ file }) => file === table.file)}
            onRole={(head, role) =>
              onChange(
                tables.with(place, { ...table, roles: { ...table.roles, [head]: role } }),
                `what “${head}” holds`,
              )
            }
          />
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

const ROLES: readonly (readonly [id: string, label: string])[] = [
  ['n', 'number of records'],
  ['count', 'counts'],
  ['share', 'per cents'],
  ['mean', 'means'],
  ['sd', 'standard deviations'],
  ['se', 'standard errors'],
  ['cv', 'coefficients of variation'],
  ['median', 'medians'],
  ['min', 'smallest readings'],
  ['max', 'largest readings'],
  ['range', 'ranges'],
  ['interval', 'confidence intervals'],
  ['not part', 'no part of the sums'],
  ['unknown', 'not told'],
];

/** What each column was taken for, to be confirmed or corrected, and what was not read. */
function ColumnRoles({
  view,
  onRole,
}: {
  readonly view: ReadView | undefined;
  readonly onRole: (head: string, role: string) => void;
}) {
  if (view === undefined || view.fault !== null) return null;
  const label = (role: string) => ROLES.find(([id]) => id === role)?.[1] ?? role;
  return (
    <>
      {view.unread.length === 0 ? null : (
        <p className="small fault" role="status">
          Not read: {view.unread.join('; ')}
        </p>
      )}
      {view.ofData.length === 0 ? null : (
        <p className="small">Held against the records by {view.ofData.join(', ')}.</p>
      )}
      <details>
        <summary className="small">
          Read as: {view.columns.map(({ head, role }) => `${head}: ${label(role)}`).join('; ')}
        </summary>
        <div className="stack tight">
          {view.columns.map(({ head, role }) => (
            <Choice
              key={head}
              label={`“${head}” holds`}
              options={[
                ...ROLES.map(([id, name]) => ({ id, label: name })),
                ...(ROLES.some(([id]) => id === role) ? [] : [{ id: role, label: role }]),
              ]}
              value={role}
              onChange={(next) => onRole(head, next)}
            />
          ))}
        </div>
      </details>
    </>
  );
}
