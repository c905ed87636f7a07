import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withoutDecision } from '../../state/workspace-sources.ts';
import { Sort } from './quality-list.tsx';
import { useProfile } from './use-profile.ts';

const SAID = {
  'one-item': 'fragments of one item',
  'two-finds': 'different finds',
  'first-only': 'one find, the first row is kept',
  'last-only': 'one find, the last row is kept',
  'second-only': 'one find, the second row is kept',
} as const;

/** What was decided about rows that may be one find, each to be asked again. */
export function DecidedRows({ source }: { source: SourceView }) {
  const { workspace, change } = useWorkbench();
  const { edit } = useProfile(source.name);
  const decided = source.repeatedIds.filter(({ decision }) => decision !== null);
  const pairs = (workspace.study.duplicates ?? []).filter(
    ({ first, second }) => first.source === source.name || second.source === source.name,
  );
  return (
    <Sort title="Decisions about rows" count={decided.length + pairs.length}>
      {decided.map(({ id, decision }) => (
        <li key={id}>
          {id}: {SAID[decision ?? 'one-item']}.{' '}
          <Button
            look="plain small"
            label={`Ask again about ${id}`}
            onPress={() =>
              edit(({ repeatedIds, ...profile }) => {
                const { [id]: own, ...ids } = repeatedIds?.ids ?? {};
                // An answer that was given for all is taken back for all.
                return own === undefined
                  ? { ...profile, repeatedIds: { ids } }
                  : { ...profile, repeatedIds: { ...repeatedIds, ids } };
              }, `ask again about ${id}`)
            }
          >
            Ask again
          </Button>
        </li>
      ))}
      {pairs.map((pair) => (
        <li key={`${pair.first.source}:${pair.first.id}:${pair.second.id}`}>
          {pair.first.id} of {pair.first.source} and {pair.second.id} of {pair.second.source}:{' '}
          {SAID[pair.decision]}.{' '}
          <Button
            look="plain small"
            label={`Ask again about ${pair.second.id}`}
            onPress={() => change((now) => withoutDecision(now, pair), `ask again about ${pair.second.id}`)}
          >
            Ask again
          </Button>
        </li>
      ))}
    </Sort>
  );
}
