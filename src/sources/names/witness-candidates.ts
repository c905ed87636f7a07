import type { Register } from '../../attributes/definition.ts';
import type { Column } from '../../fragments/table.ts';
import { nameIn, TEXT_COLUMN_PREFIX } from '../reading/assemble.ts';
import type { ColumnReading, SourceReading } from '../source-reading.ts';
import { agreementIn, type PairsThatAgree } from './names-agree.ts';

/** A column that may name the object that a fragment is of; somebody who knows the table says whether it does. */
export interface WitnessCandidate {
  readonly header: string;
  /** What it is read as; null where it is kept as text. */
  readonly attribute: string | null;
  /** Different names in it, and rows that have one. */
  readonly names: number;
  readonly rows: number;
  /** Each a part of a sentence. */
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
  /** Both in one sentence. */
  readonly says: string;
  /** Whether the profile is to map the column to `item` first; otherwise the study's "witness" is enough. */
  readonly needsProfile: boolean;
  /** The column that feeds `item` now and has to be let go for this one. */
  readonly insteadOf?: string;
}

/** Attributes whose columns number things; every other recognised column means something else already. */
const NUMBERING: ReadonlySet<string> = new Set(['item', 'fragment', 'catalogueNumber']);
const MOST = 3;
/** An object in more rows than this is rather a kind, a place or a remark (common practice, no source). */
const MOST_ROWS_EACH = 20;
/**
 * How much oftener rows of one name must agree than others, as a share of the pairs, to speak for a column; counts and
 * kinds that go with the structure agree somewhat oftener too.
 */
const TELLING = 0.25;

/** How the candidate is confirmed, in one sentence. */
export function howToConfirm({ header, needsProfile, insteadOf }: WitnessCandidate): string {
  const study = '"witness": { "is": "column" } in the study';
  if (!needsProfile) return `To confirm "${header}": ${study}.`;
  const free =
    insteadOf === undefined ? '' : `, { "header": ${JSON.stringify(insteadOf)}, "attribute": null }`;
  return `To confirm "${header}": ${study}, and { "header": ${JSON.stringify(header)}, "attribute": "item" }${free} under "columns" of the profile.`;
}

interface Weighed extends WitnessCandidate {
  readonly weight: number;
}

/**
 * The columns that may name the object, the likeliest first: names that repeat, whose rows agree in structure, fibre and
 * readings oftener than rows of different names do, that do not recur from place to place, and that leave few blanks.
 * Never taken unasked. Empty where nothing repeats or nothing speaks for a column.
 */
export function witnessCandidates(reading: SourceReading, register: Register): readonly WitnessCandidate[] {
  if (reading.role !== 'fragments') return [];
  const item = reading.columns.find(({ attributes }) => attributes.includes('item'));
  return reading.columns
    .flatMap((column) => weigh(column, item, reading, register) ?? [])
    .sort((a, b) => b.weight - a.weight || (a.header < b.header ? -1 : 1))
    .slice(0, MOST)
    .map(({ weight: _weight, ...candidate }) => candidate);
}

