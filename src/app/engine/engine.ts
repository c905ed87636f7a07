import { InputError } from '../../errors.ts';
import { renderBrief } from '../../report/brief.ts';
import { dataPackage } from '../../report/data-package.ts';
import { renderReport } from '../../report/html.ts';
import { runFiles } from '../../report/run-files.ts';
import { writeParquet } from '../../sources/formats/write-parquet.ts';
import type { SourceReading } from '../../sources/source-reading.ts';
import { checkStudy, entriesOf } from '../../study/load.ts';
import { type Prepared, prepareStudy } from '../../study/prepare.ts';
import { serializeResults } from '../../study/results/json.ts';
import { analyse, analyseOne } from '../../study/run-study.ts';
import { askingOnly } from '../../study/some-asked.ts';
import { openWorkbooks, type Sheets } from '../../study/workbooks.ts';
import { readingPartsOf, type StudyDocument } from '../state/workspace.ts';
import { claimsFile, claimsView } from './claims-view.ts';
import { describedView } from './described-view.ts';
import { findDrawing } from './drawing-view.ts';
import { placeListed } from './finds-view.ts';
import { explainRecords, nearestGroups } from './pair-view.ts';
import type { Engine } from './protocol.ts';
import { labelsOf, recordView } from './record-view.ts';
import { viewSource } from './source-view.ts';
import { readStudyFile } from './study-file.ts';
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
  let last: { readonly key: string; readonly prepared: Prepared; readonly sheets: Sheets } | null = null;

  /** A table that cannot be read does not stop the others while the reader works on it. */
  const prepare = async (document: StudyDocument): Promise<Prepared> => {
    const study = checkStudy(askingOnly(document, document.analyses), 'study.json');
    const key = JSON.stringify([version, readingPartsOf(study)]);
    if (last?.key !== key) {
      const sheets = await openWorkbooks(study, files);
      last = { key, prepared: prepareStudy(study, files, { sheets, lenient: true }), sheets };
    }
    return { ...last.prepared, study };
  };

  /** What is taken away rests on every table, or is not made. */
  const prepareWhole = async (document: StudyDocument): Promise<Prepared> => {
    const prepared = await prepare(document);
    const unread = prepared.sources.find(isUnread)?.faults[0];
    if (unread !== undefined) throw new InputError(unread.what, unread.where, unread.mend);
    return prepared;
  };

  return {
    keepFiles: (changed, gone) => {
      for (const [name, bytes] of changed) files.set(name, bytes);
      for (const name of gone) files.delete(name);
      // Rules and claims are read when they are asked; only tables and their profiles are read beforehand.
      if ([...changed.keys(), ...gone].some((name) => last === null || readFrom(last.prepared.study, name)))
        version++;
    },
    studyFile: (text, name) => readStudyFile(text, name),
    open: async (document) => {
      const prepared = await prepare({ ...document, analyses: [] });
      return viewStudy(
        prepared,
        prepared.sources.map((reading) =>
          viewSource(reading, prepared.register, last?.sheets.get(reading.name)?.sheets ?? []),
        ),
      );
    },
    gridRows: (source, from, count) => last?.prepared.sources[source]?.grid.slice(from, from + count) ?? [],
    run: async (document, analysis, onProgress) => {
      const prepared = await prepare({ ...document, analyses: [analysis] });
      const [entry] = entriesOf(prepared.study);
      if (entry === undefined) throw new Error('the analysis is missing from its study');
      const result = analyseOne(prepared, entry, files, { onProgress });
      const unread = prepared.sources.filter(isUnread).map(({ name }) => name);
      if (unread.length === 0) return result;
      const turn = {
        what: `${unread.join(', ')} could not be read`,
        size: 'not part of this',
        overturns: false,
      };
      return { ...result, words: { ...result.words, unless: [turn, ...result.words.unless] } };
    },
    labels: async (document, attributes) =>
      labelsOf(await prepare({ ...document, analyses: [] }), attributes),
    record: async (document, id) => recordView(await prepare({ ...document, analyses: [] }), id),
    pair: async (document, analysis, left, right) =>
      explainRecords(await prepare({ ...document, analyses: [analysis] }), left, right),
    nearest: async (document, analysis, medoids) =>
      nearestGroups(await prepare({ ...document, analyses: [analysis] }), medoids),
    typed: async (document, attribute, text) =>
      readTyped(await prepare({ ...document, analyses: [] }), attribute, text),
    described: async (document, text) =>
      describedView((await prepare({ ...document, analyses: [] })).register, text),
    drawing: async (document, find) =>
      findDrawing((await prepare({ ...document, analyses: [] })).register, find),
    types: async (document, rules, file) =>
      typesView(await prepare({ ...document, analyses: [] }), rules, file),
    claims: async (document, analysis) =>
      claimsView(analysis, files, document.seed, await materialOf(document, prepare)),
    claimsFile: async (document, analysis, form) =>
      claimsFile(analysis, files, document.seed, await materialOf(document, prepare), form),
    placeFinds: async (document, placement, file, onProgress) =>
      placeListed(await prepare({ ...document, analyses: [placement] }), files, file, onProgress),
    results: async (document, onProgress) =>
      serializeResults(analyse(await prepareWhole(document), files, { onProgress })),
    report: async (document, parts, onProgress) => {
      const prepared = await prepareWhole(document);
      return renderReport({ prepared, results: analyse(prepared, files, { onProgress }), parts });
    },
    brief: async (document, parts, onProgress) => {
      const prepared = await prepareWhole(document);
      return renderBrief({ prepared, results: analyse(prepared, files, { onProgress }), parts });
    },
    parquet: async (document) => writeParquet((await prepareWhole(document)).fragments),
    dataPackage: async (document) => dataPackage(await prepareWhole(document)),
    runFiles: async (document, parts, onProgress) => {
      const prepared = await prepareWhole(document);
      return runFiles(prepared, analyse(prepared, files, { onProgress }), parts);
    },
  };
}

/** Printed figures can be checked without any data. */
async function materialOf(document: StudyDocument, prepare: (document: StudyDocument) => Promise<Prepared>) {
  return document.sources.length === 0 ? null : await prepare({ ...document, analyses: [] });
}

function isUnread({ grid, faults }: SourceReading): boolean {
  return grid.length === 0 && faults.length > 0;
}

function readFrom({ sources }: Prepared['study'], name: string): boolean {
  return sources.some(({ file, profile }) => file === name || profile === name);
}
