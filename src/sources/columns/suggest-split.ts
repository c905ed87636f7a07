import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { foldText } from '../../attributes/folding.ts';
import { headerUnit, matchAttribute, splitHeader } from '../../attributes/matching.ts';
import type { SplitRule } from '../profile/profile.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import type { ColumnPlan } from './column-plan.ts';

/** Columns whose cells hold two values, such as "14 x 12" under "Thread count". */

/** Share of the cells that must look like a pair. */
const ENOUGH = 0.4;
/** Share from which on it is beyond doubt. */
const SURE_PAIRS = 0.8;

const SIZES = new Set(
  'dimensions dimension size sizes masse mass abmessung abmessungen grosse taille mesures dimensioni misure dimensiones medidas tamano mal storrelse dim dims dimens abm format'.split(
    ' ',
  ),
);

/**
 * A column that is suggested for the first of two systems, or headed like a size, and whose cells are
 * mostly pairs, is suggested to be split between both attributes rather than read as one. Where some cells
 * give a third size ("12 x 8 x 2"), it goes to the thickness.
 * @param held whether an attribute has its column already.
 */
export function suggestSplit(
  plan: ColumnPlan,
  evidence: ColumnEvidence,
  register: Register,
  held: (id: string) => boolean,
): ColumnPlan {
  if (plan.via !== undefined || (plan.status !== 'suggested' && plan.status !== 'unknown')) return plan;
  if (evidence.pairs < ENOUGH) return plan;
  const pair = partners(plan, register);
  if (pair === null) return plan;
  const [first, second] = pair;
  const thickness = register.attributes.get('thickness');
  const third =
    first.id === 'length' &&
    thickness !== undefined &&
    !held(thickness.id) &&
    evidence.distinct.some(isTriple)
      ? thickness
      : undefined;
  const split: SplitRule = {
    by: 'systems',
    align: 'start',
    into: [first, second, ...(third === undefined ? [] : [third])].map((one) => target(one, plan.header)),
  };
  const reason = `${Math.round(100 * evidence.pairs)} % of its cells hold two values, for "${first.label}" and "${second.label}"${third === undefined ? '' : `; some hold a third, for "${third.label}"`}`;
  const score = Math.max(plan.suggestion?.score ?? 0, 0.6);
  return {
    ...plan,
    status: 'suggested',
    suggestion: {
      attribute: first.id,
      reason,
      score,
      split,
      speaksFor: [reason],
      speaksAgainst: [],
      sure: evidence.pairs >= SURE_PAIRS,
    },
  };
}

/** "Maße" folds to "masse", which is a weight: a column headed like sizes whose cells are pairs holds sizes. */
export function holdsSizes(header: string, evidence: ColumnEvidence): boolean {
  const words = foldText(splitHeader(header).name).split(' ');
  return evidence.pairs >= ENOUGH && words.some((word) => SIZES.has(word));
}

const TRIPLE = /^\D{0,4}\d[^;\n]*?[x×]\D{0,4}\d[^;\n]*?[x×]\D{0,4}\d[\d.,]*\s*\p{L}{0,2}\.?$/u;
/** "12 x 8 x 2", and not "12 x 8; 5 x 3 x 1". */
const isTriple = (text: string): boolean => TRIPLE.test(text) && (text.match(/[x×]/gu)?.length ?? 0) === 2;

function partners(
  plan: ColumnPlan,
  register: Register,
): readonly [AttributeDefinition, AttributeDefinition] | null {
  const id = plan.suggestion?.attribute ?? '';
  const words = foldText(splitHeader(plan.header).name).split(' ');
  const counted = /^per (?:\d+ )?(?:mm|cm|dm|m|inch)$/.test(splitHeader(plan.header).unit ?? '');
  const names = words.some((word) => SIZES.has(word))
    ? ['length', 'width']
    : /[12]$/.test(id)
      ? [id.replace(/2$/, '1'), id.replace(/1$/, '2')]
      : counted
        ? ['density1', 'density2']
        : namedByBoth(plan.header, register);
  const [first, second] = names.map((name) => register.attributes.get(name));
  return first === undefined || second === undefined ? null : [first, second];
}

/** "L x W (cm)", "Breite/Höhe [mm]": each half is the header of a measurement, in the unit beside both. */
function namedByBoth(header: string, register: Register): readonly string[] {
  const { name, unit } = splitHeader(header);
  const halves = name.split(/\s*[x×/&+]\s*(?=\p{Lu})|\s+(?:[x×/&+]|by|and|und|et|e|y|og)\s+|[/×]/u);
  if (halves.length !== 2) return [];
  const ids = halves.map((half) => {
    const match = matchAttribute(unit === undefined ? half : `${half} (${unit})`, register);
    const attribute = match.kind === 'none' ? undefined : register.attributes.get(match.id);
    return match.kind !== 'exact' || attribute?.unit === undefined ? null : attribute.id;
  });
  return ids[0] === ids[1] ? [] : ids.filter((id) => id !== null);
}

function target(attribute: AttributeDefinition, header: string): SplitRule['into'][number] {
  const unit = headerUnit(header, attribute);
  return { attribute: attribute.id, ...(unit === undefined || attribute.unit === undefined ? {} : { unit }) };
}
