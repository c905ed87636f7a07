import type { Register } from '../attributes/definition.ts';
import { isWithin } from '../attributes/tree.ts';
import { termAt } from './accessors.ts';
import { angleClassOf } from './derived/angle-class.ts';
import { type Derived, type DerivedTerm, fillNumbers, fillTerms } from './derived/fill.ts';
import * as formulas from './derived/formulas.ts';
import { impliedInterval, nominal } from './derived/precision.ts';
import { orderUntoldSystems } from './derived/systems.ts';
import { settleTurns } from './derived/turns.ts';
import { faceFromCounts } from './face-from-counts.ts';
import { limitsOf } from './facet-limits.ts';
import { type Interval, isNothing, NOTHING } from './intervals.ts';
import { spacingClassOf } from './spacing-class.ts';
import type { FragmentTable } from './table.ts';

/**
 * Adds what follows from what was recorded; a recorded measure is never replaced.
 *
 * - directions as they are on the object, the row held upright: derived/turns.ts;
 * - systems that nobody told apart, the denser first: derived/systems.ts;
 * - `rowSpacing` (mm) and `density2` (per cm) from each other, 10 / x, where rows are a thing of the
 *   structure; a coil's pitch is its row spacing, loops per cm of looping are its density along the row;
 * - `rowGap` = spacing - row width, and each of the three from the other two; `gapRatio` = gap / row width;
 * - `meshGauge` (bar) and `meshStretched`, two bars, from each other;
 * - `balance` = density1 / density2 and its logarithm, `balanceEither` the larger over the smaller;
 * - `cover1`, `cover2` = width x density / 10, of rows by the width of the row and never of one of its strands;
 *   `openness` = (1 - cover1)(1 - cover2), covers cut at 1 (Peirce 1937, J. Text. Inst. 28:T45);
 * - `bindingPoints`, `threadLength`, `turnsPerMetre`, `linearDensity`, `angleClass`; `spacingClass`, see
 *   spacing-class.ts; `face`, see face-from-counts.ts.
 *
 * Intervals, and the printed precision of single numbers, go through every formula. A value that is derived
 * says from which attributes (`derivedFrom`). Limits are those of the study (facet-limits.ts). A column is added only where at least one row gains a value.
 */
