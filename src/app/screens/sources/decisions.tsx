import type { RepeatedIdDecision } from '../../../sources/profile/decisions.ts';
import type { ColumnReading, RepeatedId } from '../../../sources/source-reading.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withSheet } from '../../state/workspace-sources.ts';
import { RowLink } from './row-link.tsx';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

/** Questions whose answer is kept in the profile or in the study: what rows are, not what columns hold. */

interface DeskProps {
  readonly source: SourceView;
  readonly onTarget: (target: Target) => void;
}

const REPEATED: readonly {
  readonly id: RepeatedIdDecision;
  readonly label: string;
  readonly done: string;
}[] = [
  { id: 'one-item', label: 'Fragments of one item', done: 'fragments of one item' },
  { id: 'two-finds', label: 'Different finds', done: 'different finds' },
  {
    id: 'first-only',
    label: 'The same row twice: keep the first',
    done: 'the same find; the first row is kept',
  },
  { id: 'last-only', label: 'Keep the last', done: 'the same find; the last row is kept' },
];

export function RepeatedQuestion({
  source,
  repeated,
  onTarget,
}: DeskProps & { readonly repeated: RepeatedId }) {
  const { edit } = useProfile(source.name);
  const lines = source.repeatedLines[source.repeatedIds.indexOf(repeated)] ?? [];
  const decide = (decision: RepeatedIdDecision, done: string) =>
    edit(
      ({ repeatedIds, ...profile }) => ({
        ...profile,
        repeatedIds: { ...repeatedIds, ids: { ...repeatedIds?.ids, [repeated.id]: decision } },
      }),
      `“${repeated.id}”: ${done}`,
    );
  return (
    <div className="stack tight">
      <p>
        <strong>{repeated.id}</strong> stands in {repeated.rows.length} rows. What are they?
      </p>
      <ul className="row-lines small">
        {repeated.rows.slice(0, MOST_ROWS).map((row, i) => (
          <li key={row}>
            <RowLink row={row} onTarget={onTarget} />
            <span className="quoted">{brief(lines[i] ?? [])}</span>
          </li>
        ))}
      </ul>
      {repeated.rows.length > MOST_ROWS ? (
        <p className="small soft">and {repeated.rows.length - MOST_ROWS} more rows</p>
      ) : null}
      <p className="small soft">Until you answer, those of one context count as fragments of one item.</p>
      <div className="line">
        {REPEATED.map(({ id, label, done }) => (
          <Button key={id} look="small" label={`${repeated.id}: ${label}`} onPress={() => decide(id, done)}>
            {label}
          </Button>
        ))}
      </div>
    </div>
  );
}

/** One answer for all of them, where there are many. */
export function RepeatedAllQuestion({
  source,
  count,
}: {
  readonly source: SourceView;
  readonly count: number;
}) {
  const { edit } = useProfile(source.name);
  return (
    <div className="stack tight">
      <p>
        <strong>{count} identifiers</strong> stand in several rows. Are they all of one kind?
      </p>
      <div className="line">
        {REPEATED.map(({ id, label, done }) => (
          <Button
            key={id}
            look="small"
            label={`All ${count}: ${label}`}
            onPress={() =>
              edit(
                ({ repeatedIds, ...profile }) => ({ ...profile, repeatedIds: { ...repeatedIds, all: id } }),
                `repeated identifiers: ${done}`,
              )
            }
          >
            {label}
          </Button>
        ))}
        <Button
          look="small"
          label={`All ${count}: several readings of one fragment`}
          onPress={() =>
            edit(
              (profile) => ({ ...profile, layout: { ...profile.layout, gather: true } }),
              'rows with one identifier are readings of one fragment',
            )
          }
        >
          Readings of one fragment
        </Button>
      </div>
      <p className="small soft">Or answer for each below.</p>
    </div>
  );
}

export function BlanksQuestion({ source, column, onTarget }: DeskProps & { readonly column: ColumnReading }) {
  const { column: setRule } = useProfile(source.name);
  const { header, index, blanksBelow = 0 } = column;
  return (
    <div className="stack tight">
      <p>
        <button type="button" className="to-column" onClick={() => onTarget({ row: 0, column: index })}>
          “{header}”
        </button>{' '}
        names each block once; {blanksBelow} {blanksBelow === 1 ? 'cell' : 'cells'} below stand blank. Do
        blanks mean “as above”?
      </p>
      <div className="line">
        <Button
          look="small"
          label={`Blanks in “${header}” mean as above`}
          onPress={() => setRule(header, { copyDown: true }, `blanks in “${header}” mean as above`)}
        >
          As above
        </Button>
        <Button
          look="small"
          label={`Blanks in “${header}” are not recorded`}
          onPress={() => setRule(header, { copyDown: false }, `blanks in “${header}” are not recorded`)}
        >
          Not recorded
        </Button>
      </div>
    </div>
  );
}

export function SheetQuestion({ source }: { readonly source: SourceView }) {
  const { change } = useWorkbench();
  return (
    <div className="stack tight">
      <p>The workbook has {source.sheets.length} sheets with something in them. Which is the table?</p>
      <div className="line">
        {source.sheets.map((sheet) => (
          <Button
            key={sheet}
            look="small"
            onPress={() => change((now) => withSheet(now, source.name, sheet), `read the sheet ${sheet}`)}
          >
            {sheet}
          </Button>
        ))}
      </div>
      <p className="small soft">Further sheets can be added afterwards, each as a table of its own.</p>
    </div>
  );
}

const MOST_ROWS = 4;

function brief(cells: readonly string[]): string {
  const text = cells.filter((cell) => cell.trim() !== '').join(' · ');
  return text.length > 110 ? `${text.slice(0, 109)}…` : text;
}
