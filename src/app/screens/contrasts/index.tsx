import { useMemo } from 'react';
import { contrastOptions } from '../../../analyses/contrast/options.ts';
import type { AnalysisResult } from '../../../study/results/results.ts';
import { usePreviewed } from '../../engine/use-previewed.ts';
import { fileStem } from '../../files.ts';
import { groupingOptions, numberOptions } from '../../parts/asking/attribute-options.ts';
import { Check, Choice, Toggles } from '../../parts/controls.tsx';
import { ResultFigures } from '../../parts/pictures/result-figures.tsx';
import { RestsOn } from '../../parts/rests-on.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { Part, ScreenFrame } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';
import type { Screen } from '../screen.ts';

const QUESTION = 'Do these groups differ, and by how much?';

/** For a first look while the question is being put. */
const QUICK = { resamples: 499, relabellings: 999 };

const LIKENESS = [
  { id: '0.1', label: '10 %' },
  { id: '0.2', label: '20 %' },
  { id: '0.5', label: '50 %' },
];

/** Ends of the figures' keys, which begin with the attribute, and their names. */
const FIGURES: readonly (readonly [end: string, name: string])[] = [
  ['Outlines', 'Outlines'],
  ['Cumulative', 'Shares below'],
  ['Medians', 'Medians'],
  ['Effects', 'Differences'],
];

function figureNames(result: AnalysisResult): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.keys(result.figures).map((key) => [
      key,
      FIGURES.find(([end]) => key.endsWith(end))?.[1] ?? 'Points',
    ]),
  );
}

/** What the analysis is asked, without what only names it in the study. */
function optionsOf({ id: _, kind: __, title: ___, ...options }: StudyAnalysis) {
  return options;
}

function ContrastsScreen() {
  const { workspace, view, change } = useWorkbench();
  const attributes = view?.attributes ?? [];
  const numbers = useMemo(() => numberOptions(attributes), [attributes]);
  const groups = useMemo(() => groupingOptions(attributes), [attributes]);
  const saved = workspace.study.analyses.find(({ kind }) => kind === 'contrast');
  const asked = useMemo<StudyAnalysis | null>(() => {
    const of = ((saved?.of as readonly string[] | undefined) ?? []).filter((id) =>
      numbers.some((option) => option.id === id),
    );
    const first = of.length > 0 ? of : numbers.slice(0, 1).map(({ id }) => id);
    if (first.length === 0) return null;
    const by = (saved?.by as string | undefined) ?? groups[0]?.id ?? 'site';
    return { ...(saved ?? { id: 'differ', kind: 'contrast' }), of: first, by } as StudyAnalysis;
  }, [saved, numbers, groups]);
  const run = usePreviewed(asked, QUICK, 150);
  const set = (options: Readonly<Record<string, unknown>>, what: string) =>
    change((now) => withAnalysis(now, { ...(asked as StudyAnalysis), ...options }), what);
  if (asked === null) {
    return (
      <ScreenFrame question={QUESTION}>
        <p className="sheet">No number is recorded in these tables, so there is nothing to contrast.</p>
      </ScreenFrame>
    );
  }
  const n = run.result?.n;
  const settled = contrastOptions.safeParse(optionsOf(asked)).data;
  return (
    <ScreenFrame
      question={QUESTION}
      lead="One measurement, the groups set against each other, and what the numbers at hand can carry."
    >
      <div className="parts contrasts">
        <Part name="ask" title="The question">
          <div className="stack">
            <Choice
              label="Do they differ in"
              options={numbers}
              value={(asked.of as readonly string[])[0]}
              onChange={(id) => set({ of: [id] }, 'another measurement')}
            />
            <Choice
              label="put together by"
              options={groups}
              value={asked.by as string}
              onChange={(id) => set({ by: id }, 'other groups')}
            />
            <div className="field">
              <span className="label">alike when geometric means lie within</span>
              <Toggles
                label="Alike when geometric means lie within"
                options={LIKENESS}
                value={String(settled?.within ?? '')}
                onChange={(id) => set({ within: Number(id) }, 'another margin')}
              />
            </div>
            <Check value={asked.means === true} onChange={(means) => set({ means }, 'means')}>
              Compare means as well
            </Check>
            <Check value={asked.trend === true} onChange={(trend) => set({ trend }, 'a trend')}>
              Look for a trend over time
            </Check>
          </div>
        </Part>
        <Part name="see" title="How the groups lie">
          <div className="stack">
            <RunStatus run={run} />
            {run.result === null ? null : (
              <ResultFigures
                result={run.result}
                names={figureNames(run.result)}
                stem={`${fileStem(workspace.study.title)}.contrast`}
              />
            )}
          </div>
        </Part>
        <Part name="say" title="What can be said">
          <RunSaid run={run} />
        </Part>
        <Part name="more" title="The full working">
          <div className="stack">
            <Tables tables={Object.entries(run.result?.tables ?? {})} />
            <RestsOn n={n} />
          </div>
        </Part>
      </div>
    </ScreenFrame>
  );
}

export const contrasts: Screen = {
  id: 'contrasts',
  name: 'Contrasts',
  question: QUESTION,
  waits: ({ workspace, view }) =>
    workspace.study.sources.length === 0 || view === null
      ? 'There is nothing to contrast yet: bring tables first.'
      : null,
  View: ContrastsScreen,
};
