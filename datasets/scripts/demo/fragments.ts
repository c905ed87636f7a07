import type { Random } from '../../../src/numerics/foundation/random.ts';
import { around, byShare, chance, dealt } from './draw.ts';
import {
  CHARRING,
  type Fibre,
  KINDS,
  type Kind,
  LOST,
  MEASURES,
  type Measure,
  type Mode,
  type Phase,
  SITES,
  type SiteTruth,
  TRADITIONS,
  type Tradition,
  type Twist,
  UNLIKE_ITS_KIND,
  UNSEEN,
} from './scenario.ts';
import { type Sides, sidesOf } from './sides.ts';

/** One original object, as it was made. */
export interface Item {
  readonly id: string;
  readonly site: SiteTruth;
  readonly phase: Phase;
  readonly tradition: Tradition;
  readonly kind: Kind;
  readonly mode: Mode;
  readonly fibre: Fibre;
  readonly twist1: Twist | null;
  readonly twist2: Twist | null;
  readonly slant: 'S' | 'Z' | null;
  /** Ply of each system where its elements are plied. */
  readonly ply1: string | null;
  readonly ply2: string | null;
  readonly measures: Readonly<Partial<Record<Measure, number>>>;
  readonly sides: Sides;
  readonly use: string;
}

/** What a recorder can see of one surviving fragment; null = applies, but cannot be seen. */
export interface Fragment {
  readonly id: string;
  readonly item: Item;
  readonly measures: Readonly<Partial<Record<Measure, number | null>>>;
  readonly twist1: Twist | null;
  readonly twist2: Twist | null;
  readonly slant: 'S' | 'Z' | null;
  readonly fibre: Fibre | null;
  readonly length: number;
  readonly width: number;
  /** The recorder could say no more than the broader structure. */
  readonly vague: boolean;
}

export interface World {
  readonly items: readonly Item[];
  readonly fragments: readonly Fragment[];
  /** Items that were made but left no trace. */
  readonly lost: readonly { readonly site: string; readonly kind: Kind; readonly items: number }[];
}

/** Extra numbers of fragments that one item broke into: 1 mostly, up to 5. */
const BREAKAGE: readonly (readonly [number, number])[] = [
  [1, 0.7],
  [2, 0.16],
  [3, 0.08],
  [4, 0.04],
  [5, 0.02],
];

/** Makes every item of every site, lets it decay and breaks it into fragments. */
export function makeWorld(random: Random): World {
  const items: Item[] = [];
  const lost: { site: string; kind: Kind; items: number }[] = [];
  for (const site of SITES) {
    for (const { phase, tradition, items: count } of site.made) {
      const stream = random.stream(`${site.name}/${phase}/${tradition}`);
      const kinds = dealt(stream, TRADITIONS[tradition], count);
      for (const kind of kinds) {
        const mode = byShare(stream, site.modes);
        if (
          LOST.some((loss) => loss.mode === mode && loss.kinds.includes(kind) && chance(stream, loss.share))
        ) {
          count1(lost, site.name, kind);
          continue;
        }
        items.push(makeItem(stream, site, phase, tradition, kind, mode, items));
      }
    }
  }
  const wreck = SITES.find((site) => site.prefix === 'PW')!;
  const stream = random.stream('odd pieces');
  for (let i = 0; i < 2; i++) {
    items.push(makeItem(stream, wreck, 'Late', 'Strand', 'odd piece', 'waterlogged', items));
  }
  const fragments = items.flatMap((item) => breakUp(random.stream(item.id), item));
  return { items, fragments, lost };
}

function count1(lost: { site: string; kind: Kind; items: number }[], site: string, kind: Kind): void {
  const entry = lost.find((known) => known.site === site && known.kind === kind);
  if (entry) entry.items += 1;
  else lost.push({ site, kind, items: 1 });
}

