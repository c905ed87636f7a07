import { useMemo, useState } from 'react';
import { similarityOptions } from '../../../analyses/similarity/options.ts';
import type { AnalysisResult } from '../../../study/results.ts';
import { usePreviewed } from '../../engine/use-previewed.ts';
import { useRun } from '../../engine/use-run.ts';
import { fileStem } from '../../files.ts';
import {
  COEFFICIENTS,
  groupingOptions,
  kindOptions,
  LEVELS_OF_KINDS,
} from '../../parts/attribute-options.ts';
import { Choice } from '../../parts/controls.tsx';
import { RestsOn } from '../../parts/rests-on.tsx';
import { ResultFigures } from '../../parts/result-figures.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { Part, ScreenFrame } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';
import type { Screen } from '../screen.ts';
import { NewSite, type TypedSite } from './new-site.tsx';
import { useRecordedWhere } from './recorded-where.tsx';

type View = 'counts' | 'alike' | 'time' | 'recorded';

const QUESTION = 'What is there, where, and how alike are the places?';

const VIEWS = [
  { id: 'counts', label: 'What there is' },
  { id: 'alike', label: 'How alike they are' },
  { id: 'time', label: 'When they date to' },
  { id: 'recorded', label: 'What is recorded where' },
];

const FIGURES = {
  shares: 'Shares',
  mosaic: 'Mosaic',
  residuals: 'What departs',
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

/** For a first look while the question is being put. */
const QUICK = { resamples: 399, relabellings: 999 };

/** The table that a view is about comes first. */
function tablesOf(shown: View, tables: AnalysisResult['tables']) {
  const first = shown === 'time' ? 'spans' : shown === 'recorded' ? 'recorded' : '';
  return Object.entries(tables).sort(([a], [b]) => Number(b === first) - Number(a === first));
}

function AssemblagesScreen() {
  const { workspace, view, change } = useWorkbench();
  const [shown, setShown] = useState('counts');
  const attributes = view?.attributes ?? [];
  const groups = useMemo(() => groupingOptions(attributes), [attributes]);
  const kinds = useMemo(() => kindOptions(attributes), [attributes]);
  const { analyses } = workspace.study;
  const savedTable = analyses.find(({ kind }) => kind === 'crosstab');
  const savedAlike = analyses.find(({ kind }) => kind === 'similarity');
  const places = (savedTable?.rows ?? savedAlike?.assemblages ?? groups[0]?.id ?? 'site') as string;
  const of = (savedTable?.columns ??
    savedAlike?.of ??
    kinds.find(({ id }) => id !== places)?.id ??
    'structure') as string;
  const table = useMemo<StudyAnalysis>(
    () =>
      ({
        ...(savedTable ?? { id: 'table', kind: 'crosstab' }),
        rows: places,
        columns: of,
      }) as StudyAnalysis,
    [savedTable, places, of],
  );
  const alike = useMemo<StudyAnalysis>(
    () =>
      ({
        ...(savedAlike ?? { id: 'alike', kind: 'similarity' }),
        assemblages: places,
        of,
      }) as StudyAnalysis,
    [savedAlike, places, of],
  );
  // Terms of a cut of one's own stay as the study has them.
  const level = similarityOptions.shape.level.parse((shown === 'alike' ? alike : table).level);
  const counts = usePreviewed(shown === 'counts' ? table : null, QUICK, 150);
  const likeness = usePreviewed(shown === 'alike' ? alike : null, QUICK, 150);
  const asksRecorded = useRecordedWhere(places);
  const dated = attributes.some(({ definition, filled }) => definition.id === 'date' && filled > 0);
  const asksTime = useMemo<StudyAnalysis | null>(
    () => (dated ? { id: 'dated', kind: 'summary', of: ['date'], by: [places], resamples: 0 } : null),
    [dated, places],
  );
  const recorded = useRun(shown === 'recorded' ? asksRecorded : null, 150);
  const time = useRun(shown === 'time' ? asksTime : null, 150);
  const run = { alike: likeness, counts, recorded, time }[shown as View];
  const set = (
    options: {
      places?: string;
      of?: string;
      level?: string;
      coefficient?: string;
      newSites?: readonly TypedSite[];
    },
    what: string,
  ) =>
    change((now) => {
      const where = options.places ?? places;
      const kind = options.of ?? of;
      const level = options.level === undefined ? {} : { level: options.level };
      const next = withAnalysis(now, { ...table, ...level, rows: where, columns: kind });
      return withAnalysis(next, {
        ...alike,
        ...level,
        assemblages: where,
        of: kind,
        ...(options.coefficient === undefined ? {} : { coefficient: options.coefficient }),
        // Counts typed in are of the kinds that were asked for.
        ...(options.of === undefined ? {} : { newSites: [] }),
        ...(options.newSites === undefined ? {} : { newSites: options.newSites }),
      });
    }, what);
  const stem = fileStem(workspace.study.title);
  const n = run.result?.n;
  return (
    <ScreenFrame
      question={QUESTION}
      lead="Counts by item or fragment with their bases, the likeness of the places with its uncertainty, and where nobody looked."
    >
      <div className="parts assemblages">
        <Part name="ask" title="What to set side by side">
          <div className="stack">
            <Choice label="Show" options={VIEWS} value={shown} onChange={setShown} />
            <Choice
              label="Places"
              options={groups}
              value={places}
              onChange={(id) => set({ places: id }, 'other places')}
            />
            {shown === 'recorded' || shown === 'time' ? null : (
              <Choice
                label="in their"
                options={kinds.filter(({ id }) => id !== places)}
                value={of}
                onChange={(id) => set({ of: id }, 'other kinds')}
              />
            )}
            {shown === 'recorded' || shown === 'time' || typeof level !== 'string' ? null : (
              <Choice
                label="counted"
                options={LEVELS_OF_KINDS}
                value={level}
                onChange={(id) => set({ level: id }, 'another level of kinds')}
              />
            )}
            {shown !== 'alike' ? null : (
              <Choice
                label="Likeness by"
                options={COEFFICIENTS}
                value={similarityOptions.shape.coefficient.parse(alike.coefficient)}
                onChange={(id) => set({ coefficient: id }, 'another coefficient')}
              />
            )}
            {shown !== 'alike' ? null : (
              <NewSite
                key={of}
                kinds={attributes.find(({ definition }) => definition.id === of)}
                sites={(alike.newSites as readonly TypedSite[] | undefined) ?? []}
                onSet={(newSites, what) => set({ newSites }, what)}
              />
            )}
          </div>
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
            <Tables tables={tablesOf(shown as View, run.result?.tables ?? {})} />
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
