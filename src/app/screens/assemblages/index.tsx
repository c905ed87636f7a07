import { useState } from 'react';
import type { AnalysisResult } from '../../../study/results/results.ts';
import { fileStem } from '../../files.ts';
import { ResultFigures } from '../../parts/pictures/result-figures.tsx';
import { RestsOn } from '../../parts/rests-on.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { Part, ScreenFrame } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Screen } from '../screen.ts';
import { AskForm, VIEWS } from './ask-form.tsx';
import { useAsked, type View } from './use-asked.ts';

const QUESTION = 'What is there, where, and how alike are the places?';

const FIGURES = {
  shares: 'Shares',
  mosaic: 'Mosaic',
  residuals: 'What departs',
  pooled: 'Shares, pooled',
  matrix: 'All against all',
  biplot: 'Map of places and kinds',
  order: 'Order and dates',
  diversity: 'Variety',
  date: 'When they date to',
  recorded: 'What is recorded where',
};

/** The table behind each figure. */
const TABLES = {
  mosaic: 'cells',
  matrix: 'matrix',
  biplot: 'assemblagesOnAxes',
  order: 'order',
  diversity: 'diversity',
  date: 'spans',
  recorded: 'recorded',
};
const RECORDED_ONLY = ['recorded'];

/** The table that a view is about comes first. */
function tablesOf(shown: View, tables: AnalysisResult['tables']) {
  const first = shown === 'time' ? 'spans' : shown === 'recorded' ? 'recorded' : '';
  return Object.entries(tables).sort(([a], [b]) => Number(b === first) - Number(a === first));
}

function AssemblagesScreen() {
  const { workspace } = useWorkbench();
  const [shown, setShown] = useState<View>('counts');
  const asked = useAsked(shown);
  const { dated, run } = asked;
  const stem = fileStem(workspace.study.title);
  const n = run.result?.n;
  return (
    <ScreenFrame
      question={QUESTION}
      lead="Counts by item or fragment with their bases, the likeness of the places with its uncertainty, and where nobody looked."
    >
      <div className="parts assemblages">
        <Part name="ask" title="What to set side by side">
          <AskForm asked={asked} shown={shown} onShow={setShown} />
        </Part>
        <Part name="see" title={VIEWS.find(({ id }) => id === shown)?.label ?? ''}>
          <div className="stack">
            <RunStatus run={run} />
            {shown === 'time' && !dated ? (
              <p className="soft">No table says when anything dates to; map columns to “date” on Sources.</p>
            ) : null}
            {run.result === null ? null : (
              <ResultFigures
                key={shown}
                names={FIGURES}
                tables={TABLES}
                {...(shown === 'recorded' ? { only: RECORDED_ONLY } : {})}
                result={run.result}
                stem={`${stem}.${shown}`}
              />
            )}
          </div>
        </Part>
        <Part name="say" title="What can be said">
          {shown === 'recorded' ? (
            <p>
              A dash or a pale cell is no finding: nobody looked, it could not be observed, or there was none.
              Places are compared fairly only in what is recorded at all of them.
            </p>
          ) : (
            <RunSaid run={run} />
          )}
        </Part>
        <Part name="more" title="The numbers">
          <div className="stack">
            <Tables tables={tablesOf(shown, run.result?.tables ?? {})} />
            <RestsOn n={n} />
          </div>
        </Part>
      </div>
    </ScreenFrame>
  );
}

export const assemblages: Screen = {
  id: 'assemblages',
  name: 'Assemblages',
  question: QUESTION,
  waits: ({ workspace, view }) =>
    workspace.study.sources.length === 0 || view === null
      ? 'There is nothing to set side by side yet: bring tables first.'
      : null,
  View: AssemblagesScreen,
};
