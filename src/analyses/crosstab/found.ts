import type { CrossedTable } from '../../fragments/crossed-table.ts';
import type { ShareBounds } from '../../fragments/share-bounds.ts';
import type { Limits } from '../../numerics/foundation/limits.ts';
import type { Association } from '../../numerics/tests/contingency.ts';
import type { Findings, Unavailable } from '../contract.ts';
import type { Marks } from '../shared/figure/marks.ts';
import type { Guard } from '../shared/guard/found.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { MissingKinds } from '../shared/missing/compute.ts';
import type { MixturesCounted } from '../shared/options/mixtures.ts';
import type { PooledKinds } from '../shared/pooled/shares.ts';
import type { Loss } from '../shared/survival/found.ts';
import type { Told } from '../verdicts.ts';
import type { CrosstabOptions } from './options.ts';

/** The test that the verdict rests on, and why it was chosen. */
export interface ChosenTest {
  readonly name: string;
  readonly p: number;
  readonly method: string;
  readonly reason: string;
  /** Whether the reader asked for this test by name. */
  readonly asked: boolean;
}

/** One cell of the table. */
export interface Cell {
  readonly count: number;
  readonly fragments: number;
  readonly items: number;
  readonly expected: number;
  readonly residual: number;
  readonly contribution: number;
  /** Whether the count stands out from what is expected, at the confidence. */
  readonly stands: 'more' | 'fewer' | 'as expected';
}

/** A cell fit to be quoted as evidence: it stands out, in lines with enough records, at the common level. */
export interface QuotedCell {
  readonly row: string;
  readonly column: string;
  readonly stands: 'more' | 'fewer';
  readonly count: number;
  /** Records of the row. */
  readonly of: number;
  /** What could not have survived at its place, and makes it scarce or others plenty; null where nothing does. */
  readonly lost: Pick<Loss, 'fibre' | 'place'> | null;
}

/** The same question asked of the table counted otherwise. */
export interface CountedOtherwise {
  readonly change:
    | 'told more closely'
    | 'as recorded'
    | 'at the common level'
    | 'line left out'
    | 'look-alikes as one';
  /** The broad kinds that stand for narrower ones at the level, the row or column left out, or the kinds that look alike. */
  readonly names: readonly string[];
  readonly told: Told;
  readonly p: number | Unavailable;
  readonly v: number | Unavailable;
}

/** Records behind each row, each column and the table; below the sums of counts where a record counts more than once. */
export interface Bases {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly all: number;
}

/** A row or column with few records. */
export interface SmallLine {
  readonly label: string;
  readonly records: number;
}

export interface CrosstabFound extends Findings {
  readonly options: CrosstabOptions;
  readonly unit: 'fragment' | 'item';
  readonly rowsLabel: string;
  readonly columnsLabel: string;
  readonly table: CrossedTable;
  /** Where mixtures count in each of their kinds; null where they are kinds of their own. */
  readonly mixtures: MixturesCounted;
  readonly bases: Bases;
  /** Symbols and colours of the columns. */
  readonly marks: Marks;
  /** At which level kinds were counted, and what that changed. */
  readonly level: LevelSaid;
  /** What the shares of the narrowest kinds may be, where some records name only broader ones. */
  readonly bounds: readonly ShareBounds[];
  /** Shares of each row drawn towards what the rows have in common; null where rows or columns are too few. */
  readonly pooled: PooledKinds | null;
  readonly association: Association;
  /** How many fragments could not be counted, where they are enough to be mentioned; null otherwise. */
  readonly manyAside: number | null;
  readonly test: ChosenTest | Unavailable;
  readonly told: Told;
  /** What the verdict hangs on: empty where it stands however the table was counted. */
  readonly hangsOn: readonly CountedOtherwise[];
  readonly otherwise: readonly CountedOtherwise[];
  readonly interval: Limits | Unavailable;
  readonly cells: readonly (readonly Cell[])[];
  /** Residuals beyond this stand out at the confidence. */
  readonly standsBeyond: number;
  /** Strongest first. */
  readonly quoted: readonly QuotedCell[];
  /** Those fit to be named in an answer: with more than expected, where there are any. */
  readonly named: readonly QuotedCell[];
  readonly smallLines: readonly SmallLine[];
  /** Whether chi-square was asked for although the expected counts do not carry it. */
  readonly doubtful: boolean;
  /** Whether the table is so thin that the limits of V hold somewhat less often than asked. */
  readonly thin: boolean;
  /** What who recorded, sources, recovery, preservation, structure and period make of the verdict. */
  readonly guard: Guard;
  /** What the missing kinds would have to be for another verdict; null where none is missing or that cannot be tried. */
  readonly missing: MissingKinds | null;
  /** Fibre whose absence from a place says nothing. */
  readonly losses: readonly Loss[];
}
