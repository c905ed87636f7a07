import type { AlignedColumn, ProposedJoin } from '../../../sources/combine/align.ts';
import { TEXT_COLUMN_PREFIX } from '../../../sources/reading/assemble.ts';
import { Button } from '../../parts/controls.tsx';
import { Part } from '../../parts/screen.tsx';
import { ScrollRegion } from '../../parts/scroll-region.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withProfile } from '../../state/workspace-sources.ts';
import { ownProfile } from './use-profile.ts';

/** Columns of one meaning that are listed; the others are counted. */
const LISTED = 40;

/** Several tables side by side: which of their columns mean the same, and which of them may describe the rows of another. */
export function SideBySide() {
  const { view } = useWorkbench();
  if (view === null || view.sources.length < 2) return null;
  const { aligned, joins } = view;
  const more = aligned.length - LISTED;
  return (
    <Part name="more" title="The tables side by side">
      <div className="stack">
        {joins.map((join) => (
          <Join key={`${join.finds}\n${join.describing}`} join={join} />
        ))}
        {aligned.length === 0 ? (
          <p>No column means the same in two of the tables, so nothing can be compared across them yet.</p>
        ) : (
          <ScrollRegion name="Columns of the same meaning" className="table-frame">
            <table className="table">
              <thead>
                <tr>
                  <th scope="col">what it says</th>
                  {view.sources.map(({ name }) => (
                    <th key={name} scope="col">
                      {name}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {aligned.slice(0, LISTED).map((column) => (
                  <Aligned key={column.id} column={column} names={view.sources.map(({ name }) => name)} />
                ))}
              </tbody>
            </table>
          </ScrollRegion>
        )}
        {more > 0 ? <p className="small soft">and {more} more</p> : null}
      </div>
    </Part>
  );
}

function Aligned({ column, names }: { column: AlignedColumn; names: readonly string[] }) {
  return (
    <tr>
      <th scope="row">{column.label}</th>
      {names.map((name, place) => (
        <td key={name}>{column.headers[place] === '' ? '·' : column.headers[place]}</td>
      ))}
    </tr>
  );
}

/** One table that names each key once, and the share of the other's keys that it has. */
function Join({ join }: { join: ProposedJoin }) {
  const { view, change } = useWorkbench();
  const { finds, describing, by, label, keys, matched } = join;
  const joined = view?.sources.find(({ name }) => name === describing)?.role === 'assemblages';
  const take = () =>
    change((now) => {
      const profile = ownProfile(now, describing);
      return withProfile(now, describing, { ...profile, role: 'assemblages', joinBy: [by] });
    }, `join ${describing} by ${label.toLowerCase()}`);
  return (
    <div className="line">
      <span>
        {joined
          ? `${describing} describes the rows of ${finds} by ${label.toLowerCase()} and is joined to them: ${matched} of ${keys} are in it.`
          : `${describing} may describe the rows of ${finds} by ${label.toLowerCase()}: ${matched} of ${keys} are in it.`}
      </span>
      {joined ? null : by.startsWith(TEXT_COLUMN_PREFIX) ? (
        <span className="small soft">
          Say in both tables what that column holds, and they can be joined by it.
        </span>
      ) : (
        <Button look="small" label={`Join ${describing} to ${finds}`} onPress={take}>
          Join them
        </Button>
      )}
    </div>
  );
}
