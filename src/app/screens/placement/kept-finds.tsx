import { Button as AriaButton } from 'react-aria-components';
import { Button, Entry } from '../../parts/controls.tsx';
import { useDraft, useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis, withoutAnalysis } from '../../state/workspace.ts';

export interface KeptFindsProps {
  readonly placements: readonly StudyAnalysis[];
  readonly open: StudyAnalysis;
  readonly onOpen: (id: string) => void;
}

const titleOf = (placement: StudyAnalysis) => String(placement.title ?? `find “${placement.id}”`);

/** The finds that the study keeps; each is a placement that the command line runs too. */
export function KeptFinds({ placements, open, onOpen }: KeptFindsProps) {
  const { change } = useWorkbench();
  const add = (like: StudyAnalysis, find: unknown, title: string) => {
    const taken = new Set(placements.map(({ id }) => id));
    let count = placements.length + 1;
    while (taken.has(`find-${count}`)) count++;
    const id = `find-${count}`;
    change(
      (now) => withAnalysis(now, { ...like, id, title: title === '' ? `Find ${count}` : title, find }),
      'a new find',
    );
    onOpen(id);
  };
  const isKept = placements.some(({ id }) => id === open.id);
  return (
    <div className="stack">
      {placements.length < 2 ? null : (
        <ul className="kept-finds" aria-label="Finds that are kept">
          {placements.map((placement) => (
            <li key={placement.id}>
              <AriaButton
                className="source-way"
                {...(placement.id === open.id ? { 'aria-current': 'true' as const } : {})}
                onPress={() => onOpen(placement.id)}
              >
                {titleOf(placement)}
              </AriaButton>
            </li>
          ))}
        </ul>
      )}
      <Name key={open.id} placement={open} />
      <div className="line">
        <Button look="small" onPress={() => add({ ...open, id: '', kind: 'placement' }, {}, '')}>
          New find
        </Button>
        {isKept ? (
          <>
            <Button look="small" onPress={() => add(open, open.find, `${titleOf(open)}, copy`)}>
              Copy
            </Button>
            <Button
              look="plain small"
              onPress={() => change((now) => withoutAnalysis(now, open.id), `let ${titleOf(open)} go`)}
            >
              Let go
            </Button>
          </>
        ) : null}
      </div>
    </div>
  );
}

function Name({ placement }: { placement: StudyAnalysis }) {
  const { change } = useWorkbench();
  return (
    <Rename
      place={`name of ${placement.id}`}
      title={titleOf(placement)}
      onDone={(title) =>
        change((now) => withAnalysis(now, { ...placement, title }), `call the find “${title}”`)
      }
    />
  );
}

function Rename({ place, title, onDone }: { place: string; title: string; onDone: (title: string) => void }) {
  const [typed, setText] = useDraft<string>(place);
  const text = typed ?? title;
  return (
    <Entry
      label="Name of the find"
      value={text}
      onChange={setText}
      onDone={() => {
        const next = text.trim();
        setText(undefined);
        if (next !== '' && next !== title) onDone(next);
      }}
    />
  );
}
