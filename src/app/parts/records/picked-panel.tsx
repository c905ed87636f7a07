import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { Button } from '../controls.tsx';
import { PairPanel } from './pair-panel.tsx';
import { RecordPanel } from './record-panel.tsx';

/** What is known about the records that are picked: one in full, two against each other, more as a list. */
export function PickedPanel({ analysis }: { analysis: StudyAnalysis | null }) {
  const { picked, pick } = useWorkbench();
  const [first, second] = picked;
  if (first === undefined)
    return (
      <p className="soft small">
        Click a point, or a name in a table, to see its cells and where they came from. Hold Shift for a
        second one and see why the two are alike. Box or lasso in the figure picks many.
      </p>
    );
  return (
    <div className="stack">
      <div className="line apart">
        <span className="small">
          {picked.length === 1 ? 'One record picked' : `${picked.length} records picked`}
        </span>
        <Button look="plain small" onPress={() => pick([])}>
          Let go
        </Button>
      </div>
      {picked.length === 2 && second !== undefined && analysis !== null ? (
        <PairPanel left={first} right={second} analysis={analysis} />
      ) : null}
      {picked.length > 2 ? (
        <ul className="picked-list">
          {picked.map((id) => (
            <li key={id}>
              <Button look="plain small" onPress={() => pick([id])}>
                {id}
              </Button>
            </li>
          ))}
        </ul>
      ) : picked.length === 1 ? (
        <RecordPanel id={first} />
      ) : (
        picked.map((id) => (
          <Disclosure key={id}>
            <Heading level={3} className="plain-head">
              <AriaButton slot="trigger" className="button plain small">
                All cells of {id}
              </AriaButton>
            </Heading>
            <DisclosurePanel>
              <RecordPanel id={id} />
            </DisclosurePanel>
          </Disclosure>
        ))
      )}
    </div>
  );
}

/** Adding to what is picked: Shift keeps the one before, so that a pair can be compared. */
export function pickedAfter(
  before: readonly string[],
  ids: readonly string[],
  add: boolean,
): readonly string[] {
  const [only] = ids;
  if (ids.length !== 1 || only === undefined) return ids;
  if (!add) return before.length === 1 && before[0] === only ? [] : [only];
  return before.includes(only) ? before.filter((id) => id !== only) : [...before.slice(-1), only];
}
