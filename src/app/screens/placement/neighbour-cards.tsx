import { Button } from 'react-aria-components';
import { greatest } from '../../../numerics/foundation/lists.ts';
import { Fringe } from '../../parts/fringe.tsx';
import { useLabels } from '../../parts/use-labels.ts';
import type { NeighbourRow } from './placement-answer.ts';

export interface NeighbourCardsProps {
  readonly neighbours: readonly NeighbourRow[];
  readonly picked: readonly string[];
  readonly onPick: (id: string, add: boolean) => void;
}

const SAID = ['kind', 'structure', 'site', 'phase', 'period', 'recordedUse', 'useBasis'];
const BLOCKS = ['structure', 'spacing', 'fibre'];

/** The nearest comparanda, each with how far it is and which part the distance comes from. */
export function NeighbourCards({ neighbours, picked, onPick }: NeighbourCardsProps) {
  const labels = useLabels(SAID);
  const rows = new Map(labels?.ids.map((id, row) => [id, row]));
  const most = Math.max(
    0.05,
    greatest(neighbours.flatMap(({ blocks }) => BLOCKS.map((block) => blocks[block] ?? 0))),
  );
  return (
    <ol className="cards">
      {neighbours.map((neighbour) => {
        const row = rows.get(neighbour.id);
        const said = (name: string) => (row === undefined ? '' : (labels?.labels[name]?.[row] ?? ''));
        const place = [said('site'), said('phase') || said('period')]
          .filter((text) => text !== '')
          .join(', ');
        const use = said('recordedUse');
        const basis = said('useBasis');
        const shares = BLOCKS.map((block) => ({ block, share: neighbour.blocks[block] ?? null }));
        return (
          <li key={neighbour.id} className={picked.includes(neighbour.id) ? 'card chosen' : 'card'}>
            <Fringe
              label={`What each part adds to the distance: ${shares
                .map(({ block, share }) => `${block} ${share === null ? 'not comparable' : share.toFixed(3)}`)
                .join(', ')}`}
              pitch={14}
              height={40}
              threads={shares.map(({ block, share }) => ({
                label: block,
                share: share === null ? null : share / most,
                colour: `var(--${block})`,
              }))}
            />
            <div className="stack tight">
              <div className="line apart">
                <Button
                  className="to-column"
                  onPress={(event) => onPick(neighbour.id, event.shiftKey || event.ctrlKey || event.metaKey)}
                  aria-pressed={picked.includes(neighbour.id)}
                >
                  {neighbour.id}
                </Button>
                <span className="small">distance {neighbour.distance.toFixed(3)}</span>
              </div>
              <span className="small">{said('kind') || said('structure') || 'structure not recorded'}</span>
              <span className="small soft">{place === '' ? 'site not recorded' : place}</span>
              {use === '' ? null : (
                <span className="small soft">
                  recorded as {use}
                  {basis === '' ? '; how that was known is not recorded' : `, known by ${basis}`}
                </span>
              )}
              {neighbour.span === null ? null : (
                <span className="small soft">
                  {neighbour.span.map((end) => end.toFixed(3)).join(' to ')} as broad terms are read
                </span>
              )}
              {neighbour.notCompared === '' ? null : (
                <span className="small soft">
                  compared on {neighbour.comparedOn} attributes; not recorded: {neighbour.notCompared}
                </span>
              )}
            </div>
          </li>
        );
      })}
    </ol>
  );
}
