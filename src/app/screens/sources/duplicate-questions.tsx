import type { PairDecision } from '../../../sources/profile/decisions.ts';
import type { DuplicateView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withDecision } from '../../state/workspace-sources.ts';
import { RowLink } from './row-link.tsx';
import type { Target } from './target.ts';

/** Questions about rows that may be one find; the answers are kept in the study. */

interface DuplicateProps {
  readonly pair: DuplicateView;
  readonly onTarget: (target: Target) => void;
}

const MOST_SAYS = 6;

const PAIR: readonly { readonly id: PairDecision; readonly label: (pair: DuplicateView) => string }[] = [
  { id: 'two-finds', label: () => 'Two finds' },
  { id: 'one-item', label: () => 'Fragments of one item' },
  { id: 'first-only', label: (pair) => `One find: keep ${keptName(pair, 'first')}` },
  { id: 'second-only', label: (pair) => `One find: keep ${keptName(pair, 'second')}` },
];

/** Of two sources one keeps the source's row; within one source the identifier tells the rows apart. */
function keptName({ first, second }: DuplicateView, kept: 'first' | 'second'): string {
  const { source, id } = kept === 'first' ? first : second;
  return first.source === second.source ? id : source;
}

/** One find, published twice, or written down twice in one source? */
export function DuplicateQuestion({ pair, onTarget }: DuplicateProps) {
  const { change } = useWorkbench();
  const { first, second, why, says } = pair;
  return (
    <div className="stack tight">
      <p>
        <strong>{second.id}</strong> (<RowLink row={second.row} onTarget={onTarget} />) may be the same find
        as <strong>{first.id}</strong>{' '}
        {first.source === second.source ? (
          <>
            (<RowLink row={first.row} onTarget={onTarget} />)
          </>
        ) : (
          `of ${first.source}, row ${first.row}`
        )}
        : {why}. Is it?
      </p>
      <dl className="pair-lines small">
        {says.slice(0, MOST_SAYS).map((line) => (
          <div key={line.label}>
            <dt>{line.label}</dt>
            <dd className={line.first === line.second ? '' : 'differs'}>
              {line.first === line.second
                ? line.first
                : `${line.second} here, ${line.first} ${first.source === second.source ? `in row ${first.row}` : 'there'}`}
            </dd>
          </div>
        ))}
      </dl>
      <p className="small soft">Until you answer both are counted.</p>
      <div className="line">
        {PAIR.map(({ id, label }) => (
          <Button
            key={id}
            look="small"
            label={`${second.id} and ${first.id}: ${label(pair)}`}
            onPress={() =>
              change(
                (now) =>
                  withDecision(now, {
                    first: { source: first.source, id: first.id },
                    second: { source: second.source, id: second.id },
                    decision: id,
                  }),
                `${second.id} and ${first.id}: ${label(pair).toLowerCase()}`,
              )
            }
          >
            {label(pair)}
          </Button>
        ))}
      </div>
    </div>
  );
}

const ALL: readonly { readonly id: PairDecision; readonly label: string }[] = [
  { id: 'two-finds', label: 'Different finds' },
  { id: 'one-item', label: 'Fragments of one item' },
  { id: 'first-only', label: 'One find twice: keep the first row' },
  { id: 'second-only', label: 'Keep the last row' },
];

/** One answer for all pairs of rows of one source, where there are many. */
export function DuplicateAllQuestion({ pairs }: { readonly pairs: readonly DuplicateView[] }) {
  const { change } = useWorkbench();
  const decide = (decision: PairDecision, label: string) =>
    change(
      (now) =>
        pairs.reduce(
          (study, { first, second }) =>
            withDecision(study, {
              first: { source: first.source, id: first.id },
              second: { source: second.source, id: second.id },
              decision,
            }),
          now,
        ),
      `${pairs.length} pairs of rows: ${label.toLowerCase()}`,
    );
  return (
    <div className="stack tight">
      <p>
        <strong>{pairs.length} pairs of rows</strong> of this source agree in everything that both have, and
        chance would hardly do that. Are they all of one kind?
      </p>
      <div className="line">
        {ALL.map(({ id, label }) => (
          <Button
            key={id}
            look="small"
            label={`All ${pairs.length} pairs: ${label}`}
            onPress={() => decide(id, label)}
          >
            {label}
          </Button>
        ))}
      </div>
      <p className="small soft">Or answer for each below. Until you answer every row is counted.</p>
    </div>
  );
}