export function deriveColumns(recorded: FragmentTable, register: Register): FragmentTable {
  const limits = limitsOf(register);
  const applies = (id: string, row: number) => appliesTo(register, id, structureAt(recorded, row));
  const alike = (row: number) =>
    structureAt(recorded, row) === null || (register.attributes.has('denser') && applies('denser', row));
  const table = orderUntoldSystems(settleTurns(recorded, register), alike);
  const columns = new Map(table.columns);

  const ends = (id: string, row: number): Interval => impliedInterval(columns.get(id), row);
  const from = (ids: readonly string[], formula: formulas.Formula, row: number): Derived | null => {
    const operands = ids.map((id) => ends(id, row));
    if (operands.some(isNothing)) return null;
    const middles = ids.map((id) => nominal(columns.get(id), row));
    // A formula may leave a range even at exact readings; its middle then stands for it.
    const [low, high] = middles.some(Number.isNaN) ? NOTHING : formula(...middles.map(pointInterval));
    const centre = low === high ? low : low + (high - low) / 2;
    return { ends: formula(...operands), centre, from: ids };
  };
  /** Fills an attribute by the first of several ways that the readings of a row allow. */
  const fill = (
    id: string,
    ways: readonly (readonly [ids: readonly string[], formula: formulas.Formula])[],
    where: (row: number) => boolean = () => true,
  ) => {
    const attribute = register.attributes.get(id);
    if (attribute === undefined) return;
    const filled = fillNumbers(columns.get(id), attribute, table.rows, (row) => {
      if (!where(row)) return null;
      for (const [ids, formula] of ways) {
        const made = from(ids, formula, row);
        if (made !== null) return made;
      }
      return null;
    });
    if (filled !== undefined) columns.set(id, filled);
  };
  const classify = (id: string, termOf: (row: number) => DerivedTerm | null) => {
    const attribute = register.attributes.get(id);
    if (attribute === undefined) return;
    const filled = fillTerms(columns.get(id), attribute, table.rows, termOf);
    if (filled !== undefined) columns.set(id, filled);
  };
  const listedFor = (id: string) => (row: number) =>
    register.attributes.get(id)?.appliesTo !== undefined && applies(id, row);

  const { turnedOver, same, less, sum, over, times, half, doubled } = formulas;
  fill('rowSpacing', [[['coilPitch'], same]], listedFor('coilPitch'));
  fill(
    'rowSpacing',
    [
      [['density2'], turnedOver],
      [['rowGap', 'rowWidth'], sum],
    ],
    (row) => applies('rowSpacing', row),
  );
  fill('coilPitch', [[['rowSpacing'], same]], listedFor('coilPitch'));
  fill('density2', [[['rowSpacing'], turnedOver]]);
  fill('density1', [[['loopDensity'], same]], listedFor('loopDensity'));
  fill('loopDensity', [[['density1'], same]], listedFor('loopDensity'));
  fill('rowWidth', [[['rowSpacing', 'rowGap'], less]]);
  fill('rowGap', [[['rowSpacing', 'rowWidth'], less]]);
  fill('gapRatio', [
    [['rowSpacing', 'rowWidth'], formulas.gapOverWidth],
    [['rowGap', 'rowWidth'], over],
  ]);
  fill('meshStretched', [[['meshGauge'], doubled]]);
  fill('meshGauge', [[['meshStretched'], half]]);
  const densities = ['density1', 'density2'];
  fill('denser', [[densities, formulas.greater]], listedFor('denser'));
  fill('sparser', [[densities, formulas.lesser]], listedFor('sparser'));
  fill('balance', [[densities, over]], (row) => applies('balance', row));
  fill('balanceEither', [[densities, formulas.larger]], listedFor('balanceEither'));
  fill('logBalance', [[['balance'], formulas.logarithm]]);
  fill('cover1', [[['diameter1', 'density1'], formulas.cover]]);
  fill('cover2', [[['rowWidth', 'rowSpacing'], over]]);
  // A row is a pair of strands or a coil: one strand's diameter says nothing of how much a row covers.
  fill('cover2', [[['diameter2', 'density2'], formulas.cover]], (row) => !listedFor('rowWidth')(row));
  fill('openness', [[['cover1', 'cover2'], formulas.open]]);
  fill('bindingPoints', [[densities, times]], listedFor('bindingPoints'));
  fill('threadLength', [[densities, formulas.lengthPerArea]], listedFor('threadLength'));
  for (const system of ['1', '2']) {
    const width = `diameter${system}`;
    const angle = `twistAngle${system}`;
    fill(`turnsPerMetre${system}`, [[[angle, width], formulas.turnsPerMetre]]);
    fill(`linearDensity${system}`, [[[width], formulas.tex]]);
    classify(`angleClass${system}`, (row) => angleClassOf(angle, ends(angle, row)));
  }
  classify('spacingClass', (row) =>
    applies('spacingClass', row)
      ? spacingClassOf(ends('gapRatio', row), ends('rowSpacing', row), limits.openness)
      : null,
  );
  classify('face', (row) =>
    applies('face', row) ? faceFromCounts(ends('balance', row), limits.face) : null,
  );
  return { ...table, columns };
}

function pointInterval(value: number): Interval {
  return [value, value];
}

function structureAt(table: FragmentTable, row: number): string | null {
  const column = table.columns.get('structure');
  return column?.kind === 'term' ? termAt(column, row) : null;
}

/** An attribute without a list applies everywhere; one with a list needs a structure within it. */
function appliesTo(register: Register, id: string, structure: string | null): boolean {
  const listed = register.attributes.get(id)?.appliesTo;
  if (listed === undefined) return true;
  const vocabulary = register.vocabularies.get('structure');
  if (structure === null || vocabulary === undefined) return false;
  return listed.some((term) => isWithin(vocabulary, structure, term));
}
