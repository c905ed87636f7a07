import type { ResultTable } from '../../../analyses/contract.ts';
import { Cell } from '../../parts/result-table.tsx';

export interface PercentilesProps {
  readonly table: ResultTable;
  /** What the groups are, such as "Site". */
  readonly by: string;
  /** Labels of the attributes to show. */
  readonly of: readonly string[];
}

/** For each measurement of the find, where it stands within each site: a strip from the least to the most. */
export function Percentiles({ table, by, of }: PercentilesProps) {
  const at = (id: string) => table.columns.findIndex((column) => column.id === id);
  const [attribute, grouped, group, n, low, high, outside] = [
    at('attribute'),
    at('by'),
    at('group'),
    at('n'),
    at('low'),
    at('high'),
    at('outside'),
  ];
  const rows = table.rows.filter((row) => row[grouped] === by);
  const attributes = [...new Set(rows.map((row) => String(row[attribute])))].filter((name) =>
    of.includes(name),
  );
  const groups = [...new Set(rows.map((row) => String(row[group])))];
  if (attributes.length === 0) return null;
  return (
    <div className="stack tight">
      <div className="table-frame">
        <table className="table strips">
          <caption>Where its measurements stand within each {by.toLowerCase()}</caption>
          <thead>
            <tr>
              <th scope="col">{by.toLowerCase()}</th>
              {attributes.map((name) => (
                <th scope="col" key={name}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {groups.map((name) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {attributes.map((one) => {
                  const row = rows.find((cells) => cells[attribute] === one && cells[group] === name);
                  if (row === undefined)
                    return (
                      <td key={one} className="soft">
                        –
                      </td>
                    );
                  const [least, most] = [row[low], row[high]];
                  if (typeof least !== 'number' || typeof most !== 'number')
                    return (
                      <td key={one}>
                        <Cell cell={least ?? null} />
                      </td>
                    );
                  return (
                    <td key={one}>
                      <Strip low={least} high={most} />
                      <span className="small">{sayShare(least, most, String(row[outside] ?? 'no'))}</span>{' '}
                      <span className="small soft">n = {String(row[n])}</span>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small soft">
        The mark stands where the find falls between the smallest (left) and the largest (right) of each{' '}
        {by.toLowerCase()}; it is as wide as the ranges of the find and of the records leave it open.
      </p>
    </div>
  );
}

function sayShare(low: number, high: number, outside: string): string {
  if (outside === 'above' || outside === 'below') return `${outside} all of them`;
  const [from, to] = [Math.round(low * 100), Math.round(high * 100)];
  return from === to ? `larger than ${from} %` : `larger than ${from} to ${to} %`;
}

const WIDTH = 110;

function Strip({ low, high }: { low: number; high: number }) {
  const left = 3 + low * (WIDTH - 6);
  const width = Math.max(4, (high - low) * (WIDTH - 6));
  return (
    <svg width={WIDTH} height={14} aria-hidden="true" className="strip">
      <line x1={3} x2={WIDTH - 3} y1={7} y2={7} stroke="var(--neutral)" strokeWidth={2} />
      <line x1={WIDTH / 2} x2={WIDTH / 2} y1={3} y2={11} stroke="var(--neutral)" />
      <rect
        x={Math.min(left, WIDTH - 3 - width)}
        y={1}
        width={width}
        height={12}
        fill="var(--spacing)"
        stroke="var(--ink)"
      />
    </svg>
  );
}
