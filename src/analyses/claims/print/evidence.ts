import type { PrintedFigure } from '../reading/claim.ts';
import type { PrintedTable } from '../reading/printed-table.ts';
import type { Quantity } from '../reading/terms.ts';

/** Figures of one set, attribute and selection: they describe one sample. */
export interface Sample {
  readonly figures: readonly PrintedFigure[];
  /** The sample's figure of this quantity, the finest print of it, and no vague one. */
  readonly one: (quantity: Quantity) => PrintedFigure | undefined;
  /** Its number of records: its own, or the one that its set gives for this selection or for all. */
  readonly n: PrintedFigure | undefined;
}

/** Everything printed that may be held against each other. */
export interface Evidence {
  readonly figures: readonly PrintedFigure[];
  readonly samples: readonly Sample[];
  /** Name -> its figures; claims without a set stand alone and are left out. */
  readonly sets: ReadonlyMap<string, readonly PrintedFigure[]>;
  /** The whole printed tables, by name. */
  readonly tables: ReadonlyMap<string, PrintedTable>;
}

export function gatherEvidence(figures: readonly PrintedFigure[], tables: readonly PrintedTable[]): Evidence {
  const sets = collect(
    figures.filter(({ set }) => set !== ''),
    ({ set }) => set,
  );
  const groups = [...sets.values()].flatMap((set) => [
    ...collect(set, ({ attributes, selectText, versusText }) =>
      JSON.stringify([attributes, selectText, versusText]),
    ).values(),
  ]);
  return {
    figures,
    sets,
    tables: new Map(tables.map((table) => [table.name, table])),
    samples: groups.map((group) => sampleOf(group, sets.get(group[0].set) ?? group)),
  };
}

function sampleOf(group: readonly PrintedFigure[], set: readonly PrintedFigure[]): Sample {
  // Several numbers of records in one text are of several groups, and none of them is the sample's.
  const ofGroups = (figure: PrintedFigure) =>
    figure.quantity === 'n' &&
    figure.versusText !== '' &&
    group.some((other) => other !== figure && other.quantity === 'n' && other.line === figure.line);
  const plain = group.filter((figure) => !figure.vague && figure.counted.length === 0 && !ofGroups(figure));
  const one = (quantity: Quantity) => finest(plain.filter((figure) => figure.quantity === quantity));
  const [{ selectText }] = group;
  const sizes = set.filter(({ quantity, counted }) => quantity === 'n' && counted.length === 0);
  const bare = sizes.filter(({ attributes }) => attributes.length === 0);
  return {
    figures: group,
    one,
    n:
      one('n') ??
      finest(bare.filter((figure) => figure.selectText === selectText)) ??
      only(sizes.length === 1 ? bare.filter((figure) => figure.selectText === '') : []),
  };
}

/** Of a figure printed more than once, the finest print; that they agree with each other is looked at apart. */
export function finest(list: readonly PrintedFigure[]): PrintedFigure | undefined {
  const fineness = ({ values: [{ relation, number }] }: PrintedFigure) =>
    relation === '=' ? number.decimals + 1 : 0;
  return list.reduce<PrintedFigure | undefined>(
    (best, figure) => (best === undefined || fineness(figure) > fineness(best) ? figure : best),
    undefined,
  );
}

export function only<T>(list: readonly T[]): T | undefined {
  return list.length === 1 ? list[0] : undefined;
}

export function collect<T>(list: readonly T[], keyOf: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of list) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return groups;
}