function weigh(
  { header, attributes, suggestion }: ColumnReading,
  item: ColumnReading | undefined,
  { table }: SourceReading,
  register: Register,
): Weighed | null {
  const [attribute = null, another] = attributes;
  if (another !== undefined || (attribute !== null && !NUMBERING.has(attribute))) return null;
  const column = table.columns.get(attribute ?? `${TEXT_COLUMN_PREFIX}${header}`);
  if (column === undefined || column.kind === 'numeric') return null;
  const names = Array.from({ length: table.rows }, (_, row) => nameIn(column, row));
  const rowsOf = groupByName(names);
  const rows = [...rowsOf.values()].reduce((sum, list) => sum + list.length, 0);
  const several = [...rowsOf.values()].filter((list) => list.length > 1);
  if (rowsOf.size < 2 || several.length === 0 || measured([...rowsOf.keys()])) return null;
  const named = ofHeader(attribute ?? suggestion?.attribute ?? null, attribute !== null);
  const agreement = ofAgreement(agreementIn(table, names, register));
  // What neither its header nor its rows speak for is any other column.
  if (named === null && agreement.weight <= 0) return null;
  const evidence = [
    named,
    ofRepeats(rows, rowsOf.size),
    agreement,
    ofPlaces(several, table.columns.get('site'), 'site'),
    ofPlaces(several, table.columns.get('context'), 'context'),
    ofBlanks(table.rows - rows, table.rows),
  ].filter((one) => one !== null);
  const weight = evidence.reduce((sum, one) => sum + one.weight, 0);
  if (weight <= 0) return null;
  const speaksFor = evidence.filter((one) => one.weight > 0).map(({ says }) => says);
  const speaksAgainst = evidence.filter((one) => one.weight <= 0).map(({ says }) => says);
  const against =
    speaksAgainst.length === 0 ? 'nothing against it' : `against it: ${speaksAgainst.join(', ')}`;
  const needsProfile = attribute !== 'item' && !(attribute === 'fragment' && item === undefined);
  return {
    header,
    attribute,
    names: rowsOf.size,
    rows,
    speaksFor,
    speaksAgainst,
    says: `for it: ${speaksFor.join(', ')}; ${against}.`,
    needsProfile,
    ...(needsProfile && item !== undefined ? { insteadOf: item.header } : {}),
    weight,
  };
}

interface Evidence {
  /** Above nought it speaks for the column. */
  readonly weight: number;
  readonly says: string;
}

function ofHeader(attribute: string | null, recognised: boolean): Evidence | null {
  if (attribute === 'item')
    return { weight: recognised ? 3 : 2, says: `its header ${recognised ? 'says' : 'may say'} so` };
  return attribute !== null && NUMBERING.has(attribute)
    ? { weight: 0.5, says: 'its header speaks of numbers of finds' }
    : null;
}

function ofRepeats(rows: number, names: number): Evidence {
  const each = rows / names;
  const says = `${names} names in ${rows} rows, ${each.toFixed(1)} rows each`;
  return each > MOST_ROWS_EACH
    ? { weight: -2, says: `${says}, as a kind or a place has` }
    : { weight: 0.5, says };
}

function ofAgreement({ within, between }: PairsThatAgree): Evidence {
  if (within === null || between === null)
    return { weight: -0.5, says: 'what its rows record cannot be set against each other' };
  const cent = (share: number) => Math.round(100 * share);
  const says = `rows of one name agree in ${cent(within)} of 100 pairs, rows of different names in ${cent(between)}`;
  const more = within - between;
  return more >= TELLING ? { weight: 4 * more, says } : { weight: -2, says };
}

/** Do names recur from place to place, as kinds do, and as numbers do that restart in each? */
function ofPlaces(
  several: readonly (readonly number[])[],
  places: Column | undefined,
  noun: 'site' | 'context',
): Evidence | null {
  if (places === undefined) return null;
  const all = new Set(several.flat().map((row) => nameIn(places, row)));
  all.delete('');
  if (all.size < 2) return null;
  const recurring = several.filter((rows) => {
    const own = new Set(rows.map((row) => nameIn(places, row)));
    own.delete('');
    return own.size > 1;
  }).length;
  return recurring === 0
    ? { weight: 1, says: `none lies in more than one ${noun}` }
    : {
        weight: (-0.5 * recurring) / several.length,
        says: `${recurring} of the ${several.length} names that repeat lie in more than one ${noun} (either numbers restart in each, or it names no object)`,
      };
}

function ofBlanks(blank: number, rows: number): Evidence | null {
  return blank === 0 ? null : { weight: (-2 * blank) / rows, says: `${blank} of ${rows} rows have none` };
}

function groupByName(names: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const groups = new Map<string, number[]>();
  for (const [row, name] of names.entries()) {
    if (name === '') continue;
    const known = groups.get(name);
    if (known === undefined) groups.set(name, [row]);
    else known.push(row);
  }
  return groups;
}

/** Numbers with a decimal mark measure something. */
function measured(names: readonly string[]): boolean {
  return names.filter((name) => /^[^\d]*\d+[.,]\d+\D*$/.test(name)).length > names.length / 2;
}
