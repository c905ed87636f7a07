import type { Register } from '../../attributes/definition.ts';
import { turnedOver } from '../../fragments/derived/formulas.ts';
import { type Interval, isNothing } from '../../fragments/intervals.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import { inWords } from '../ledger/ledger.ts';
import { countedOver } from '../reading/counted-over.ts';
import { type CheckedRow, type RowCheck, rowOf } from './checked-row.ts';
import { DERIVED_FACETS, type DerivedFacetId, derivedFacet, verdictOf } from './derived-facets.ts';
import { fibreByMethod, fibreOnImpression } from './fibre-checks.ts';

/** Two cells of one row that do not go together; both are kept as they stand. */
export interface CrossCheck {
  readonly row: number;
  /** Short stable name of the check. */
  readonly rule: string;
  readonly cells: readonly { readonly attribute: string; readonly raw: string }[];
  /** One sentence: what does not agree, and what it may be. */
  readonly why: string;
}

/** Both intervals leave no value in common; a hundredth is allowed for rounding on the way. */
function apart(a: Interval, b: Interval): boolean {
  if (isNothing(a) || isNothing(b)) return false;
  return a[0] > b[1] * 1.01 || b[0] > a[1] * 1.01;
}

const densityAgainstSpacing: RowCheck = ({ number }) => {
  const expected = number('density2');
  const spacing = number('rowSpacing');
  if (isNothing(expected) || isNothing(spacing) || !apart(turnedOver(expected), spacing)) return null;
  const [low, high] = turnedOver(expected);
  return {
    rule: 'density-against-spacing',
    of: ['density2', 'rowSpacing'],
    why: `So many rows per cm are ${inWords(low, high)} mm apart (10 divided by the count), which the spacing is not.`,
  };
};

/** The final letter of a ply notation against the twist that stands beside it. */
const plyAgainstTwist =
  (system: string): RowCheck =>
  ({ term }) => {
    const ply = term(`ply${system}`);
    const twist = term(`twist${system}`);
    const final = /^[SZ]/u.exec(ply ?? '')?.[0];
    if (ply === null || final === undefined || (twist !== 'S' && twist !== 'Z') || final === twist)
      return null;
    const singles = /[sz]/u.exec(ply)?.[0]?.toUpperCase() === twist;
    return {
      rule: 'ply-against-twist',
      of: [`ply${system}`, `twist${system}`],
      why: `The notation is plied ${final}, the final twist beside it is ${twist}${singles ? ', which is that of the singles' : ''}.`,
    };
  };

const pileAbsent: RowCheck = ({ absent, has }) => {
  const measured = ['pileLength', 'pileDensity'].find((id) => has(id));
  if (!absent('pile') || measured === undefined) return null;
  return {
    rule: 'pile-absent-and-measured',
    of: ['pile', measured],
    why: 'No pile is said to be there, and yet it was measured.',
  };
};

const LARGER_THAN_PIECE = ['rowSpacing', 'rowGap', 'coilPitch', 'meshGauge', 'diameter1', 'diameter2'];

const largerThanPiece =
  (id: string): RowCheck =>
  ({ number }) => {
    const size = longestSide(number);
    const measure = number(id);
    if (isNothing(measure) || size === null || !(measure[0] > size.most)) return null;
    return {
      rule: 'larger-than-piece',
      of: [id, ...size.of],
      why: `It is larger than the whole piece, which is at most ${inWords(size.most, size.most)} mm long: a unit, or a column, may be wrong.`,
    };
  };

function longestSide(
  number: CheckedRow['number'],
): { readonly most: number; readonly of: readonly string[] } | null {
  const sides = (['length', 'width'] as const).filter((id) => !isNothing(number(id)));
  const most = greatest(sides.map((id) => number(id)[1]));
  // One side alone may be the shorter one.
  return sides.includes('length') && Number.isFinite(most) ? { most, of: sides } : null;
}

const countedBeyondPiece =
  (id: string, fieldOf: (raw: string) => number | null): RowCheck =>
  ({ number, has, raw }) => {
    const size = longestSide(number);
    const field = fieldOf(raw(id));
    if (!has(id) || size === null || field === null || !(field > size.most)) return null;
    return {
      rule: 'counted-beyond-piece',
      of: [id, ...size.of],
      why: `It is counted over ${field} mm on a piece of at most ${inWords(size.most, size.most)} mm: the count was stretched, and its precision is less than it looks.`,
    };
  };

/** A facet that was recorded and that the counts or the gap say otherwise of. */
const facetAgainstDerived =
  (id: DerivedFacetId): RowCheck =>
  (row) => {
    const found = derivedFacet(id, row);
    if (found === null || verdictOf(found, row) !== 'disagree') return null;
    const { rule, of, why } = found;
    return { rule, of: [id, ...of], why };
  };

const overlappingRows: RowCheck = ({ number }) => {
  const spacing = number('rowSpacing');
  const width = number('rowWidth');
  if (isNothing(spacing) || isNothing(width) || !(width[0] > spacing[1] * 1.05)) return null;
  return {
    rule: 'rows-overlap',
    of: ['rowSpacing', 'rowWidth'],
    why: 'The rows are wider than they are apart: they overlap, or a unit is wrong.',
  };
};

/** A measure of a system or a technique that the structure of the row has not. */
const foreignMeasure =
  (id: string, listed: readonly string[]): RowCheck =>
  ({ term, has, within }) => {
    const structure = term('structure');
    if (structure === null || !has(id)) return null;
    const fits = listed.some(
      (one) => within('structure', structure, one) || within('structure', one, structure),
    );
    if (fits) return null;
    return {
      rule: 'not-of-this-structure',
      of: [id, 'structure'],
      why: 'A fabric of this structure has no such measure: one of the two cells may stand in the wrong row or column.',
    };
  };

/**
 * Checks across the fields of a row: what its cells say together and cannot both be right about. Nothing is
 * changed or left out for it. Geometry and common practice, no source.
 *
 * @param counted attribute -> mm over which its column says that it was counted.
 */
export function crossChecks(
  table: FragmentTable,
  register: Register,
  counted: ReadonlyMap<string, number> = new Map(),
): CrossCheck[] {
  const counts = ['density1', 'density2', 'stitchDensity', 'loopDensity'];
  const measures = [...table.columns.values()]
    .map(({ attribute }) => attribute)
    .filter(
      ({ block, appliesTo, derived }) =>
        (block === 'spacing' || block === 'structure') && appliesTo && !derived,
    );
  const checks: RowCheck[] = [
    densityAgainstSpacing,
    ...['1', '2'].map(plyAgainstTwist),
    pileAbsent,
    ...LARGER_THAN_PIECE.map(largerThanPiece),
    ...counts.map((id) => countedBeyondPiece(id, (raw) => countedOver(raw) ?? counted.get(id) ?? null)),
    ...['fibre', 'fibre2'].flatMap((id) => [fibreOnImpression(id), fibreByMethod(id)]),
    ...DERIVED_FACETS.map((id) => facetAgainstDerived(id)),
    overlappingRows,
    ...measures.map(({ id, appliesTo }) => foreignMeasure(id, appliesTo ?? [])),
  ];
  const found: CrossCheck[] = [];
  for (let at = 0; at < table.rows; at++) {
    const row = rowOf(table, register, at);
    for (const check of checks) {
      const fault = check(row);
      if (fault === null) continue;
      const { of, ...said } = fault;
      const cells = of.map((attribute) => ({ attribute, raw: row.raw(attribute) }));
      found.push({ row: at, ...said, cells });
    }
  }
  return found;
}
