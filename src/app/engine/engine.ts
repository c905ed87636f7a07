import { dataPackage } from '../../report/data-package.ts';
import { renderReport } from '../../report/html.ts';
import { checkStudy, entriesOf } from '../../study/load.ts';
import { type Prepared, prepareStudy } from '../../study/prepare.ts';
import { serializeResults } from '../../study/results-json.ts';
import { analyse, analyseOne } from '../../study/run-study.ts';
import type { StudyDocument } from '../state/workspace.ts';
import { claimsFile, claimsView } from './claims-view.ts';
import { explainRecords } from './pair-view.ts';
import type { Engine } from './protocol.ts';
import { labelsOf, recordView } from './record-view.ts';
import { viewSource } from './source-view.ts';
import { viewStudy } from './study-view.ts';
import { readTyped } from './typed.ts';
import { typesView } from './types-view.ts';

/**
 * The worker's side: holds the files and the last reading of them, and answers what the screens ask.
 * All mathematics is in the analyses; here their answers are only fetched and laid out.
 */
export function createEngine(): Engine {
  const files = new Map<string, Uint8Array>();
  let version = 0;
  let last: { readonly key: string; readonly prepared: Prepared } | null = null;

  const prepare = (document: StudyDocument): Prepared => {
    const study = checkStudy(document, 'study.json');
    const key = JSON.stringify([
      version,
      study.sources,
      study.attributes,
      study.terms,
      study.select,
      study.unit,
    ]);
    if (last?.key !== key) last = { key, prepared: prepareStudy(study, files) };
    return { ...last.prepared, study };
  };

  return {
    keepFiles: (changed, gone) => {
      for (const [name, bytes] of changed) files.set(name, bytes);
      for (const name of gone) files.delete(name);
      // Rules and claims are read when they are asked; only tables and their profiles are read beforehand.
      if ([...changed.keys(), ...gone].some((name) => last === null || readFrom(last.prepared.study, name)))
        version++;
    },
    open: (document) => {
      const prepared = prepare({ ...document, analyses: [] });
      return viewStudy(
        prepared,
        prepared.sources.map((reading) => viewSource(reading, prepared.register)),
      );
    },
    gridRows: (source, from, count) => last?.prepared.sources[source]?.grid.slice(from, from + count) ?? [],
    run: (document, analysis, onProgress) => {
      const prepared = prepare({ ...document, analyses: [analysis] });
      const [entry] = entriesOf(prepared.study);
      if (entry === undefined) throw new Error('the analysis is missing from its study');
      return analyseOne(prepared, entry, files, { onProgress });
    },
    labels: (document, attributes) => labelsOf(prepare({ ...document, analyses: [] }), attributes),
    record: (document, id) => recordView(prepare({ ...document, analyses: [] }), id),
    pair: (document, analysis, left, right) =>
      explainRecords(prepare({ ...document, analyses: [analysis] }), left, right),
    typed: (document, attribute, text) => readTyped(prepare({ ...document, analyses: [] }), attribute, text),
    types: (document, rules, file) => typesView(prepare({ ...document, analyses: [] }), rules, file),
    claims: (document, analysis) => claimsView(analysis, files, document.seed, materialOf(document, prepare)),
    claimsFile: (document, analysis, form) =>
      claimsFile(analysis, files, document.seed, materialOf(document, prepare), form),
    results: (document, onProgress) => serializeResults(analyse(prepare(document), files, { onProgress })),
    report: (document, plotly, onProgress) => {
      const prepared = prepare(document);
      return renderReport({ prepared, results: analyse(prepared, files, { onProgress }), plotly });
    },
    dataPackage: (document) => dataPackage(prepare(document)),
  };
}

/** Printed figures can be checked without any data. */
function materialOf(document: StudyDocument, prepare: (document: StudyDocument) => Prepared) {
  return document.sources.length === 0 ? null : prepare({ ...document, analyses: [] });
}

function readFrom({ sources }: Prepared['study'], name: string): boolean {
  return sources.some(({ file, profile }) => file === name || profile === name);
}
