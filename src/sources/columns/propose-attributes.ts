import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { foldText } from '../../attributes/folding.ts';
import { splitHeader } from '../../attributes/matching.ts';
import { unitDimension } from '../../cells/units.ts';
import { isNumberLike } from '../layout/cell-shapes.ts';
import type { ColumnRule, SourceProfile } from '../profile/profile.ts';
import { saysNothing } from '../reading/says-nothing.ts';
import type { SourceReading } from '../source-reading.ts';
import { YES_NO } from './yes-no.ts';

/** What a column of one's own holds. */
export const OWN_SORTS = ['numbers', 'kinds', 'yes-no', 'text'] as const;
export type OwnSort = (typeof OWN_SORTS)[number];

export interface Proposal {
  readonly header: string;
  readonly sort: OwnSort;
  /** Up to three different cells. */
  readonly examples: readonly string[];
  /** For the study's "attributes"; a column of text needs none. */
  readonly attribute?: AttributeDefinition;
  /** For the profile's "columns". */
  readonly rule: ColumnRule;
  /** Why this sort, in a few words. */
  readonly why: string;
}

/**
 * How the columns that nothing claims can be taken as they are, so that a table about anything can be studied:
 * numbers become ratio or interval scales with the header's unit, yes/no codes presences, few wordings kinds;
 * running numbers, names and prose stay text. Nothing is taken until the reader says so.
 *
 * @param chosen sorts that the reader has set, by header; they go before what the cells look like.
 */
export function proposeAsIs(
  reading: SourceReading,
  register: Register,
  chosen: Readonly<Record<string, OwnSort>> = {},
): Proposal[] {
  const taken = new Set(register.attributes.keys());
  const proposals: Proposal[] = [];
  for (const { header, index, status, via } of reading.columns) {
    if ((status !== 'unknown' && status !== 'suggested') || via === 'profile') continue;
    const texts = reading.table.columns.get(`column: ${header}`)?.raw ?? [];
    const found = sortOf(texts);
    if (found === null) continue;
    const sort = Object.hasOwn(chosen, header) ? chosen[header]! : found.sort;
    const why = sort === found.sort ? found.why : 'as you said';
    const examples = [...new Set(found.said)].slice(0, 3);
    if (sort === 'text') {
      proposals.push({ header, sort, examples, rule: { header, attribute: null }, why });
      continue;
    }
    const { name, unit } = splitHeader(header);
    const id = freeId(name, index, taken);
    const known = sort === 'numbers' && unit !== undefined && unitDimension(unit) !== null ? { unit } : {};
    proposals.push({
      header,
      sort,
      examples,
      attribute: {
        id,
        label: name,
        block: 'find',
        scale: scaleOf(sort, found.said),
        ...known,
        source: `column "${header}" of ${reading.name}`,
      },
      rule: { header, attribute: id, ...known },
      why,
    });
  }
  return proposals;
}

/** The proposals that become attributes: what the cells say without a reader's choice. */
export function proposeAttributes(
  reading: SourceReading,
  register: Register,
): (Proposal & { readonly attribute: AttributeDefinition })[] {
  return proposeAsIs(reading, register).flatMap((one) =>
    one.attribute === undefined ? [] : [{ ...one, attribute: one.attribute }],
  );
}

/** The same column taken as another sort; a column of text that is to be one of numbers or kinds needs its id. */
export function asSort(proposal: Proposal, sort: OwnSort, register: Register): Proposal {
  const { header, examples, attribute } = proposal;
  if (sort === proposal.sort) return proposal;
  if (sort === 'text') {
    const { attribute: _attribute, ...rest } = proposal;
    return { ...rest, sort, rule: { header, attribute: null }, why: 'as you said' };
  }
  const { name } = splitHeader(header);
  const base = attribute ?? {
    id: freeId(name, 0, new Set(register.attributes.keys())),
    label: name,
    block: 'find' as const,
    source: `column "${header}"`,
  };
  const { unit: _unit, ...plain } = base as AttributeDefinition;
  return {
    ...proposal,
    sort,
    attribute: { ...plain, scale: scaleOf(sort, examples) },
    rule: { header, attribute: base.id },
    why: 'as you said',
  };
}

/** The profile with what was taken as it is in place of what it said of those columns. */
export function withOwnColumns(profile: SourceProfile, proposals: readonly Proposal[]): SourceProfile {
  const named = new Set(proposals.map(({ header }) => header));
  const rest = profile.columns.filter(({ header }) => typeof header !== 'string' || !named.has(header));
  return { ...profile, columns: [...rest, ...proposals.map(({ rule }) => rule)] };
}

function scaleOf(sort: Exclude<OwnSort, 'text'>, said: readonly string[]): AttributeDefinition['scale'] {
  if (sort === 'kinds') return 'nominal';
  if (sort === 'yes-no') return 'presence';
  return said.some((text) => /^[-−]\d/.test(text)) ? 'interval' : 'ratio';
}

interface Sorted {
  readonly sort: OwnSort;
  readonly why: string;
  /** Cells that say something. */
  readonly said: readonly string[];
}

/** More wordings than this, and more than a third of the cells, are names or prose rather than kinds. */
const MOST_KINDS = 12;

/** null where no cell says anything. */
function sortOf(texts: readonly string[]): Sorted | null {
  const said = texts.map((text) => text.trim()).filter((text) => !saysNothing(text));
  if (said.length === 0) return null;
  const distinct = new Set(said);
  if (distinct.size <= 4 && said.every((text) => YES_NO.test(text) || /^[01]$/.test(text)))
    return { sort: 'yes-no', why: 'its cells say yes or no', said };
  const numbers = said.filter(isNumberLike).length;
  if (numbers >= 0.9 * said.length) {
    if (isRunningNumber(said)) return { sort: 'text', why: 'its numbers run from row to row', said };
    return { sort: 'numbers', why: `${numbers} of ${said.length} cells are numbers`, said };
  }
  if (
    distinct.size <= Math.max(MOST_KINDS, 0.3 * said.length) &&
    (distinct.size < said.length || said.length < 3)
  )
    return { sort: 'kinds', why: `${distinct.size} wordings in ${said.length} cells`, said };
  return { sort: 'text', why: `${distinct.size} wordings in ${said.length} cells`, said };
}

function isRunningNumber(said: readonly string[]): boolean {
  return said.length > 2 && said.every((text, i) => i === 0 || Number(text) === Number(said[i - 1]) + 1);
}

function freeId(name: string, index: number, taken: Set<string>): string {
  const words = foldText(name)
    .split(' ')
    .filter((word) => /^[a-z0-9]+$/.test(word));
  const joined = words
    .map((word, i) => (i === 0 ? word : word.charAt(0).toUpperCase() + word.slice(1)))
    .join('');
  const base = /^[a-z]/.test(joined) ? joined : `column${index + 1}${joined}`;
  let id = base;
  for (let i = 2; taken.has(id); i++) id = `${base}${i}`;
  taken.add(id);
  return id;
}
