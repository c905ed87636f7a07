import type { Register } from '../../attributes/definition.ts';
import { gapOverWidth, turnedOver } from '../../fragments/derived/formulas.ts';
import { faceFromCounts } from '../../fragments/face-from-counts.ts';
import { EITHER } from '../../fragments/grades.ts';
import { type Interval, isNothing } from '../../fragments/intervals.ts';
import { spacingClassOf } from '../../fragments/spacing-class.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { inWords } from '../ledger/ledger.ts';
import { type CheckedRow, rowOf } from './checked-row.ts';

/** Facets that follow from measurements, where these were taken as well. */
export const DERIVED_FACETS = ['spacingClass', 'face'] as const;
export type DerivedFacetId = (typeof DERIVED_FACETS)[number];

/** How often a facet that was recorded goes with what the measurements of the same row say of it. */
export interface DerivedAgreement {
  readonly attribute: DerivedFacetId;
  readonly label: string;
  /** Rows that record the facet and what it follows from. */
  readonly both: number;
  readonly agree: number;
  readonly disagree: number;
  /** The readings reach across a limit, or lie between the limits: what was recorded is one of several possible. */
  readonly undecided: number;
}

/** The same in a sentence, behind the label. */
export function agreementInWords({ both, agree, disagree, undecided }: DerivedAgreement): string {
  return `${both} ${both === 1 ? 'row records' : 'rows record'} it and what it follows from: ${agree} agree, ${disagree} disagree, in ${undecided} the readings leave it open`;
}

interface Derived {
  readonly rule: string;
  /** What the measurements leave possible; empty where they settle nothing. */
  readonly possible: readonly string[];
  readonly recorded: string;
  /** The measurements, by attribute. */
  readonly of: readonly string[];
  readonly why: string;
}

type Cells = Pick<CheckedRow, 'number' | 'term' | 'within' | 'limits'>;

/** What a row records of a facet and what its measurements leave possible; null where either is missing. */
export function derivedFacet(id: DerivedFacetId, row: Cells): Derived | null {
  const recorded = row.term(id);
  if (recorded === null) return null;
  return id === 'face' ? derivedFace(recorded, row) : derivedSpacing(recorded, row);
}

/** Whether the recorded facet is what the measurements say, one of several that they allow, or none of them. */
export function verdictOf({ possible, recorded }: Derived, { within }: Pick<Cells, 'within'>): Verdict {
  const allowed = recorded.split(EITHER).some((one) =>
    // "faced" says no more than that one system hides the other, whichever was recorded.
    possible.some((other) => one === other || within('face', one, other) || within('face', other, one)),
  );
  if (possible.length > 0 && !allowed) return 'disagree';
  return possible.length === 1 && !recorded.includes(EITHER) ? 'agree' : 'undecided';
}

type Verdict = 'agree' | 'disagree' | 'undecided';

function derivedSpacing(recorded: string, { number, limits }: Cells): Derived | null {
  const [spacing, width, gap] = [number('rowSpacing'), number('rowWidth'), number('rowGap')];
  const measured = isNothing(spacing) ? 'rowGap' : 'rowSpacing';
  const ratio: Interval = isNothing(width)
    ? [Number.NaN, Number.NaN]
    : isNothing(spacing)
      ? [gap[0] / width[1], gap[1] / width[0]]
      : gapOverWidth(spacing, width);
  if (isNothing(spacing) && isNothing(ratio)) return null;
  const found = spacingClassOf(ratio, spacing, limits.openness);
  return {
    rule: 'spacing-class-against-gap',
    recorded,
    possible: found?.term.split(EITHER) ?? [],
    of: isNothing(ratio) ? ['rowSpacing'] : [measured, 'rowWidth'],
    why: isNothing(ratio)
      ? `The rows are said to be ${recorded}, and ${inWords(...spacing)} mm apart they are ${found?.term ?? 'undecided'} at any width of row that is taken as possible.`
      : `The rows are said to be ${recorded}, and the gap comes to ${inWords(round(ratio[0]), round(ratio[1]))} of a row's width.`,
  };
}

function derivedFace(recorded: string, { number, term, within, limits }: Cells): Derived | null {
  const structure = term('structure');
  const warp = number('density1');
  const [counted, spacing] = [number('density2'), number('rowSpacing')];
  const weft = isNothing(counted) ? turnedOver(spacing) : counted;
  const woven = within('structure', structure, 'tabby') || within('structure', structure, 'twill');
  if (!woven || isNothing(warp) || isNothing(weft) || !(weft[0] > 0)) return null;
  const balance: Interval = [warp[0] / weft[1], warp[1] / weft[0]];
  const found = faceFromCounts(balance, limits.face);
  return {
    rule: 'face-against-counts',
    recorded,
    possible: found === null ? [] : [found.term],
    of: ['density1', isNothing(counted) ? 'rowSpacing' : 'density2'],
    why: `The face is said to be ${WORDS[recorded] ?? recorded}, and system 1 is ${inWords(round(balance[0]), round(balance[1]))} times as dense as system 2.`,
  };
}

const WORDS: Readonly<Record<string, string>> = { weftFaced: 'weft-faced', warpFaced: 'warp-faced' };

function round(value: number): number {
  return Math.round(100 * value) / 100;
}

/** Facets recorded and derived side by side; those that no row has both of are left out. */
export function derivedAgreement(table: FragmentTable, register: Register): DerivedAgreement[] {
  return DERIVED_FACETS.flatMap((attribute) => {
    const counts = { agree: 0, disagree: 0, undecided: 0 };
    for (let at = 0; at < table.rows; at++) {
      const cells = rowOf(table, register, at);
      const found = derivedFacet(attribute, cells);
      if (found !== null) counts[verdictOf(found, cells)]++;
    }
    const both = counts.agree + counts.disagree + counts.undecided;
    const label = register.attributes.get(attribute)?.label ?? attribute;
    return both === 0 ? [] : [{ attribute, label, both, ...counts }];
  });
}
