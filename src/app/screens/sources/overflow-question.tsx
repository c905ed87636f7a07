import type { LayoutRule } from '../../../sources/profile/layout-rules.ts';
import type { TooLongRows } from '../../../sources/source-reading.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { RowLink } from './row-link.tsx';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

interface OverflowProps {
  readonly source: SourceView;
  readonly onTarget: (target: Target) => void;
}

const MOST_ROWS = 5;

/** Rows with more cells than there are headings, each of which may hold the sign that parts the cells. */
export function OverflowQuestion({
  source,
  tooLong: { rows, column, mayJoin },
  onTarget,
}: OverflowProps & { readonly tooLong: TooLongRows }) {
  const { edit } = useProfile(source.name);
  const decide = (raggedRows: LayoutRule['raggedRows'], done: string) =>
    edit((profile) => ({ ...profile, layout: { ...profile.layout, raggedRows } }), done);
  return (
    <div className="stack tight">
      <p>
        {rows.length === 1 ? 'One row has' : `${rows.length} rows have`} more cells than there are headings
        {mayJoin ? `, as if “${column}” held the sign that parts them` : ''}. How are they to be read?
      </p>
      <p className="small soft">
        {rows.slice(0, MOST_ROWS).map((row) => (
          <span key={row}>
            <RowLink row={row} onTarget={onTarget} />{' '}
          </span>
        ))}
        {rows.length > MOST_ROWS ? `and ${rows.length - MOST_ROWS} more. ` : ''}Until you answer, they are set
        aside.
      </p>
      <div className="line">
        {mayJoin ? (
          <Button
            look="small"
            label={`Rows that are too long: join the rest to “${column}”`}
            onPress={() => decide('join-last', `the rest of long rows joined to “${column}”`)}
          >
            Join the rest to “{column}”
          </Button>
        ) : null}
        <Button
          look="small"
          label="Rows that are too long: read as many cells as there are headings"
          onPress={() => decide('pad', 'long rows read as far as the headings go')}
        >
          Read as far as the headings go
        </Button>
        <Button
          look="small"
          label="Rows that are too long: leave them aside"
          onPress={() => decide('set-aside', 'long rows left aside')}
        >
          Leave them aside
        </Button>
      </div>
    </div>
  );
}

/** What was joined is said; the ledger has the reason of each. */
export function JoinedNote({ source, onTarget }: OverflowProps) {
  const joined = source.ledger.filter(({ rule }) => rule === 'overflow-joined');
  const [first] = joined;
  if (first === undefined) return null;
  return (
    <p className="small soft">
      {joined.length === 1 ? 'In one row' : `In ${joined.length} rows`} what stood beyond the headings was
      joined to “{first.column}” (the ledger says why):{' '}
      {joined.slice(0, MOST_ROWS).map(({ row }) => (
        <span key={row}>
          <RowLink row={row} onTarget={onTarget} />{' '}
        </span>
      ))}
      {joined.length > MOST_ROWS ? `and ${joined.length - MOST_ROWS} more` : ''}
    </p>
  );
}
