import { useState } from 'react';
import { printBehind } from '../../../analyses/phrasing.ts';
import type { Progress } from '../../../study/prepare.ts';
import type { Results } from '../../../study/results.ts';
import { sourceName } from '../../../study/source-name.ts';
import { archive } from '../../archive.ts';
import { faultText, reporting, Stopped } from '../../engine/client.ts';
import { download, fileStem } from '../../files.ts';
import { textsOf } from '../../openings.ts';
import { Button } from '../../parts/controls.tsx';
import { FigureFiles } from '../../parts/figure.tsx';
import { NotKept } from '../../parts/keep-bar.tsx';
import { pageParts } from '../../parts/page-parts.ts';
import { FaultNote, Part, Said, ScreenFrame } from '../../parts/screen.tsx';
import { Working } from '../../parts/working.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { studyText } from '../../state/workspace.ts';
import type { Screen } from '../screen.ts';
import { HANDLING, RIGHTS } from './cautions.ts';
import { StudyForm } from './study-form.tsx';

const QUESTION = 'What do you take away?';

function TakeAwayScreen() {
  const { workspace, view, engine } = useWorkbench();
  const { study, files } = workspace;
  const [text, setText] = useState<string | null>(null);
  const [computedFor, setComputedFor] = useState<unknown>(null);
  const [running, setRunning] = useState<{ share: number; what: string } | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const stem = fileStem(study.title);
  const current = computedFor === workspace;
  const named = [...new Set(textsOf(study.analyses))].filter((name) => files.has(name));
  const working = async <T,>(what: string, work: (report: Progress) => Promise<T>): Promise<T | null> => {
    setRunning({ share: 0, what });
    try {
      const done = await work(reporting((share, now) => setRunning({ share, what: now })));
      setFault(null);
      return done;
    } catch (error) {
      if (!(error instanceof Stopped)) setFault(faultText(error));
      return null;
    } finally {
      setRunning(null);
    }
  };
  const compute = async (): Promise<string | null> => {
    if (text !== null && current) return text;
    const asked = workspace;
    const results = await working('Computing every analysis of the study', (report) =>
      engine.ask((remote) => remote.results(study, report) as Promise<string>),
    );
    if (results === null) return null;
    setText(results);
    setComputedFor(asked);
    return results;
  };
  const saveResults = async () => {
    const results = await compute();
    if (results !== null) download(`${stem}.results.json`, results);
  };
  const saveReport = async () => {
    const page = await working('Writing the report', async (report) => {
      const parts = await pageParts();
      return engine.ask((remote) => remote.report(study, parts, report) as Promise<string>);
    });
    if (page !== null) download(`${stem}.report.html`, page, 'text/html');
  };
  const saveBrief = async () => {
    const page = await working('Writing the brief', async (report) => {
      const parts = await pageParts();
      return engine.ask((remote) => remote.brief(study, parts, report) as Promise<string>);
    });
    if (page !== null) download(`${stem}.brief.html`, page, 'text/html');
  };
  const saveAll = async () => {
    const written = await working('Computing every analysis of the study', async (report) => {
      const parts = await pageParts();
      return engine.ask(
        (remote) => remote.runFiles(study, parts, report) as Promise<ReadonlyMap<string, string>>,
      );
    });
    if (written !== null) download(`${stem}.zip`, archive(workspace, written), 'application/zip');
  };
  const saveParquet = async () => {
    const written = await working('Writing the table', () =>
      engine.ask((remote) => remote.parquet(study) as Promise<Uint8Array>),
    );
    if (written !== null) download('fragments.parquet', written, 'application/vnd.apache.parquet');
  };
  const saveTable = async (name: string) => {
    const written = await working('Writing the table', () =>
      engine.ask((remote) => remote.dataPackage(study) as Promise<ReadonlyMap<string, string>>),
    );
    const content = written?.get(name);
    if (content !== undefined)
      download(name, content, name.endsWith('.csv') ? 'text/csv' : 'application/json');
  };
  return (
    <ScreenFrame
      question={QUESTION}
      lead="The study file holds the whole state of the work: with the tables beside it, anyone can run it again and get the same bytes."
    >
      <div className="parts away">
        <Part name="ask" title="The study">
          <div className="stack wide">
            <StudyForm />
            <NotKept />
          </div>
        </Part>
        <Part name="see" title="Files to save">
          <div className="stack wide">
            <ul className="goods">
              <Good
                name="Everything"
                file={`${stem}.zip`}
                what="One archive: the study with its tables, profiles and rules, and in it a folder with results, report, every table and the ledger."
                onSave={saveAll}
              />
              <Good
                name="The study"
                file={`${stem}.study.json`}
                what="Sources, selection, analyses, kept finds and seed; the workbench opens it, the command line runs it."
                onSave={() => download(`${stem}.study.json`, studyText(study))}
              />
              <Good
                name="The results"
                file={`${stem}.results.json`}
                what="Every table, figure and sentence with full precision; the same study gives the same bytes anywhere."
                onSave={saveResults}
              />
              <Good
                name="The report"
                file={`${stem}.report.html`}
                what="One page for people: figures, tables, sentences and cautions; opens without a network and prints on A4 and Letter."
                onSave={saveReport}
              />
              <Good
                name="The brief"
                file={`${stem}.brief.html`}
                what="Two pages to print: whether the data are ready, up to five answers with a figure each, what would overturn them, how to cite."
                onSave={saveBrief}
              />
              {study.sources.length === 0 ? null : (
                <>
                  <Good
                    name="The normalised table"
                    file="fragments.csv"
                    what="One row a fragment: what each cell was read as, its state and the raw text beside it."
                    onSave={() => saveTable('fragments.csv')}
                  />
                  <Good
                    name="The same as Parquet"
                    file="fragments.parquet"
                    what="The normalised table for programs that read columns: numbers in full precision, no number where there is none."
                    onSave={saveParquet}
                  />
                  <Good
                    name="The ledger"
                    file="ledger.csv"
                    what="Every cell that was changed, flagged or not understood, with its row, column and reason."
                    onSave={() => saveTable('ledger.csv')}
                  />
                  <Good
                    name="Their description"
                    file="datapackage.json"
                    what="Columns and units of the two tables as a Frictionless Data Package, for other programs."
                    onSave={() => saveTable('datapackage.json')}
                  />
                </>
              )}
              {named.map((name) => (
                <Good
                  key={name}
                  name={`The file ${name}`}
                  file={name}
                  what="Named by an analysis of the study; keep it beside the study file."
                  onSave={() => download(name, files.get(name) ?? '', 'text/plain')}
                />
              ))}
              {study.sources.map((source, i) => (
                <Good
                  key={sourceName(source)}
                  name={`Profile of ${sourceName(source)}`}
                  file={
                    source.profile ??
                    `${fileStem(sourceName(source).replace(/\.[^.,]+(?=,|$)/, ''))}.profile.json`
                  }
                  what="How that table is read; keep it beside the table."
                  onSave={() => {
                    const kept = source.profile === undefined ? undefined : files.get(source.profile);
                    const detected = view?.sources[i]?.profile;
                    download(
                      source.profile ??
                        `${fileStem(sourceName(source).replace(/\.[^.,]+(?=,|$)/, ''))}.profile.json`,
                      kept ?? `${JSON.stringify(detected ?? {}, null, 2)}\n`,
                    );
                  }}
                />
              ))}
            </ul>
            {running === null ? null : <Working {...running} onStop={engine.stop} />}
            {fault === null ? null : <FaultNote text={fault} />}
          </div>
        </Part>
        <Part name="say" title="Figures for print">
          {text === null || !current ? (
            <div className="stack">
              <p>
                The figures of every analysis as SVG, PDF or PNG, 84 or 174 mm wide, with letters that stay
                legible in print and in grey.
              </p>
              <div>
                <Button disabled={running !== null} onPress={() => void compute()}>
                  Compute the study and list its figures
                </Button>
              </div>
            </div>
          ) : (
            <FigureList results={JSON.parse(text) as Results} stem={stem} />
          )}
        </Part>
        <Part name="trace" title="Before you pass it on">
          <Cautions />
        </Part>
      </div>
    </ScreenFrame>
  );
}

