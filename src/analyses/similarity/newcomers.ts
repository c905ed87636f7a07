import type { Register } from '../../attributes/definition.ts';
import { matchTerm } from '../../attributes/matching.ts';
import { ancestors } from '../../attributes/tree.ts';
import { InputError } from '../../errors.ts';
import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { drawnCounts, type ItemKinds, likenessInterval } from '../../numerics/assemblages/draws.ts';
import { assemblageSimilarity, isDistance } from '../../numerics/assemblages/similarity.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { type Correspondence, projectRow } from '../../numerics/ordination/correspondence.ts';
import { percentileLimits } from '../../numerics/resampling/percentile-limits.ts';
import type { Newcomer } from './found.ts';
import type { SimilarityOptions } from './options.ts';

/** Counts typed in, in the columns of the table; `strange` counts kinds that no assemblage has. */
export interface TypedSite {
  readonly label: string;
  readonly counts: readonly number[];
  readonly strange: number;
}

/**
 * The counts of sites that are known by counts alone.
 *
 * @throws InputError for a kind that is neither one of the table's nor a term of the vocabulary, for a label that
 * the table has already, and for a site without anything.
 */
export function typedSites(
  table: CrossedTable,
  options: SimilarityOptions,
  register: Register,
): readonly TypedSite[] {
  const vocabulary = register.vocabularies.get(register.attributes.get(options.of)?.vocabulary ?? '');
  return options.newSites.map(({ label, counts }, place) => {
    const path = `newSites.${place}`;
    if (table.rows.includes(label))
      throw new InputError(
        `there is an assemblage "${label}" already`,
        { path },
        'give the new one another name',
      );
    const own = table.columns.map(() => 0);
    let strange = 0;
    for (const [kind, count] of Object.entries(counts)) {
      const match = vocabulary === undefined ? null : matchTerm(kind, vocabulary);
      const term = match?.kind === 'exact' ? match.id : undefined;
      // A kind that is counted as a broader one, since some assemblage records no further, is counted so here too.
      const names =
        term === undefined || vocabulary === undefined
          ? [kind]
          : [term, ...ancestors(vocabulary, term)].map(
              (own) => vocabulary.terms.find(({ id }) => id === own)?.label ?? kind,
            );
      const column = names.map((name) => table.columns.indexOf(name)).find((at) => at >= 0) ?? -1;
      if (column >= 0) own[column] += count;
      else if (term !== undefined || vocabulary === undefined) strange += count;
      else
        throw new InputError(
          `"${kind}" is no kind that is known`,
          { path },
          `write one of ${table.columns.map((column) => `"${column}"`).join(', ')}`,
        );
    }
    if (own.every((count) => count === 0) && strange === 0)
      throw new InputError(`the new site "${label}" has no counts`, { path }, 'give at least one');
    return { label, counts: own, strange };
  });
}

/** One item of its kind for each count: a site known by counts alone says nothing of what belongs together. */
export function itemsOf({ counts, strange }: TypedSite): ItemKinds {
  const unit = (column: number) => Float64Array.from(counts, (_, at) => (at === column ? 1 : 0));
  return [
    ...counts.flatMap((count, column) => Array.from({ length: count }, () => unit(column))),
    ...Array.from({ length: strange }, () => unit(-1)),
  ];
}

/** Where a late assemblage falls on axes that others have made, with a cloud of its items drawn again. */
export function placeLate(
  late: { readonly label: string; readonly items: ItemKinds; readonly strange: number },
  found: Correspondence,
  columns: number,
  options: SimilarityOptions,
  random: Random,
): Omit<Newcomer, 'likeness' | 'most'> {
  const { items } = late;
  const two = (at: Float64Array): [number, number] => [at[0], found.axes > 1 ? at[1] : 0];
  const place = (choice: ArrayLike<number>) => projectRow(found, drawnCounts(items, choice, columns));
  const whole = drawnCounts(
    items,
    items.map((_, item) => item),
    columns,
  );
  const at = projectRow(found, whole);
  const cloud: [number, number][] = [];
  const choice = new Int32Array(items.length);
  for (let draw = 0; draw < options.resamples && !('why' in at); draw++) {
    for (let i = 0; i < choice.length; i++) choice[i] = random.integer(choice.length);
    const drawn = place(choice);
    if (!('why' in drawn)) cloud.push(two(drawn.coordinates));
  }
  const tail = (1 - options.confidence) / 2;
  const kept = new Set(found.keptColumns);
  const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);
  return {
    label: late.label,
    n: sum(whole) + late.strange,
    unplaced: sum(whole.map((count, column) => (kept.has(column) ? 0 : count))) + late.strange,
    at: 'why' in at ? { why: 'it has no kind that those on the axes have' } : two(at.coordinates),
    cloud,
    limits:
      'why' in at
        ? []
        : two(at.coordinates).map((own, axis) =>
            percentileLimits(
              own,
              cloud.map((place) => place[axis]),
              tail,
            ),
          ),
  };
}

/** How alike a site known by counts is to every assemblage of the table, most alike first. */
export function likenessOf(
  site: TypedSite,
  table: CrossedTable,
  items: readonly ItemKinds[],
  options: SimilarityOptions,
  random: Random,
): Newcomer['likeness'] {
  const { coefficient, resamples, confidence } = options;
  // A kind of its own keeps what no other has in the total.
  const whole = [...site.counts, site.strange];
  const own = itemsOf(site).map((item) => {
    const strange = item.every((count) => count === 0);
    return Float64Array.from([...item, strange ? 1 : 0]);
  });
  const wider = (item: Float64Array) => Float64Array.from([...item, 0]);
  const lines = table.rows.map((label, row) => {
    const rest = Float64Array.from(whole, (_, column) =>
      table.counts.reduce((sum, line, other) => sum + (other === row ? 0 : (line[column] ?? 0)), 0),
    );
    const rows = coefficient === 'chi-square' && rest.some((count) => count > 0) ? [rest] : [];
    return {
      label,
      value: assemblageSimilarity([whole, [...table.counts[row], 0], ...rows], coefficient).values[0],
      interval: likenessInterval(own, items[row].map(wider), rest, {
        coefficient,
        resamples,
        confidence,
        random: random.stream(label),
      }),
    };
  });
  const sign = isDistance(coefficient) ? 1 : -1;
  return lines.sort((a, b) => sign * (a.value - b.value));
}
