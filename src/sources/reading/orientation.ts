import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { foldText } from '../../attributes/folding.ts';
import { CELL_STATES } from '../../cells/reading.ts';
import type { Column, TermColumn } from '../../fragments/table.ts';
import { attributesOf } from '../columns/claims.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';

/** Words of a header that tell warp from weft, or passive from active elements, in folded text. */
const TOLD: readonly (readonly [term: string, first: RegExp, second: RegExp])[] = [
  [
    'warpWeft',
    /(?:^| )(?:warps?|ends|epi|kett\p{L}*|kettfaden\p{L}*|k|chaine|ordito|urdimbre|trend\p{L}*|kaede|renning\p{L}*)(?: |$)/u,
    /(?:^| )(?:wefts?|picks?|ppi|schuss\p{L}*|eintrag\p{L}*|s|trame|duites?|trama|pasadas|islaet\p{L}*|skud|innslag\p{L}*|veft)(?: |$)/u,
  ],
  [
    'passiveActive',
    /(?:^| )(?:passiv\p{L}*|passif|stakes?|montants?|grundelement\p{L}*|foundation|elementi passivi|pasivo)(?: |$)/u,
    /(?:^| )(?:activ\p{L}*|aktiv\p{L}*|actifs?|rows?|reihen?|rangs?|file|filas?|rader|raekker|attivo)(?: |$)/u,
  ],
];
/** A header that names the systems only by number. */
const NUMBERED = /(?:^| )(?:system\p{L}*|sistema|systeme|tradsystem|fadensystem|[12]|i|ii|a|b)(?: |$)/u;

const MEASURED = CELL_STATES.indexOf('measured');
const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

/**
 * What the headers of the two counts say of the systems: `warpWeft`, `passiveActive`, or `untold` where they are
 * numbered, or one column holds both without a word of which comes first; null where the headers say nothing.
 */
export function toldByHeaders(
  plans: readonly Pick<ColumnPlan, 'header' | 'attribute' | 'split'>[],
): string | null {
  const first = plans.find((plan) => attributesOf(plan).includes('density1'));
  const second = plans.find((plan) => attributesOf(plan).includes('density2'));
  if (first === undefined || second === undefined) return null;
  const [one, two] = [foldText(first.header), foldText(second.header)];
  for (const [term, passive, active] of TOLD) if (passive.test(one) && active.test(two)) return term;
  return first === second || (NUMBERED.test(one) && NUMBERED.test(two)) ? 'untold' : null;
}

/**
 * Adds the orientation of every row with a count, where no column and no constant of the profile gives it.
 * What it rests on stands in the ledger.
 */
export function addOrientation(
  table: Map<string, Column>,
  plans: readonly ColumnPlan[],
  register: Register,
  ledger: Ledger,
): void {
  const attribute = register.attributes.get('orientation');
  const told = toldByHeaders(plans);
  const counts = [table.get('density1'), table.get('density2')];
  if (attribute === undefined || told === null || table.has('orientation')) return;
  const [first] = counts;
  if (first === undefined) return;
  table.set('orientation', filledWith(attribute, told, first.raw.length, counts));
  if (told !== 'untold') return;
  const headers = plans
    .filter((plan) => attributesOf(plan).some((id) => id === 'density1' || id === 'density2'))
    .map(({ header }) => header);
  enter(ledger, {
    row: 0,
    column: headers[0] ?? '',
    raw: headers.join(', '),
    readAs: 'warp and weft not told apart',
    level: 'flagged',
    rule: 'systems-untold',
    why: 'Nothing says which system is the warp, so the denser one counts as system 1 where both are alike; "orientation" under "constants" of the profile says otherwise (warp and weft known).',
  });
}

function filledWith(
  attribute: AttributeDefinition,
  term: string,
  rows: number,
  counts: readonly (Column | undefined)[],
): TermColumn {
  const has = (row: number) =>
    counts.some((column) => column?.kind === 'numeric' && !Number.isNaN(column.low[row]));
  const known = Array.from({ length: rows }, (_, row) => has(row));
  return {
    kind: 'term',
    attribute,
    codes: Int32Array.from(known, (yes) => (yes ? 0 : -1)),
    levels: [term],
    state: Uint8Array.from(known, (yes) => (yes ? MEASURED : NOT_OBSERVED)),
    certainty: new Uint8Array(rows),
    raw: new Array<string>(rows).fill(''),
  };
}
