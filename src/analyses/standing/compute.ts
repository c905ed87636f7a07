import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { compareRecords } from '../../fragments/comparison/comparison.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { groupRows } from '../../fragments/groups.ts';
import { viewItems } from '../../fragments/items/items.ts';
import { viewRows } from '../../fragments/subset.ts';
import type { AnalysisInput } from '../contract.ts';
import { nameOneOf } from '../phrasing.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { conditionsBeside } from '../shared/guard/beside.ts';
import { countedAtLevel, lackingAtLevel } from '../shared/level/counted.ts';
import { closerSaid, levelSaid } from '../shared/level/said.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import { lossesIn } from '../shared/survival/compute.ts';
import { setApart } from './apart.ts';
import { axesPlace } from './axes.ts';
import { besideOthers } from './beside.ts';
import type { Ranking, StandingFound } from './found.ts';
import { guarded } from './guarded.ts';
import { likenessTo } from './likeness.ts';
import { missingFor } from './missing.ts';
import { nearerIn } from './near.ts';
import type { StandingOptions } from './options.ts';
import { rankingOf } from './ranking.ts';
import { confineTo } from './region.ts';
import { atHomeElsewhere, ownItems, siteDistances, unlikeOthers } from './unlike.ts';
import { likenessWithin, sameRows } from './within-same.ts';

/**
 * Where does this whole site sit among the others: whom is it like in its kinds, where does it fall on the
 * axes of the others, how unlike are its items to theirs, what sets it apart, which items are at home
 * elsewhere? Items are counted, whatever the unit of the study, since fragments of one are not independent.
 *
 * @throws InputError for a label that no assemblage has, one without any item of a recorded kind, fewer than
 * two assemblages or kinds, and numbers where kinds are needed.
 */
