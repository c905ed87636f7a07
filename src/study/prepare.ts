import type { Counts } from '../analyses/contract.ts';
import type { Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { deriveColumns } from '../fragments/derive.ts';
import { collapseItems } from '../fragments/items/items.ts';
import { settleWitness, type Witness } from '../fragments/items/witness.ts';
import { composeKinds } from '../fragments/kinds/kinds.ts';
import { registerMixtures } from '../fragments/kinds/mixed.ts';
import { oneRowEach } from '../fragments/quantity.ts';
import { selectRows } from '../fragments/select.ts';
import { takeRows } from '../fragments/subset.ts';
import type { Column, FragmentTable } from '../fragments/table.ts';
import { combineSources } from '../sources/combine/combine.ts';
import type { LikelyDuplicate } from '../sources/combine/duplicates.ts';
import { type CompoundName, compoundNames } from '../sources/names/compound-names.ts';
import { NAMED, type NearNames, nearNames } from '../sources/names/near-names.ts';
import { nameIn } from '../sources/reading/assemble.ts';
import type { Fault, LedgerEntry, RowSetAside, SourceReading } from '../sources/source-reading.ts';
import { studyRegister } from './load.ts';
import { readStudySource, sourceHead, unreadable } from './read-study-source.ts';
import { coarsenPlaces } from './restriction/coarsen.ts';
import { applyRestrictions, type Restriction, withheldAside } from './restriction/restrict.ts';
import type { SourceHead } from './results/results.ts';
import type { Study } from './schema.ts';
import { sourceName } from './source-name.ts';
import type { Sheets } from './workbooks.ts';

/** A study's material, read and laid out, before anything is computed from it. */
export interface Prepared {
  readonly study: Study;
  readonly register: Register;
  /** What the kinds of fabric are composed of: the structure and facets, by id. */
  readonly kindOf: readonly string[];
  readonly sources: readonly SourceReading[];
  readonly heads: readonly SourceHead[];
  /** Every change, flag and riddle of every source and of their joining. */
  readonly ledger: readonly LedgerEntry[];
  /** Rows of different sources that may be one find and that nobody has decided about; rows of `all`. */
  readonly duplicates: readonly LikelyDuplicate[];
  /** What is to be put right or decided in the sources and in their joining. */
  readonly faults: readonly Fault[];
  /** All fragments of all sources, derived attributes included. */
  readonly all: FragmentTable;
  /** The fragments that meet the study's conditions. */
  readonly fragments: FragmentTable;
  /** What the analyses are given: the same fragments, or one row an item. */
  readonly records: FragmentTable;
  /** Records that a source withholds wholly, and those of which neither name nor place is shown. */
  readonly restriction: Restriction;
  /** What one record is: an item only where `witness` is confirmed. */
  readonly unit: 'item' | 'fragment';
  readonly witness: Witness;
  /** The objects that the tables seem to name, one a row of `all`, while nobody has confirmed them. */
  readonly suggestedItem: readonly string[];
  /** Names that may be spellings of one, and that nobody has decided about. */
  readonly nearNames: readonly NearNames[];
  /** Names made up of others, that are one of those as far as is known. */
  readonly compoundNames: readonly CompoundName[];
  readonly n: Counts;
  readonly disagreements: readonly { readonly attribute: string; readonly items: number }[];
}

/** What a question rests on: all but how the sources were read. */
export type Material = Omit<
  Prepared,
  'sources' | 'heads' | 'ledger' | 'duplicates' | 'faults' | 'kindOf' | 'disagreements'
>;

/** That part of it, to be handed to another thread: the ledger alone may be half of all that was read. */
export function materialOf(prepared: Prepared): Material {
  const {
    study,
    register,
    all,
    fragments,
    records,
    restriction,
    unit,
    witness,
    suggestedItem,
    nearNames,
    compoundNames,
    n,
  } = prepared;
  return {
    study,
    register,
    all,
    fragments,
    records,
    restriction,
    unit,
    witness,
    suggestedItem,
    nearNames,
    compoundNames,
    n,
  };
}

export type Progress = (share: number, what: string) => void;

export interface PrepareOptions {
  readonly onProgress?: Progress;
  /** The workbooks that the study names, opened beforehand. */
  readonly sheets?: Sheets;
  /** A source that cannot be read counts as empty and says why among its faults; the others are read. */
  readonly lenient?: boolean;
}

/**
 * Reads, combines, derives, selects and collapses: everything before the first statistic.
 *
 * @param files bytes by the paths that the study writes.
 * @throws InputError for a file that is missing or cannot be read, unless `lenient`.
 */
export function prepareStudy(
  study: Study,
  files: ReadonlyMap<string, Uint8Array>,
  { onProgress, sheets = new Map(), lenient = false }: PrepareOptions = {},
): Prepared {
  const known = studyRegister(study);
  const read = study.sources.map((source, place) => {
    onProgress?.(place / (study.sources.length + 1), `reading ${sourceName(source)}`);
    try {
      return readStudySource(source, files, known, sheets, study.names);
    } catch (fault) {
      if (!lenient || !(fault instanceof InputError)) throw fault;
      return unreadable(source, fault, known);
    }
  });
  onProgress?.(study.sources.length / (study.sources.length + 1), 'combining the sources');
  const combined = combineSources(read, known, study.duplicates);
  const readings = read.map((reading) => withSetAside(reading, combined.setAside.get(reading.name) ?? []));
  const restricted = coarsenPlaces(
    applyRestrictions(
      { ...combined, faults: [...readings.flatMap((reading) => reading.faults), ...combined.faults] },
      [...readings.flatMap((reading) => reading.ledger), ...combined.ledger],
    ),
    study.coarsenPlaces,
  );
  const { witness, table } = settleWitness(restricted.table, study.witness);
  const given = registerMixtures(table, known);
  const unit = witness.status === 'confirmed' ? study.unit : 'fragment';
  const kinds = composeKinds(deriveColumns(table, given), given, study.kind, study.kindLanguage);
  const { table: all, register } = kinds;
  const selection = selectRows(all, study.select, register);
  const fragments = oneRowEach(takeRows(all, selection.rows));
  const collapsed = collapseItems(fragments, register);
  return {
    study,
    register,
    kindOf: kinds.of,
    sources: readings,
    heads: readings.map((reading, place) =>
      sourceHead(reading, files.get(study.sources[place].file) ?? new Uint8Array()),
    ),
    ledger: restricted.ledger,
    duplicates: restricted.duplicates,
    faults: restricted.faults,
    restriction: { withheld: restricted.withheld, placeWithheld: restricted.placeWithheld },
    all,
    fragments,
    records: unit === 'item' ? collapsed.table : fragments,
    unit,
    witness,
    ...alikeNames(all, study.names),
    suggestedItem: restricted.table.item,
    n: {
      fragments: fragments.rows,
      items: new Set(fragments.item).size,
      setAside: [...withheldAside(restricted.withheld), ...selection.setAside],
    },
    disagreements: collapsed.disagreements,
  };
}

/** Names that may be one, and names made up of others: what is made up of two is no spelling of a third. */
function alikeNames(
  all: FragmentTable,
  decided: Study['names'],
): Pick<Prepared, 'nearNames' | 'compoundNames'> {
  const counts = NAMED.map((id) => [id, countNames(all.columns.get(id), all.rows)] as const);
  const made = counts.flatMap(([id, names]) => compoundNames(id, names, decided));
  return {
    compoundNames: made,
    nearNames: counts.flatMap(([id, names]) => {
      const whole = new Map(names);
      for (const { attribute, name } of made) if (attribute === id) whole.delete(name);
      return nearNames(id, whole, decided);
    }),
  };
}

function countNames(column: Column | undefined, rows: number): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (let row = 0; row < rows; row++) {
    const name = nameIn(column, row);
    if (name !== '') counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return counts;
}

/**
 * The first thing in the sources that the reader should put right or decide before figures are
 * published from them (a ragged row, two columns of one header); null where there is none. The sources
 * are read all the same, so that a screen can show them.
 */
export function firstFault(prepared: Prepared): InputError | null {
  const [first] = prepared.faults;
  if (first === undefined) return null;
  const { what, where, mend } = first;
  return new InputError(what, where, mend);
}

/** A decision about duplicates moves rows from those kept to those set aside. */
function withSetAside(reading: SourceReading, rows: readonly RowSetAside[]): SourceReading {
  if (rows.length === 0) return reading;
  return {
    ...reading,
    rowsKept: reading.rowsKept - rows.length,
    rowsSetAside: [...reading.rowsSetAside, ...rows].sort((a, b) => a.row - b.row),
  };
}