function Good({
  name,
  file,
  what,
  onSave,
}: {
  name: string;
  file: string;
  what: string;
  onSave: () => void;
}) {
  return (
    <li>
      <div className="stack tight">
        <strong>{name}</strong>
        <span className="small soft">{what}</span>
      </div>
      <Button look="small" label={`Save ${name.toLowerCase()} as ${file}`} onPress={onSave}>
        Save
      </Button>
    </li>
  );
}

function FigureList({ results, stem }: { results: Results; stem: string }) {
  const entries = Object.entries(results.analyses);
  if (entries.length === 0)
    return (
      <p>The study asks no analysis yet: look at Kinship or place a find, and keep what you want to print.</p>
    );
  return (
    <div className="stack wide">
      {entries.map(([id, result]) => (
        <div key={id} className="stack tight">
          <h3>{result.title}</h3>
          <Said words={{ ...result.words, unless: [] }} />
          <p className="small soft">{printBehind(result.n, results.study.witness)}</p>
          {Object.entries(result.figures).map(([name, figure]) => (
            <div className="line" key={name}>
              <span className="small">{name}</span>
              <FigureFiles
                figure={figure}
                name={`${stem}.${id}.${fileStem(name)}`}
                of={`the figure ${name} of ${id}`}
              />
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}

function Cautions() {
  return (
    <div className="stack">
      {[HANDLING, RIGHTS].map(({ title, points }) => (
        <div key={title} className="stack tight">
          <h3>{title}</h3>
          <ul className="points">
            {points.map((point) => (
              <li key={point}>{point}</li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  );
}

export const takeAway: Screen = {
  id: 'take-away',
  name: 'Take away',
  question: QUESTION,
  waits: ({ workspace, view }) => {
    const { sources, analyses } = workspace.study;
    const onlyClaims = sources.length === 0 && analyses.some(({ kind }) => kind === 'claims');
    return onlyClaims || (sources.length > 0 && view !== null)
      ? null
      : 'There is nothing to take away yet: bring tables first.';
  },
  View: TakeAwayScreen,
};
