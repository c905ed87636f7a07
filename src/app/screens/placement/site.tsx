import { useState } from 'react';
import { useRun } from '../../engine/use-run.ts';
import { fileStem } from '../../files.ts';
import { ResultFigures } from '../../parts/pictures/result-figures.tsx';
import { RestsOn } from '../../parts/rests-on.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { Part } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withAnalysis } from '../../state/workspace.ts';
import { KeptSites } from './kept-sites.tsx';
import { SiteForm } from './site-form.tsx';
import { useStanding } from './use-standing.ts';

const FIGURES = {
  likeness: 'Whom it is like',
  map: 'On the map of the others',
  apart: 'What sets it apart',
  beside: 'Beside all others',
};
const TABLES = { likeness: 'likeness', map: 'axes', apart: 'apart', beside: 'beside' };

/** A whole site among the others, in one page: figure, sentence and cautions, and the working below. */
export function PlaceSite() {
  const { workspace, change } = useWorkbench();
  const [openId, setOpenId] = useState<string | null>(null);
  const { asked, kept, sites } = useStanding(openId);
  const run = useRun(asked, 150);
  const n = run.result?.n;
  if (asked === null && sites === null) return <p className="soft">The sites are being looked up.</p>;
  if (asked === null)
    return (
      <p className="sheet">
        A site is placed among others, but these tables name fewer than two; say on Sources which column names
        the site.
      </p>
    );
  return (
    <div className="parts site">
      <Part name="ask" title="The site and what it is set against">
        <div className="stack wide">
          <KeptSites kept={kept} open={asked} onOpen={setOpenId} />
          <SiteForm
            asked={asked}
            sites={sites ?? [String(asked.site)]}
            onSet={(options, what) => {
              setOpenId(asked.id);
              change((now) => withAnalysis(now, { ...asked, ...options }), what);
            }}
          />
        </div>
      </Part>
      <Part name="see" title={`Where ${String(asked.site)} sits`}>
        <div className="stack">
          <RunStatus run={run} />
          {run.result === null ? (
            <p className="soft">Items are being drawn and compared; this takes a few seconds.</p>
          ) : (
            <ResultFigures
              names={FIGURES}
              tables={TABLES}
              result={run.result}
              stem={`${fileStem(workspace.study.title)}.standing.${fileStem(String(asked.site))}`}
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
          <RestsOn n={n} note="; items are counted, whatever counts as one elsewhere" />
        </div>
      </Part>
    </div>
  );
}