function makeItem(
  random: Random,
  site: SiteTruth,
  phase: Phase,
  tradition: Tradition,
  kind: Kind,
  mode: Mode,
  before: readonly Item[],
): Item {
  const truth = KINDS[kind];
  const measures: Partial<Record<Measure, number>> = {};
  for (const measure of MEASURES) {
    const spec = truth.measures[measure];
    if (spec) measures[measure] = around(random, spec[0], spec[1]);
  }
  if (measures.rowSpacing !== undefined) measures.rowSpacing = clearOfThreshold(measures.rowSpacing, kind);
  const number = before.filter((item) => item.site === site).length + 1;
  const id = `${site.prefix}-${String(number).padStart(3, '0')}`;
  return {
    id,
    site,
    phase,
    tradition,
    kind,
    mode,
    fibre: fibreOf(random, kind),
    ...directionsOf(random, kind),
    measures,
    sides: sidesOf(random.stream(`sides ${id}`), kind),
    use: truth.uses[random.integer(truth.uses.length)]!,
  };
}

function fibreOf(random: Random, kind: Kind): Fibre {
  const { fibres, otherFibres } = KINDS[kind];
  const usual = byShare(random, fibres);
  const unlike = chance(random, UNLIKE_ITS_KIND.fibre);
  const other = otherFibres[random.integer(Math.max(otherFibres.length, 1))];
  return unlike && other !== undefined ? other : usual;
}

/** Directions as the kind has them, each now and then the other way round; a ply turns with its element. */
function directionsOf(
  random: Random,
  kind: Kind,
): Pick<Item, 'twist1' | 'twist2' | 'slant' | 'ply1' | 'ply2'> {
  const truth = KINDS[kind];
  const [turn1, turn2, turnSlant] = [1, 2, 3].map(() => chance(random, UNLIKE_ITS_KIND.direction));
  return {
    twist1: truth.twist1 !== null && turn1 ? turned(truth.twist1) : truth.twist1,
    twist2: truth.twist2 !== null && turn2 ? turned(truth.twist2) : truth.twist2,
    slant: truth.slant !== null && turnSlant ? turned(truth.slant) : truth.slant,
    ply1: truth.ply1 !== null && turn1 ? turnedPly(truth.ply1) : truth.ply1,
    ply2: truth.ply2 !== null && turn2 ? turnedPly(truth.ply2) : truth.ply2,
  };
}

function turned<T extends Twist>(direction: T): T {
  return (direction === 'S' ? 'Z' : direction === 'Z' ? 'S' : direction) as T;
}

/** "S2z" -> "Z2s". */
function turnedPly(ply: string): string {
  const other: Readonly<Record<string, string>> = { S: 'Z', Z: 'S', s: 'z', z: 's' };
  return [...ply].map((letter) => other[letter] ?? letter).join('');
}

/** Keeps the planted gap about the threshold open. */
function clearOfThreshold(spacing: number, kind: Kind): number {
  return kind === 'open twining' ? Math.max(spacing, 10) : Math.min(spacing, 6);
}

function breakUp(random: Random, item: Item): Fragment[] {
  const pieces = byShare(random, BREAKAGE);
  return Array.from({ length: pieces }, (_, i) => fragmentOf(random, item, i));
}

function fragmentOf(random: Random, item: Item, index: number): Fragment {
  const unseen = UNSEEN[item.mode];
  const measures: Partial<Record<Measure, number | null>> = {};
  for (const measure of MEASURES) {
    const value = item.measures[measure];
    if (value === undefined) continue;
    const asSeen = around(random, value * shrinkage(measure, item.mode), 0.03);
    measures[measure] = chance(random, unseen.measure) ? null : asSeen;
  }
  const size = item.mode === 'mineralised' ? 18 : 60;
  const [one, two] = [around(random, size, 0.5), around(random, size * 0.7, 0.5)];
  return {
    id: `${item.id}${'abcde'[index]}`,
    item,
    measures,
    twist1: item.twist1 !== null && chance(random, unseen.twist) ? null : item.twist1,
    twist2: item.twist2 !== null && chance(random, unseen.twist) ? null : item.twist2,
    slant: item.slant !== null && chance(random, unseen.twist / 2) ? null : item.slant,
    fibre: chance(random, unseen.fibre) ? null : item.fibre,
    length: Math.max(one, two),
    width: Math.min(one, two),
    vague: item.kind.includes('twining') && chance(random, 0.04),
  };
}

function shrinkage(measure: Measure, mode: Mode): number {
  if (mode !== 'charred') return 1;
  return measure === 'density1' || measure === 'density2' || measure === 'stitchDensity'
    ? CHARRING
    : 1 / CHARRING;
}
