/**
 * Thrum as a library. Everything here runs in Node and in a browser; data frames and spreadsheets are
 * in `thrum/frames` (Node only).
 */

export type {
  Analysis,
  AnalysisInput,
  Answer,
  Counts,
  Figure,
  Findings,
  ResultColumn,
  ResultTable,
  TableCell,
  Turn,
  Unavailable,
} from './analyses/contract.ts';
export { ANALYSES, type Answered, type RegisteredAnalysis } from './analyses/register.ts';
export type { AttributeDefinition, Register, Term, Vocabulary } from './attributes/definition.ts';
export { matchAttribute, matchTerm } from './attributes/matching.ts';
export { defaultRegister, extendRegister } from './attributes/register.ts';
export { CELL_STATES, CERTAINTIES, type Reading } from './cells/reading.ts';
export { type FaultPlace, InputError } from './errors.ts';
export { midpoint, termAt } from './fragments/accessors.ts';
export {
  type Comparison,
  type ComparisonSettings,
  compareRecords,
} from './fragments/comparison/comparison.ts';
export { deriveColumns } from './fragments/derive.ts';
export { collapseItems } from './fragments/items/items.ts';
export { selectRows } from './fragments/select.ts';
export { takeRows } from './fragments/subset.ts';
export type { Column, FragmentTable, NumericColumn, TermColumn, TextColumn } from './fragments/table.ts';
export { assemblageSimilarity, type SimilarityCoefficient } from './numerics/assemblages/similarity.ts';
export { type Condensed, dissimilarityAt } from './numerics/dissimilarity/condensed.ts';
export { dissimilarities } from './numerics/dissimilarity/dissimilarity.ts';
export { createRandom, type Random } from './numerics/foundation/random.ts';
export { isUnavailable } from './numerics/foundation/unavailable.ts';
export { dataPackage } from './report/data-package.ts';
export { type ReportRequest, renderReport } from './report/html.ts';
export { type CombinedSources, combineSources } from './sources/combine/combine.ts';
export { parseJson } from './sources/formats/parse-json.ts';
export { checkProfile, type SourceProfile } from './sources/profile/profile.ts';
export { type ReadOptions, readSource } from './sources/read-source.ts';
export type { ColumnReading, LedgerEntry, SourceReading } from './sources/source-reading.ts';
export { checkStudy, entriesOf, loadStudy, studyFiles, studyRegister } from './study/load.ts';
export { type Prepared, type PrepareOptions, type Progress, prepareStudy } from './study/prepare.ts';
export { serializeResults } from './study/results/json.ts';
export type { AnalysisResult, Results, SourceHead, StudyHead } from './study/results/results.ts';
export { analyse, analyseOne, type RunOptions, runStudy } from './study/run-study.ts';
export type { AnalysisEntry, Study, StudyInput } from './study/schema.ts';
export { VERSION } from './study/version.ts';
export { openWorkbooks, type Sheets } from './study/workbooks.ts';
