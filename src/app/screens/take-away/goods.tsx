import { printCount } from '../../../analyses/phrasing.ts';
import { sourceName } from '../../../study/source-name.ts';
import { download, fileStem } from '../../files.ts';
import { textsOf } from '../../openings.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { studyText } from '../../state/workspace.ts';
import type { Saving } from './saving.ts';

/** Every file that can be saved, with what it holds. */
export function Goods({ saving }: { saving: Saving }) {
  const { workspace, view } = useWorkbench();
  const { study, files } = workspace;
  const stem = fileStem(study.title);
  const named = [...new Set(textsOf(study.analyses))].filter((name) => files.has(name));
  return (
    <ul className="goods">
      <Good
        name="Everything"
        file={`${stem}.zip`}
        what={
          (view?.restricted ?? 0) > 0
            ? `One archive: results, report, every table and the ledger, and a study that asks the normalised table. ${printCount(view!.restricted, 'record')} withheld by the source, so the tables, profiles and rules that name them stay here.`
            : 'One archive: the study with its tables, profiles and rules, and in it a folder with results, report, every table and the ledger.'
        }
        onSave={saving.saveEverything}
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
        onSave={saving.saveResults}
      />
      <Good
        name="The report"
        file={`${stem}.report.html`}
        what="One page for people: figures, tables, sentences and cautions; opens without a network and prints on A4 and Letter."
        onSave={saving.saveReport}
      />
      <Good
        name="The brief"
        file={`${stem}.brief.html`}
        what="Two pages to print: whether the data are ready, up to five answers with a figure each, what would overturn them, how to cite."
        onSave={saving.saveBrief}
      />
      {study.sources.length === 0 ? null : (
        <>
          <Good
            name="The normalised table"
            file="fragments.csv"
            what="One row a fragment: what each cell was read as, its state and the raw text beside it."
            onSave={() => saving.saveTable('fragments.csv')}
          />
          <Good
            name="The same as Parquet"
            file="fragments.parquet"
            what="The normalised table for programs that read columns: numbers in full precision, no number where there is none."
            onSave={saving.saveParquet}
          />
          <Good
            name="The ledger"
            file="ledger.csv"
            what="Every cell that was changed, flagged or not understood, with its row, column and reason."
            onSave={() => saving.saveTable('ledger.csv')}
          />
          <Good
            name="Their description"
            file="datapackage.json"
            what="Columns and units of the two tables as a Frictionless Data Package, for other programs."
            onSave={() => saving.saveTable('datapackage.json')}
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
      {study.sources.map((source, i) => {
        const file =
          source.profile ?? `${fileStem(sourceName(source).replace(/\.[^.,]+(?=,|$)/, ''))}.profile.json`;
        const kept = source.profile === undefined ? undefined : files.get(source.profile);
        return (
          <Good
            key={sourceName(source)}
            name={`Profile of ${sourceName(source)}`}
            file={file}
            what="How that table is read; keep it beside the table."
            onSave={() =>
              download(file, kept ?? `${JSON.stringify(view?.sources[i]?.profile ?? {}, null, 2)}\n`)
            }
          />
        );
      })}
    </ul>
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
