import type { Register } from '../../attributes/definition.ts';
import { facetsOf } from '../../cells/descriptions/lexicon.ts';
import { KIND } from '../../fragments/kinds/kinds.ts';
import { inSentence, printQuantity } from '../phrasing.ts';
import type { Mark } from './found.ts';

/** A kind names a group when at least half of its recorded members are of it. */
const MOST_OF_IT = 0.5;
/** A number names a group when it sets it apart this far (Cliff's delta). */
const FAR = 0.5;
/** Marks that a name without a structure starts from. */
const AT_FIRST = 2;

/**
 * Groups called by their marks, no two alike: "open twining of willow bast". A structure leads, a fibre follows it
 * with "of", other kinds and numbers come after; a mark more is taken as long as two groups are called the same.
 *
 * @param sides attributes that the kind of a fabric says already, where it names the group
 */
export function namesOf(
  marks: readonly (readonly Mark[])[],
  sides: ReadonlySet<string> = new Set(),
): string[] {
  const useful = marks.map((own) => withoutSides(ofMost(own).filter(isTelling), sides));
  const names = useful.map((own, group) => (own.length > 0 ? said(startOf(own)) : nameWithout(marks[group])));
  const most = useful.reduce((length, own) => Math.max(length, own.length), 0);
  for (let more = 1; more <= most; more++) {
    const twice = names.map((name) => names.indexOf(name) !== names.lastIndexOf(name));
    if (!twice.includes(true)) break;
    twice.forEach((again, group) => {
      if (!again || useful[group].length === 0) return;
      const start = startOf(useful[group]);
      const rest = useful[group].filter((mark) => !start.includes(mark)).slice(0, more);
      names[group] = said([...start, ...rest]);
    });
  }
  return names.map((name, group) =>
    name === '' || names.indexOf(name) !== names.lastIndexOf(name)
      ? `${name === '' ? 'group' : `${name}, group`} ${group + 1}`
      : name,
  );
}

/**
 * Of a group that nothing sets apart far enough: its strongest number, if any. A kind that it lacks, or of which few of
 * it are, is no name for it.
 */
function nameWithout(marks: readonly Mark[]): string {
  const number = marks.find(({ term }) => term === '');
  if (number !== undefined) return markText(number);
  return marks.length > 0 ? 'many kinds' : '';
}

/** What was recorded of so few members that it says little of the group is left out. */
function ofMost(marks: readonly Mark[]): readonly Mark[] {
  const size = marks.reduce((most, { insideN }) => Math.max(most, insideN), 0);
  return marks.filter(({ insideN }) => insideN >= MOST_OF_IT * size);
}

/** The structure and its facets, which the name of a kind holds. */
export function sidesOfKind(register: Register): ReadonlySet<string> {
  return new Set(['structure', ...facetsOf('structure', register).map(({ id }) => id)]);
}

function withoutSides(marks: readonly Mark[], sides: ReadonlySet<string>): readonly Mark[] {
  const named = marks.some(({ attribute }) => attribute === KIND);
  return named ? marks.filter(({ attribute }) => !sides.has(attribute)) : marks;
}

const leads = ({ attribute }: Mark): boolean => attribute === 'structure' || attribute === KIND;

function isTelling({ term, effect, inside }: Mark): boolean {
  return term === '' ? Math.abs(effect) >= FAR : effect > 0 && inside >= MOST_OF_IT;
}

/** Structure and fibre where they tell; otherwise the two strongest marks. */
function startOf(marks: readonly Mark[]): readonly Mark[] {
  const lead = marks.filter((mark) => leads(mark) || mark.attribute === 'fibre');
  return lead.some(leads) ? lead : marks.slice(0, AT_FIRST);
}

function said(marks: readonly Mark[]): string {
  const structure = marks.find(leads);
  const fibre = marks.find(({ attribute }) => attribute === 'fibre');
  const rest = marks.filter((mark) => mark !== structure && mark !== fibre).map(markText);
  const head =
    structure === undefined
      ? fibre?.term
      : fibre === undefined
        ? structure.term
        : `${structure.term} of ${fibre.term}`;
  return [...(head === undefined ? [] : [head]), ...rest].join(', ');
}

function markText({ label, term, inside, unit }: Mark): string {
  const name = inSentence(label);
  return term === '' ? `${name} about ${printQuantity(inside, unit, 2)}` : `${name} ${term}`;
}
