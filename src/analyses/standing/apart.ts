import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { midpoint, termAt } from '../../fragments/accessors.ts';
import { termLabel } from '../../fragments/groups.ts';
import { atLevel } from '../../fragments/level/common-level.ts';
import type { Column, FragmentTable, TermColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { association, withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import { fisherExact } from '../../numerics/tests/fisher-exact.ts';
import { cliffsDelta, mannWhitney } from '../../numerics/tests/mann-whitney.ts';
import type { Unavailable } from '../contract.ts';
import { printNumber, printQuantity } from '../phrasing.ts';
import { toldAt } from '../verdicts.ts';
import type { Apart } from './found.ts';
import type { StandingOptions } from './options.ts';

export interface TwoSides {
  readonly site: readonly number[];
  readonly others: readonly number[];
}

/**
 * Which attributes set the site apart from all other assemblages taken together, largest effect first:
 * Cliff's delta with the Mann-Whitney p for numbers and grades, the corrected V of Cramér with Fisher's exact
 * p for kinds; p adjusted over the attributes (Holm). One value an item: the middle of a range.
 *
 * Kinds are counted at the level that all assemblages record, as everywhere.
 *
 * @param same the same two sides among like items only (of one preservation, say), one each; null where not known.
 */
export function setApart(
  items: FragmentTable,
  attributes: readonly AttributeDefinition[],
  sides: TwoSides,
  same: readonly (TwoSides | null)[],
  { confidence, level, among }: Pick<StandingOptions, 'confidence' | 'level' | 'among'>,
  register: Register,
  random: Random,
): Apart[] {
  const found = attributes.flatMap((attribute): Omit<Apart, 'pAdjusted' | 'told'>[] => {
    const column = atLevel(items, attribute.id, among, register, {
      level: typeof level === 'string' ? level : 'common',
    }).table.columns.get(attribute.id);
    if (column === undefined || column.kind === 'text') return [];
    const stream = random.stream(attribute.id);
    const whole = effectOf(column, sides, register, stream);
    return [
      {
        ...whole,
        attribute: attribute.label,
        unit: attribute.unit ?? '',
        within: same.map((alike) =>
          alike === null ? { why: 'not recorded' } : effectOf(column, alike, register, stream).effect,
        ),
      },
    ];
  });
  const adjusted = adjustKnown(
    found.map(({ p }) => p),
    'holm',
  );
  const size = ({ effect }: Pick<Apart, 'effect'>) => (typeof effect === 'number' ? Math.abs(effect) : -1);
  return found
    .map((one, place): Apart => {
      const told = toldAt(adjusted[place], confidence);
      // A corrected V of 0 has no direction to tell of, whatever its p.
      const has = typeof one.effect === 'number' && one.effect !== 0;
      return {
        ...one,
        pAdjusted: adjusted[place],
        told: told === 'told apart' && !has ? 'not told apart' : told,
      };
    })
    .sort((a, b) => size(b) - size(a));
}

type Effect = Omit<Apart, 'attribute' | 'unit' | 'pAdjusted' | 'told' | 'within'>;

function effectOf(
  column: Exclude<Column, { kind: 'text' }>,
  sides: TwoSides,
  register: Register,
  random: Random,
): Effect {
  if (column.kind === 'numeric') return numberEffect((row) => midpoint(column, row), sides, column.attribute);
  const { levels } = column.attribute;
  if (column.attribute.scale === 'ordinal' && levels !== undefined) {
    const grade = (row: number) => {
      const place = levels.indexOf(termAt(column, row) ?? '');
      return place < 0 ? Number.NaN : place;
    };
    return numberEffect(grade, sides, column.attribute);
  }
  return kindEffect(column, sides, register, random);
}

function numberEffect(
  readingOf: (row: number) => number,
  sides: TwoSides,
  { unit, levels }: AttributeDefinition,
): Effect {
  const [site, others] = [sides.site, sides.others].map((rows) => sortedValues(rows.map(readingOf)));
  const base = {
    measure: 'Cliff’s delta' as const,
    siteItems: site.length,
    otherItems: others.length,
  };
  if (site.length === 0 || others.length === 0) {
    const why = { why: `not recorded for ${site.length === 0 ? 'the site' : 'any other'}` };
    return { ...base, effect: why, p: why, method: '', says: '' };
  }
  const test = mannWhitney(site, others);
  const said = (values: Float64Array) => {
    const middle = quantileSorted(values, 0.5);
    return levels === undefined ? printQuantity(middle, unit ?? '') : levels[Math.round(middle)];
  };
  return {
    ...base,
    effect: cliffsDelta(site, others),
    p: 'why' in test ? test : test.p,
    method: 'why' in test ? '' : `Mann-Whitney, ${test.method}`,
    says: `median ${said(site)} against ${said(others)}`,
  };
}

/** Tables that would take longer are drawn. */
const MOST_VISITS = 50_000;

function kindEffect(column: TermColumn, sides: TwoSides, register: Register, random: Random): Effect {
  const terms = [sides.site, sides.others].map((rows) => rows.flatMap((row) => termAt(column, row) ?? []));
  const kinds = [...new Set(terms.flat())].sort();
  const base = {
    measure: 'corrected Cramér’s V' as const,
    siteItems: terms[0].length,
    otherItems: terms[1].length,
  };
  const counts = terms.map((side) => kinds.map((kind) => side.filter((term) => term === kind).length));
  const { table } = withoutEmptyLines(counts);
  const found: ReturnType<typeof association> =
    terms[0].length === 0 || terms[1].length === 0
      ? { why: `not recorded for ${terms[0].length === 0 ? 'the site' : 'any other'}` }
      : association(table);
  if ('why' in found) return { ...base, effect: found, p: found, method: '', says: '' };
  const test = fisherExact(table, random, 1999, MOST_VISITS);
  const p: number | Unavailable = 'why' in test ? test : test.p;
  const most = found.residuals[0].reduce((best, value, at, all) => (value > all[best] ? at : best), 0);
  const label = termLabel(column.attribute, kinds[most], register);
  return {
    ...base,
    effect: found.cramersVCorrected,
    p,
    method: 'why' in test ? '' : `Fisher, ${test.method}`,
    says: `${label}: ${share(counts[0], most)} against ${share(counts[1], most)}`,
  };
}

function share(counts: readonly number[], place: number): string {
  return `${printNumber(counts[place])}/${counts.reduce((sum, count) => sum + count, 0)}`;
}
