import type { CompoundName } from '../../../sources/names/compound-names.ts';
import type { NameDecision } from '../../../sources/names/name-decision.ts';
import type { NearNames } from '../../../sources/names/near-names.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withName } from '../../state/workspace-sources.ts';

/** Which names are spellings of one, and which are made up of others; the answers are kept with the study. */

/** Pairs of names that may be one. */
export function NearQuestions() {
  const { view } = useWorkbench();
  return (
    <ul className="stack tight">
      {(view?.nearNames ?? []).map((pair) => (
        <NamePair key={pair.names.join('\n')} pair={pair} />
      ))}
    </ul>
  );
}

/** Names that may be made up of others. */
export function CompoundQuestions() {
  const { view } = useWorkbench();
  return (
    <ul className="stack tight">
      {(view?.compoundNames ?? [])
        .filter(({ settled }) => !settled)
        .map((made) => (
          <MadeName key={`${made.attribute}\n${made.name}`} made={made} />
        ))}
    </ul>
  );
}

function useDecide() {
  const { change } = useWorkbench();
  return (decision: NameDecision, what: string) => change((now) => withName(now, decision), what);
}

function NamePair({ pair: { attribute, names, why } }: { pair: NearNames }) {
  const decide = useDecide();
  const [kept, other] = names;
  return (
    <li>
      “{kept}” and “{other}”: {why}.
      <div className="line">
        <Button
          look="small"
          onPress={() => decide({ attribute, name: kept, also: [other], not: [] }, `one name: ${kept}`)}
        >
          {`Both are ${kept}`}
        </Button>
        <Button
          look="small"
          onPress={() => decide({ attribute, name: kept, also: [], not: [other] }, `two names: ${kept}`)}
        >
          {`${kept} and ${other} are two`}
        </Button>
      </div>
    </li>
  );
}

function MadeName({ made: { attribute, name, of, records } }: { made: CompoundName }) {
  const decide = useDecide();
  return (
    <li>
      “{name}” ({records} {records === 1 ? 'fragment' : 'fragments'}): made up of {of.join(' and ')}?
      <div className="line">
        <Button
          look="small"
          label={`${name}: one of ${of.join(', ')}, not known which`}
          onPress={() =>
            decide({ attribute, name, also: [], not: [], oneOf: [...of] }, `${name}: one of several`)
          }
        >
          One of them, not known which
        </Button>
        {of.map((one) => (
          <Button
            key={one}
            look="small"
            label={`${name} is ${one}`}
            onPress={() => decide({ attribute, name: one, also: [name], not: [] }, `${name} is ${one}`)}
          >
            {`It is ${one}`}
          </Button>
        ))}
        <Button
          look="small"
          label={`${name} is a name of its own`}
          onPress={() => decide({ attribute, name, also: [], not: [...of] }, `${name} is a name of its own`)}
        >
          A name of its own
        </Button>
      </div>
    </li>
  );
}
