import { quantitySaid } from '../../../analyses/claims/reading/terms.ts';
import type { JudgedView } from '../../engine/views/claims.ts';
import { Button } from '../../parts/controls.tsx';
import { VerdictMark } from './verdict-mark.tsx';

export interface VerdictWorkingProps {
  readonly judged: JudgedView;
  /** Opens another figure that a check rests on. */
  readonly onOpen: (id: string) => void;
}

const MOST_NAMED = 12;

/** The verdict on one figure, what would explain a difference and settle it, and every check behind it. */
export function VerdictWorking({ judged, onOpen }: VerdictWorkingProps) {
  const { id, quantity, printed, says, why, explained, resolve, checks, verdict } = judged;
  return (
    <section className="stack" aria-label={`Working of ${id}`}>
      <div className="stack tight">
        <p className="verdict-head">
          <VerdictMark verdict={verdict} />
          <span>
            <strong>{says}</strong>{' '}
            <span className="soft small">
              {id}, {quantitySaid(quantity)}, printed “{printed}”
            </span>
          </span>
        </p>
        <p>{why}</p>
      </div>
      {explained === '' ? null : (
        <p>
          Would be explained by <strong>{explained}</strong>.
        </p>
      )}
      {resolve === '' ? null : <p>To settle it: {resolve}</p>}
      {checks.length === 0 ? null : (
        <details open={checks.length <= 3}>
          <summary>
            {checks.length === 1 ? 'The check' : `Every check of this figure (${checks.length})`}
          </summary>
          <ul className="checks">
            {checks.map((check, i) => (
              // The list is made anew with every answer and never reordered.
              <li key={`${i} ${check.name}`} className="stack tight">
                <span className="small">
                  <strong>{check.name}</strong>{' '}
                  <span className="soft">
                    {check.from === 'data' ? 'from the data' : 'from the other printed figures'}:{' '}
                    {check.outcome}
                    {check.rounded === undefined ? '' : ` ${check.rounded}`}
                  </span>
                </span>
                {check.working === why ? null : <span className="small">{check.working}</span>}
                {check.with.length === 0 ? null : (
                  <span className="small soft line">
                    rests on
                    {check.with.slice(0, MOST_NAMED).map((other) => (
                      <Button key={other} look="plain small" onPress={() => onOpen(other)}>
                        {other}
                      </Button>
                    ))}
                    {check.with.length > MOST_NAMED ? `and ${check.with.length - MOST_NAMED} more` : ''}
                  </span>
                )}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
