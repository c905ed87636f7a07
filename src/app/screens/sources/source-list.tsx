import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { Button } from '../../parts/controls.tsx';
import { Crossing } from '../../parts/fringe.tsx';
import { FaultNote } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withoutSource } from '../../state/workspace.ts';
import { questionsOf } from './questions.tsx';
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
          const asked = read === undefined ? 0 : questionsOf(read).length;
          return (
            <li key={source.file}>
              <AriaButton
                className="source-way"
                {...(i === chosen ? { 'aria-current': 'true' as const } : {})}
                onPress={() => onChoose(i)}
              >
                <span className="source-name">{source.file}</span>
                <span className="small soft">
                  {read === undefined
                    ? 'not read yet'
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
      {view === null || view.faults.length === 0 ? null : (
        <Disclosure>
          <Heading level={3} className="plain-head">
            <AriaButton slot="trigger" className="button plain small">
              Fragments of one item contradict each other in {view.faults.length}{' '}
              {view.faults.length === 1 ? 'attribute' : 'attributes'}
            </AriaButton>
          </Heading>
          <DisclosurePanel>
            <ul className="points">
              {view.faults.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </DisclosurePanel>
        </Disclosure>
      )}
      <div className="stack tight">
        {current === undefined ? null : (
          <Button
            look="plain small"
            onPress={() => change((now) => withoutSource(now, current.file), `take out ${current.file}`)}
          >
            Take out {current.file}
          </Button>
        )}
        <Button look="plain small" onPress={startOver}>
          Close and forget everything on this machine
        </Button>
      </div>
    </div>
  );
}
