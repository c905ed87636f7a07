import { useState } from 'react';
import type { WitnessCandidate } from '../../../sources/names/witness-candidates.ts';
import { Button, Entry, Toggles } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withStudy } from '../../state/workspace.ts';
import { type ColumnChosen, choiceOf, withWitnessColumns } from './witness-columns.ts';

const LONGEST_NOUN = 40;
const NONE = 'none';

/**
 * What counts as one? Asked once, of all sources together: the columns that may name the object with what speaks for
 * and against each, none of them taken before somebody says so, and what one is called.
 *
 * @param suggested whether something is read as numbers of objects already.
 */
export function WitnessQuestion({ suggested }: { suggested: boolean }) {
  const { view, workspace, change } = useWorkbench();
  const [noun, setNoun] = useState(workspace.study.witness?.noun ?? 'item');
  const [chosen, setChosen] = useState<ReadonlyMap<string, ColumnChosen>>(new Map());
  const sources = (view?.sources ?? []).filter(({ witness }) => witness.length > 0);
  const item = new Map(
    sources.flatMap(({ name, columns }) => {
      const own = columns.find(({ attributes }) => attributes.includes('item'));
      return own === undefined ? [] : [[name, own.header] as const];
    }),
  );
  const columns = [...chosen.values()].filter((one) => one !== null);
  return (
    <div className="stack tight">
      {sources.map(({ name, witness }) => (
        <Candidates
          key={name}
          source={name}
          candidates={witness}
          chosen={chosen.get(name)}
          onChoose={(one) => setChosen(new Map(chosen).set(name, one))}
        />
      ))}
      <Entry
        label="What one is called"
        value={noun}
        onChange={(text) => setNoun(text.slice(0, LONGEST_NOUN))}
        proposals={{ id: 'nouns', options: [] }}
        placeholder="item, vessel, grave"
      />
      <div className="line">
        {sources.length === 0 ? null : (
          <Button
            look="small"
            disabled={columns.length === 0}
            onPress={() =>
              change(
                (now) => withWitnessColumns(now, chosen, item, noun),
                `what names the ${choiceOf('column', noun, undefined).noun}`,
              )
            }
          >
            {columns.length === 0
              ? 'Confirm the columns chosen'
              : `${columns.map(({ header }) => `“${header}”`).join(' and ')} ${columns.length === 1 ? 'names' : 'name'} the object`}
          </Button>
        )}
        {suggested ? (
          <Button
            look="small"
            onPress={() =>
              change(
                (now) => withStudy(now, { witness: choiceOf('column', noun, now.study.witness) }),
                'the numbers name the objects',
              )
            }
          >
            Yes, these numbers name the objects
          </Button>
        ) : null}
        <Button
          look="small"
          onPress={() =>
            change(
              (now) => withStudy(now, { witness: choiceOf('row', noun, now.study.witness) }),
              'each row is an object',
            )
          }
        >
          Each row is an object of its own
        </Button>
      </div>
    </div>
  );
}

interface CandidatesProps {
  readonly source: string;
  readonly candidates: readonly WitnessCandidate[];
  readonly chosen: ColumnChosen | undefined;
  readonly onChoose: (one: ColumnChosen) => void;
}

function Candidates({ source, candidates, chosen, onChoose }: CandidatesProps) {
  return (
    <div className="stack tight">
      <p>Which column of {source} names the object that a row is of?</p>
      <ul className="stack tight">
        {candidates.map(({ header, says }) => (
          <li key={header}>
            “{header}”, {says}
          </li>
        ))}
      </ul>
      <Toggles
        label={`Column of ${source} that names the object`}
        options={[
          ...candidates.map(({ header }, at) => ({ id: String(at), label: header })),
          { id: NONE, label: 'None of these' },
        ]}
        value={chosen === undefined ? '' : chosen === null ? NONE : String(candidates.indexOf(chosen))}
        onChange={(id) => onChoose(id === NONE ? null : (candidates[Number(id)] ?? null))}
      />
    </div>
  );
}
