import { useEffect } from 'react';
import { Button, Toggles } from './parts/controls.tsx';
import { Glossary } from './parts/glossary.tsx';
import { TwinedRow } from './parts/records/twined-row.tsx';
import { FaultNote } from './parts/screen.tsx';
import { SessionNotes } from './parts/session-notes.tsx';
import { SCREENS } from './screens/register.ts';
import { SelectionBar } from './selection-bar.tsx';
import { useWorkbench } from './state/workbench.tsx';
import { withStudy } from './state/workspace.ts';

/** The frame around every screen: the row of screens, and what holds on all of them. */
export function Workbench() {
  const bench = useWorkbench();
  const { screen, go, undo, redo, undoes, redoes } = bench;
  const shown = SCREENS.find((candidate) => candidate.id === screen) ?? SCREENS[0];
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLElement && event.target.closest('input, textarea') !== null;
      if (typing || !(event.ctrlKey || event.metaKey)) return;
      const key = event.key.toLowerCase();
      const act = key === 'y' || (key === 'z' && event.shiftKey) ? redo : key === 'z' ? undo : undefined;
      if (act === undefined) return;
      event.preventDefault();
      act?.();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [undo, redo]);
  useEffect(() => {
    document.title = shown === undefined ? 'Thrum' : `${shown.name} · Thrum`;
  }, [shown]);
  if (shown === undefined) return null;
  const ways = SCREENS.map(({ id, name, waits }) => {
    const why = waits(bench);
    return why === null ? { id, name } : { id, name, waits: why };
  });
  const waits = shown.waits(bench);
  return (
    <div className="workbench">
      <a className="skip" href="#page">
        Go to the page
      </a>
      <header className="head">
        <div className="mark">Thrum</div>
        <TwinedRow ways={ways} open={shown.id} onOpen={go} />
        <div className="line acts">
          <Glossary />
          <Button look="small" disabled={undo === null} label={`Undo: ${undoes}`} onPress={() => undo?.()}>
            Undo
          </Button>
          <Button look="small" disabled={redo === null} label={`Redo: ${redoes}`} onPress={() => redo?.()}>
            Redo
          </Button>
        </div>
      </header>
      <Holds />
      <SessionNotes />
      {bench.fault === null ? null : <FaultNote text={bench.fault} />}
      {waits === null ? <shown.View /> : <Waiting question={shown.question} why={waits} />}
      <div className="hidden-text" role="status" aria-live="polite">
        {bench.reading ? 'Reading the sources' : ''}
      </div>
    </div>
  );
}

/** What holds on every screen: the study, the unit that counts, the selection. */
function Holds() {
  const { workspace, view, change, go } = useWorkbench();
  const { study } = workspace;
  if (study.sources.length === 0)
    return (
      <div className="holds">
        {study.analyses.some(({ kind }) => kind === 'claims')
          ? 'No data are open: printed figures are held against each other.'
          : 'Nothing is open yet.'}
      </div>
    );
  return (
    <div className="holds">
      <strong>{study.title}</strong>
      <span className="line">
        <span aria-hidden="true">Counts as one:</span>
        <Toggles
          label="What counts as one record"
          value={study.unit}
          options={[
            { id: 'item', label: 'an item' },
            { id: 'fragment', label: 'a fragment' },
          ]}
          onChange={(unit) =>
            change(
              (now) => withStudy(now, { unit: unit === 'fragment' ? 'fragment' : 'item' }),
              unit === 'fragment' ? 'each fragment counts' : 'each item counts once',
            )
          }
        />
      </span>
      {study.unit === 'item' && view !== null && view.witness.status !== 'confirmed' ? (
        <span className="line small">
          nobody has said yet what is one, so that each fragment counts
          <Button look="plain small" onPress={() => go('sources')}>
            Say it on Sources
          </Button>
        </span>
      ) : null}
      {view === null ? null : <SelectionBar />}
    </div>
  );
}

function Waiting({ question, why }: { question: string; why: string }) {
  const { go, reading } = useWorkbench();
  return (
    <main className="page" id="page" tabIndex={-1}>
      <h1>{question}</h1>
      <div className="empty stack">
        <p>{reading ? 'The sources are being read.' : why}</p>
        {reading ? null : (
          <div>
            <Button look="main" onPress={() => go('sources')}>
              Go to Sources
            </Button>
          </div>
        )}
      </div>
    </main>
  );
}
