import { useMemo, useState } from 'react';
import { usePreviewed } from '../../engine/use-previewed.ts';
import { fileStem } from '../../files.ts';
import { Choice } from '../../parts/controls.tsx';
import { ResultFigures } from '../../parts/pictures/result-figures.tsx';
import { RestsOn } from '../../parts/rests-on.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { Part, ScreenFrame } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';
import type { Screen } from '../screen.ts';
import type { RegionPicture } from './picture.ts';
import { placesMap } from './places-map.tsx';
import { threadCounts } from './thread-counts.tsx';
import { throughTime } from './through-time.tsx';

const QUESTION = 'What does the region look like?';

/** A new picture is a file of this folder and a line here. */
const PICTURES: readonly RegionPicture[] = [threadCounts, placesMap, throughTime];

function RegionScreen() {
  const { workspace, view, change } = useWorkbench();
  const [shown, setShown] = useState(PICTURES[0].id);
  const picture = PICTURES.find(({ id }) => id === shown) ?? PICTURES[0];
  const attributes = useMemo(() => view?.attributes ?? [], [view]);
  const saved = workspace.study.analyses.find(({ kind }) => kind === picture.kind);
  const asked = useMemo<StudyAnalysis | string>(() => {
    const first = picture.first(attributes);
    return typeof first === 'string' || saved === undefined
      ? first
      : ({ ...first, ...saved } as StudyAnalysis);
  }, [saved, attributes, picture]);
  const run = usePreviewed(typeof asked === 'string' ? null : asked, picture.quick, 150);
  return (
    <ScreenFrame
      question={QUESTION}
      lead="Pictures of the finds and the places together, each with its numbers."
    >
      <div className="parts region">
        <Part name="ask" title="The picture">
          <div className="stack">
            {PICTURES.length < 2 ? null : (
              <Choice label="Show" options={PICTURES} value={picture.id} onChange={setShown} />
            )}
            {typeof asked === 'string' ? null : (
              <picture.Ask
                asked={asked}
                attributes={attributes}
                set={(options, what) => change((now) => withAnalysis(now, { ...asked, ...options }), what)}
              />
            )}
          </div>
        </Part>
        <Part
          name="see"
          title={
            (typeof asked === 'string' ? undefined : picture.heading?.(asked, attributes)) ?? picture.label
          }
        >
          <div className="stack">
            {typeof asked === 'string' ? <p className="soft">{asked}</p> : <RunStatus run={run} />}
            {run.result === null ? null : (
              <ResultFigures
                key={picture.id}
                result={run.result}
                names={picture.figures}
                tables={picture.tables}
                stem={`${fileStem(workspace.study.title)}.${picture.id}`}
              />
            )}
          </div>
        </Part>
        <Part name="say" title="What can be said">
          <RunSaid run={run} />
        </Part>
        <Part name="more" title="The numbers">
          <div className="stack">
            <Tables tables={Object.entries(run.result?.tables ?? {})} />
            <RestsOn n={run.result?.n} />
          </div>
        </Part>
      </div>
    </ScreenFrame>
  );
}

export const region: Screen = {
  id: 'region',
  name: 'Region',
  question: QUESTION,
  waits: ({ workspace, view }) =>
    workspace.study.sources.length === 0 || view === null
      ? 'There is nothing to draw yet: bring tables first.'
      : null,
  View: RegionScreen,
};
