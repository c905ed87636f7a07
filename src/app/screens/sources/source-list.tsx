import { Button as AriaButton } from 'react-aria-components';
import { sourceName } from '../../../study/source-name.ts';
import { Button } from '../../parts/controls.tsx';
import { Crossing } from '../../parts/fringe.tsx';
import { FaultNote } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withoutSource } from '../../state/workspace-sources.ts';
import { questionsOf } from './question-list.ts';
import { useOpenFiles } from './use-open-files.ts';
import { FileDrop } from './welcome.tsx';

/** The tables of the study, each with what it still asks. */
export function SourceList({ chosen, onChoose }: { chosen: number; onChoose: (index: number) => void }) {
  const { workspace, view, change, startOver } = useWorkbench();
  const { open, fault } = useOpenFiles();
  const { sources } = workspace.study;
  const current = sources[chosen];
  return (
    <div className="stack">
      <ul className="source-list">
        {sources.map((source, i) => {
          const read = view?.sources[i];
          const asked = read === undefined ? 0 : questionsOf(read, view?.duplicates ?? []).length;
          return (
            <li key={sourceName(source)}>
              <AriaButton
                className="source-way"
                {...(i === chosen ? { 'aria-current': 'true' as const } : {})}
                onPress={() => onChoose(i)}
              >
                <span className="source-name">{sourceName(source)}</span>
                <span className="small soft">
                  {read === undefined
                    ? 'not read yet'
                    : read.gridRows === 0
                      ? read.sheets.length > 1
                        ? 'which sheet?'
                        : 'could not be read'
                      : `${read.rowsKept} rows${read.role === 'assemblages' ? ' of sites and periods' : ''}`}
                </span>
                {asked === 0 ? null : (
                  <span className="small asked">
                    <Crossing size={12} /> {asked} {asked === 1 ? 'question' : 'questions'}
                  </span>
                )}
              </AriaButton>
            </li>
          );
        })}
      </ul>
      <FileDrop onFiles={open} />
      {fault === null ? null : <FaultNote text={fault} />}
      <div className="stack tight">
        {current === undefined ? null : (
          <Button
            look="plain small"
            onPress={() =>
              change((now) => withoutSource(now, sourceName(current)), `take out ${sourceName(current)}`)
            }
          >
            Take out {sourceName(current)}
          </Button>
        )}
        <Button look="plain small" onPress={startOver}>
          Close and forget everything on this machine
        </Button>
      </div>
    </div>
  );
}