export function computeStanding(input: AnalysisInput, options: StandingOptions): StandingFound {
  const { register, random, unit } = input;
  const report = input.onProgress ?? (() => undefined);
  const everything = unit === 'item' ? input.records : viewItems(input.fragments, register);
  const labelOf = (id: string) =>
    register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
  const all = groupRows(everything, [options.among], register).groups;
  const whole = all.find(({ labels }) => labels[0] === options.site);
  if (whole === undefined) {
    throw new InputError(
      `there is no "${options.site}" among the values of "${labelOf(options.among)}" (${options.among})`,
      { path: 'site' },
      nameOneOf(all.map(({ labels }) => labels[0])),
    );
  }
  const confined = confineTo(
    everything,
    { label: options.site, rows: whole.rows },
    options.among,
    options.confineTo,
    register,
  );
  const items = confined.region.length === 0 ? everything : viewRows(everything, confined.rows);
  const { groups, ungrouped } = groupRows(items, [options.among], register);
  const site = groups.findIndex(({ labels }) => labels[0] === options.site);
  const counted = countedAtLevel(items, options.among, options.of, register, options.level);
  const { table, recorded, finer } = counted;
  const row = table.rows.indexOf(options.site);
  if (row < 0) {
    throw new InputError(
      `no item of "${options.site}" has a value of "${labelOf(options.of)}" (${options.of})`,
      { path: 'of' },
      'name another attribute of kinds under "of"',
    );
  }
  report(0.05, 'drawing items');
  const likeness = likenessTo(table, row, options, random.stream('likeness'));
  const ranking = rankingOf(table, row, likeness, options, random.stream('ranking'));
  const asRecorded = recorded === null ? null : rankingIn(recorded, 'as recorded', options, random);
  const closer = finer === null ? null : rankingIn(finer.table, 'told closer', options, random);
  const same = options.sameWithin
    .map((id) => sameRows(items, groups[site].rows, id, register))
    // Where every item has the value, among those alone is among all.
    .filter((one) => 'why' in one || one.rows.size < items.rows);
  const sameWithin = same.map((one) =>
    likenessWithin(table, row, one, ranking.most, options, random.stream(`within ${one.attribute}`)),
  );
  report(0.4, 'placing it on the axes of the others');
  const axes = axesPlace(table, row, options, random.stream('cloud'));
  report(0.5, 'comparing items');
  const comparison = compareRecords(
    items,
    register,
    comparisonSettings({ ...options, of: options.attributes }),
  );
  const own = ownItems(groups[site].rows, random.stream('own items'));
  const compared = { own, distances: siteDistances(comparison.spec, own) };
  const unlike = unlikeOthers(comparison.spec, compared, groups, site, options, random.stream('unlike'));
  report(0.8, 'looking for what sets it apart');
  const sides = {
    site: groups[site].rows,
    others: groups.flatMap(({ rows }, group) => (group === site ? [] : rows)),
  };
  const alike = same.map((one) =>
    'why' in one
      ? null
      : {
          site: sides.site.filter((row) => one.rows.has(row)),
          others: sides.others.filter((row) => one.rows.has(row)),
        },
  );
  const attributes = comparison.attributes
    .map(({ attribute }) => attribute)
    .filter(({ id }) => id !== options.among);
  const behind = (rows: readonly number[]) => countBehind(input.fragments, items, 'item', rows);
  const found: StandingFound = {
    options,
    amongLabel: labelOf(options.among),
    kindsLabel: labelOf(options.of),
    region: confined.region,
    level: levelSaid(options.level, counted.found),
    table,
    row,
    siteItems: new Set(table.entries.filter((entry) => entry.row === row).map(({ item }) => item)).size,
    likeness,
    ranking,
    asRecorded,
    toldCloser: finer === null || closer === null ? null : { said: closerSaid(finer), ranking: closer },
    sameWithin,
    missing: missingFor(items, table, row, ranking, options, register),
    guard: guarded(items, table, row, ranking, options, input, random.stream('conditions')),
    losses: lossesIn(items, table, { rows: options.among, columns: options.of }, register),
    axes,
    ...unlike,
    ownDrawn: own.length === groups[site].rows.length ? null : own.length,
    atHome: atHomeElsewhere(items, compared, groups, site, options.nearest),
    apart: setApart(items, attributes, sides, alike, options, register, random.stream('apart')),
    nearer: nearerIn(items, table, row, options, { random: random.stream('nearer'), register }),
    beside: besideOthers(items, groups, site, options, input),
    besideConditions: conditionsBeside({
      records: items,
      register,
      by: labelOf(options.among),
      groups: [sides.site, sides.others],
      about: [options.among, options.of, ...options.beside],
      across: options.among,
      confidence: options.confidence,
      random: random.stream('conditions beside'),
    }),
    marks: marksOf(input, options.among),
    comparedOn: attributes.map(({ label }) => label),
    notes: comparison.notes,
    n: {
      ...behind(groups.flatMap(({ rows }) => rows)),
      setAside: [
        ...confined.outside.map(({ reason, rows }) => ({
          reason,
          fragments: countBehind(input.fragments, everything, 'item', rows).fragments,
        })),
        ...ungrouped.map(({ attribute, rows }) => ({
          reason: `${labelOf(attribute)} not recorded`,
          fragments: behind(rows).fragments,
        })),
        // What is too broad has no say in counts of kinds, but in everything else.
        ...lackingAtLevel({ table: { ...table, lacking: [] }, leftOut: [counted.found] }, labelOf).map(
          ({ reason, rows }) => ({
            reason: `counts of kinds: ${reason}`,
            fragments: behind(rows).fragments,
          }),
        ),
      ],
    },
  };
  report(1, 'compared');
  return found;
}

/** Who is the most and the least alike with kinds counted otherwise; nobody where the site has none of them. */
function rankingIn(
  table: CrossedTable,
  how: string,
  options: StandingOptions,
  random: AnalysisInput['random'],
): Ranking | null {
  const row = table.rows.indexOf(options.site);
  if (row < 0) return null;
  const quick = { ...options, resamples: 199, relabellings: 99 };
  const likeness = likenessTo(table, row, quick, random.stream(`likeness ${how}`));
  return rankingOf(table, row, likeness, options, random.stream(`ranking ${how}`));
}
