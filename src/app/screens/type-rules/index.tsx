import { useState } from 'react';
import { useRun } from '../../engine/use-run.ts';
import type { StudyView } from '../../engine/views/study.ts';
import { fileStem } from '../../files.ts';
import { ResultFigures } from '../../parts/pictures/result-figures.tsx';
import { ResultTableView } from '../../parts/result-table.tsx';
import { RunSaid, RunStatus } from '../../parts/run-status.tsx';
import { FaultNote, Part, ScreenFrame } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Screen } from '../screen.ts';
import { Claims } from './claims.tsx';
import { Cuts, type Drag } from './cuts.tsx';
import { type RuleFile, readRuleFile, ruleText, withCut } from './rule-file.ts';
import { RulesForm } from './rules-form.tsx';
import { useTypes } from './use-types.ts';

const QUESTION = 'Do these types hold?';
const LEAD =
  'A typology is a claim. Say which finds are of which type, and see how far the finds bear it out.';

/** Figure -> its name, and the table behind it. */
const NAMES = {
  coverage: 'Who fits',
  map: 'Map of the types',
  confusion: 'Predicted',
  stability: 'Stability',
};

/** Each cut attribute has a density of its own, named after it. */
function figureNames(view: StudyView | null): Readonly<Record<string, string>> {
  const densities = (view?.attributes ?? []).map(
    ({ definition }) => [`density ${definition.id}`, `Density: ${definition.label.toLowerCase()}`] as const,
  );
  return { ...NAMES, ...Object.fromEntries(densities) };
}

const TABLES = { coverage: 'coverage', map: 'map', confusion: 'confusion', stability: 'stability' };

function TypeRulesScreen() {
  const { workspace, view, change } = useWorkbench();
  const claims = workspace.study.analyses.filter(({ kind }) => kind === 'typology');
  const [openId, setOpenId] = useState<string | null>(null);
  const [drag, setDrag] = useState<Drag | null>(null);
  const open = claims.find(({ id }) => id === openId) ?? claims[0] ?? null;
  const name = String(open?.rules ?? '');
  const file = readRuleFile(workspace.files.get(name));
  const shown = file === null || drag === null ? file : withCut(file, drag.attribute, drag.from, drag.to);
  const counts = useTypes(shown === null ? null : ruleText(shown), name);
  const saved = useTypes(file === null ? null : ruleText(file), name);
  const sound = file !== null && saved !== null && saved.fault === null;
  const run = useRun(sound ? open : null, 400);
  const write = (next: RuleFile, what: string) =>
    change(
      (now) => ({ ...now, files: new Map(now.files).set(name, new TextEncoder().encode(ruleText(next))) }),
      what,
    );
  const move = (to: Drag) => {
    setDrag(null);
    if (file !== null && to.from !== to.to)
      write(withCut(file, to.attribute, to.from, to.to), 'a moved limit');
  };
  const rivals = run.result?.tables.rivals;
  const stem = `${fileStem(workspace.study.title)}.types`;
  return (
    <ScreenFrame question={QUESTION} lead={LEAD}>
      <div className="parts type-rules">
        <Part name="ask" title="The types and their rules">
          <div className="stack">
            <Claims
              claims={claims}
              open={open}
              file={file}
              attributes={view?.attributes ?? []}
              onOpen={setOpenId}
            />
            {open === null || file !== null ? null : (
              <FaultNote
                text={`The rule file ${name} is not here or cannot be read; open it, or start a new claim.`}
              />
            )}
            {file === null ? null : (
              <RulesForm
                key={name}
                file={file}
                counts={counts}
                attributes={view?.attributes ?? []}
                onChange={write}
              />
            )}
          </div>
        </Part>
        <Part name="see" title="Where the rules cut">
          <div className="stack">
            <RunStatus run={run} />
            {saved === null || counts === null ? (
              <p className="soft">Start a new claim or open a rule file; then the figures come.</p>
            ) : (
              <Cuts
                cuts={saved.cuts}
                drag={drag}
                result={run.result}
                onDrag={setDrag}
                onMove={move}
                stem={stem}
              />
            )}
            {run.result === null ? null : (
              <ResultFigures result={run.result} names={figureNames(view)} tables={TABLES} stem={stem} />
            )}
          </div>
        </Part>
        <Part name="say" title="What can be said">
          <RunSaid run={run} asked={sound} />
        </Part>
        <Part name="trace" title="Who fits">
          {counts === null ? (
            <p className="soft">Nobody is asked yet.</p>
          ) : counts.fault !== null ? (
            <FaultNote text={counts.fault} />
          ) : (
            <Fits counts={counts} />
          )}
        </Part>
        <Part name="more" title="The full working">
          <div className="stack">
            {rivals === undefined ? null : (
              <section aria-label="Rivals side by side" className="stack">
                <h3>Rivals side by side</h3>
                <ResultTableView table={rivals} />
              </section>
            )}
            <Tables tables={Object.entries(run.result?.tables ?? {}).filter(([id]) => id !== 'rivals')} />
          </div>
        </Part>
      </div>
    </ScreenFrame>
  );
}

function Fits({ counts }: { counts: NonNullable<ReturnType<typeof useTypes>> }) {
  const rest = [
    ['fit none', counts.none],
    ['fit several', counts.several],
    ['cannot be said', counts.undecided],
  ] as const;
  return (
    <div className="stack tight">
      <dl className="facts lines">
        {counts.types.map(({ id, label, taken }) => (
          <div key={id}>
            <dt>{label}</dt>
            <dd>{taken}</dd>
          </div>
        ))}
        {rest.map(([label, n]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{n}</dd>
          </div>
        ))}
      </dl>
      <p className="small soft">of {counts.records} that the claim speaks of</p>
      {counts.overlaps.map(({ first, second, records }) => (
        <p key={`${first} ${second}`} className="small">
          {records} fit both {first} and {second}.
        </p>
      ))}
    </div>
  );
}

export const typeRules: Screen = {
  id: 'type-rules',
  name: 'Type rules',
  question: QUESTION,
  waits: ({ workspace, view }) =>
    workspace.study.sources.length === 0 || view === null
      ? 'There is nothing to sort into types yet: bring tables first.'
      : null,
  View: TypeRulesScreen,
};
