import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import { sharedLeanings } from '../../numerics/assemblages/shared-leaning.ts';
import { assemblageSimilarity, unlikeness } from '../../numerics/assemblages/similarity.ts';
import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { principalCoordinates } from '../../numerics/ordination/principal-coordinates.ts';
import { adjustP } from '../../numerics/tests/adjust.ts';
import type { AnalysisInput } from '../contract.ts';
import { LEAST_RANKED } from '../likeness-rank.ts';
import { nameOneOf } from '../phrasing.ts';
import { conditionsBeside } from '../shared/guard/beside.ts';
import { countedAtLevel, lackingAtLevel } from '../shared/level/counted.ts';
import { levelSaid } from '../shared/level/said.ts';
import { toldAt } from '../verdicts.ts';
import type { Line, MapFound } from './found.ts';
import { outlinesOf } from './geojson.ts';
import type { MapOptions } from './options.ts';
import { groupsOf, locate } from './places.ts';

/**
 * Where are the places, what is made there, whom are they like, and which of them lean the same way in their kinds,
 * further than chance would have them?
 *
 * @throws InputError for fewer than two places or kinds, a place or a kind that is not there, or a coast that cannot be read.
 */
export function computeMap(input: AnalysisInput, options: MapOptions): MapFound {
  const { records, register, unit, random } = input;
  const counted = countedAtLevel(records, options.assemblages, options.of, register, options.level);
  const { table, recorded } = counted;
  const items = itemCounts(table);
  const labelOf = (id: string) =>
    register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
  const to =
    options.to ??
    largest(
      table.rows,
      items.map((list) => list.length),
    );
  known(table.rows, to, 'to', 'place');
  const share = options.share ?? mostUneven(table);
  known(table.columns, share, 'share', 'kind');
  const likeness = assemblageSimilarity(table.counts, options.coefficient);
  const n = table.rows.length;
  const own = table.rows.indexOf(to);
  const kind = table.columns.indexOf(share);
  const sizes = table.counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  const { located, coordinates } = locate(input, table, options);
  const groups = groupsOf(input, table, options);
  const apart = unlikeness(likeness, options.coefficient);
  const axes = apart.values.some(Number.isNaN) ? { why: 'a place is empty' } : principalCoordinates(apart, 2);
  const { lines, deals } = linesOf(table, options, random.stream('lines'));
  const others = recorded === null ? null : linesOf(recorded, options, random.stream('as recorded')).lines;
  const drawn = lines.filter((line) => line.drawn).length;
  const verdict = lines.length === 0 ? 'cannot be told' : drawn === 0 ? 'none' : 'some';
  const coast = options.coast === undefined ? undefined : input.files?.get(options.coast);
  if (options.coast !== undefined && coast === undefined)
    throw new InputError(
      'the file of the coast is missing',
      { file: options.coast },
      'put it beside the study',
    );
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, unit, rows);
  return {
    options,
    unit,
    placesLabel: labelOf(options.assemblages),
    kindsLabel: labelOf(options.of),
    level: levelSaid(options.level, counted.found),
    beside: conditionsBeside({
      records,
      register,
      by: labelOf(options.assemblages),
      groups: table.rows.map((_, place) =>
        table.entries.filter(({ row }) => row === place).map(({ record }) => record),
      ),
      about: [options.assemblages, options.of],
      across: options.assemblages,
      confidence: options.confidence,
      random: random.stream('conditions'),
    }),
    places: table.rows.map((label, row) => ({
      label,
      records: sizes[row],
      items: items[row].length,
      ...located[row],
      share: table.counts[row][kind] / sizes[row],
      likeness: row === own ? null : likeness.values[condensedIndex(n, row, own)],
      ...(groups?.of[row] ?? { group: null, mark: null }),
      onAxes:
        'why' in axes
          ? null
          : [axes.coordinates[row * axes.axes], axes.axes > 1 ? axes.coordinates[row * axes.axes + 1] : 0],
      judged: items[row].length >= LEAST_RANKED,
    })),
    coordinates,
    to,
    share,
    groupLabel: groups?.label ?? null,
    lines,
    deals,
    asRecorded: others === null ? null : recordedOtherwise(others, verdict),
    verdict,
    tooFew: table.rows.flatMap((label, row) =>
      items[row].length < LEAST_RANKED ? [{ label, items: items[row].length }] : [],
    ),
    without: 'why' in coordinates ? [] : table.rows.filter((_, row) => located[row].at === null),
    axesShares: 'why' in axes ? [] : Array.from(axes.eigenvalues, (value) => value / axes.positive),
    outlines: coast === undefined || options.coast === undefined ? [] : outlinesOf(coast, options.coast),
    n: {
      ...behind(table.entries.map(({ record }) => record)),
      setAside: lackingAtLevel({ table, leftOut: [counted.found] }, labelOf).map(({ reason, rows }) => ({
        reason,
        fragments: behind(rows).fragments,
      })),
    },
  };
}

function recordedOtherwise(lines: readonly Line[], verdict: MapFound['verdict']) {
  const drawn = lines.filter((line) => line.drawn).length;
  return { drawn, overturns: verdict !== 'cannot be told' && (drawn === 0) !== (verdict === 'none') };
}

/** Pairs of places with items enough, the surest first; the share of false ones among those drawn is held (Benjamini & Hochberg). */
function linesOf(
  table: CrossedTable,
  options: MapOptions,
  random: Random,
): { readonly lines: Line[]; readonly deals: number } {
  const { confidence, coefficient } = options;
  const likeness = assemblageSimilarity(table.counts, coefficient).values;
  const items = itemCounts(table);
  const judged = items.map((list) => list.length >= LEAST_RANKED);
  const n = table.rows.length;
  const { leaning, p, deals } = sharedLeanings(items, table.columns.length, judged, {
    random,
    deals: options.deals,
  });
  const pairs = table.rows.flatMap((_, first) =>
    table.rows.slice(first + 1).flatMap((__, rest) => {
      const second = first + 1 + rest;
      const at = condensedIndex(n, first, second);
      return Number.isNaN(p.values[at]) ? [] : [{ first, second, at }];
    }),
  );
  const adjusted = adjustP(
    pairs.map(({ at }) => p.values[at]),
    'benjamini-hochberg',
  );
  const lines = pairs
    .map(
      ({ first, second, at }, place): Line => ({
        first,
        second,
        likeness: likeness[at],
        leaning: leaning.values[at],
        p: p.values[at],
        pAdjusted: adjusted[place],
        drawn: toldAt(adjusted[place], confidence) === 'told apart' && leaning.values[at] > 0,
      }),
    )
    .sort((a, b) => a.p - b.p || b.leaning - a.leaning);
  return { lines, deals };
}

function largest(labels: readonly string[], sizes: readonly number[]): string {
  return labels[sizes.indexOf(sizes.reduce((a, b) => Math.max(a, b)))];
}

/** The kind whose shares spread the furthest over the places, in standard deviations. */
function mostUneven({ counts, columns }: CrossedTable): string {
  const spread = columns.map((_, kind) => {
    const shares = counts.map((line) => line[kind] / line.reduce((sum, count) => sum + count, 0));
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    return shares.reduce((sum, share) => sum + (share - mean) * (share - mean), 0);
  });
  return largest(columns, spread);
}

function known(labels: readonly string[], asked: string, path: string, what: string): void {
  if (labels.includes(asked)) return;
  throw new InputError(`there is no ${what} "${asked}"`, { path }, nameOneOf(labels));
}
