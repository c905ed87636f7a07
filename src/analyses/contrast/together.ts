import { InputError } from '../../errors.ts';
import { type Comparison, compareRecords } from '../../fragments/comparison/comparison.ts';
import { groupRows } from '../../fragments/groups.ts';
import { viewItems } from '../../fragments/items/items.ts';
import { allAtLevel } from '../../fragments/level/common-level.ts';
import { viewRows } from '../../fragments/subset.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../numerics/dissimilarity/dissimilarity.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { midranks } from '../../numerics/foundation/ranks.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { drawnByGroup } from '../../numerics/resampling/drawn-by-group.ts';
import { dispersionTest } from '../../numerics/tests/dispersion.ts';
import { permanova, similarityAnalysis } from '../../numerics/tests/permanova.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { levelSaid } from '../shared/level/said.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import { toldAt } from '../verdicts.ts';
import type { ContrastOptions } from './options.ts';
import type { Together } from './together-found.ts';
import { type Joint, togetherGuarded } from './together-guarded.ts';

/** Items of which every pair is compared at most: of very many some are drawn from each group, which the table says. */
const MOST_COMPARED = 3000;
/** Of a small group no fewer are drawn, so that it does not vanish. */
const LEAST_OF_A_GROUP = 100;

/** Work that one test may take: pairs of items times relabellings. */
const MOST_WORK = 4e8;

/**
 * Do the groups differ in several attributes at once? Permutational analysis of variance on the block
 * dissimilarity, the test of dispersion that must be read beside it, and the analysis of similarities.
 * Items are the things dealt, so fragments are first put together to items. Kinds among the attributes are compared at
 * the level that all groups record.
 */
export function contrastTogether(
  input: AnalysisInput,
  options: ContrastOptions,
  random: Random,
): Together | Unavailable {
  const { register, unit } = input;
  const items = unit === 'item' ? input.records : viewItems(input.records, register);
  const { table, ...level } = allAtLevel(items, options.of, options.by, register, { level: options.level });
  const joint = together(table, input, options, random);
  if ('why' in joint) return joint;
  const { compared, ...found } = joint;
  const recorded = level.differs ? together(items, input, options, random.stream('as recorded')) : null;
  return {
    ...found,
    level: levelSaid(options.level, level),
    guard: togetherGuarded(
      { items: table, told: found.told, names: found.groups.map(({ label }) => label), ...compared },
      input,
      options,
      random.stream('conditions'),
    ),
    asRecorded: recorded === null ? null : 'why' in recorded ? 'cannot be told' : recorded.told,
  };
}

interface JointTest extends Omit<Together, 'level' | 'asRecorded' | 'guard'> {
  readonly compared: Pick<Joint, 'rows' | 'matrix' | 'labels'>;
}

function together(
  items: FragmentTable,
  { register }: AnalysisInput,
  options: ContrastOptions,
  random: Random,
): JointTest | Unavailable {
  const grouping = groupRows(items, [options.by], register);
  const groups = grouping.groups.filter(({ rows }) => rows.length > 0);
  if (groups.length < 2) return { why: 'a comparison needs two groups' };
  const everyRow = groups.flatMap((group) => group.rows);
  const everyLabel = groups.flatMap((group, place) => group.rows.map(() => place));
  const drawn = drawnByGroup(everyLabel, {
    most: MOST_COMPARED,
    leastOfEach: LEAST_OF_A_GROUP,
    random: random.stream('drawn'),
  });
  const rows = Array.from(drawn, (place) => everyRow[place]);
  const labels = Array.from(drawn, (place) => everyLabel[place]);
  const comparison = comparedOrWhy(() =>
    compareRecords(viewRows(items, rows), register, comparisonSettings(options)),
  );
  if ('why' in comparison) return comparison;
  const whole = dissimilarities(comparison.spec);
  const { kept } = knownRecords(whole);
  const matrix = takeRecords(whole, kept);
  const present = [...new Set(Array.from(kept, (place) => labels[place]))].sort((a, b) => a - b);
  const dealt = Array.from(kept, (place) => present.indexOf(labels[place]));
  if (present.length < 2) return { why: 'fewer than two groups have items that can be compared' };
  const pairs = matrix.values.length;
  const relabellings = Math.max(
    199,
    Math.min(options.relabellings, Math.floor(MOST_WORK / Math.max(1, pairs))),
  );
  const dealing = (name: string) => ({ random: random.stream(name), relabellings });
  const ranks = { n: matrix.n, values: midranks(matrix.values).ranks };
  const place = permanova(matrix, dealt, dealing('place'));
  const dispersion = dispersionTest(matrix, dealt, {
    ...dealing('dispersion'),
    relabellings: Math.min(relabellings, 1999),
  });
  const pOf = (test: { readonly p: number } | Unavailable) => ('why' in test ? test : test.p);
  return {
    compared: { rows: Array.from(kept, (place) => rows[place]), matrix, labels: dealt },
    attributes: comparison.attributes.map(({ attribute }) => attribute.label),
    groups: present.map((group, place) => ({
      label: groups[group].labels[0],
      items: dealt.filter((label) => label === place).length,
    })),
    items: kept.length,
    drawnFrom: drawn.length === everyRow.length ? null : everyRow.length,
    setAside: whole.n - kept.length,
    place,
    told: toldAt(pOf(place), options.confidence),
    dispersion,
    spreadTold: toldAt(pOf(dispersion), options.confidence),
    similarity: similarityAnalysis(ranks, dealt, dealing('similarity')),
    notes: comparison.notes,
  };
}

/** Attributes that cannot be weighed together (all zero under a logarithm) may still be tested each alone. */
function comparedOrWhy(compare: () => Comparison): Comparison | Unavailable {
  try {
    return compare();
  } catch (fault) {
    if (fault instanceof InputError) return { why: fault.what.replaceAll(/"([^"]+)" \(\w+\)/g, '$1') };
    throw fault;
  }
}
