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
 */
export function namesOf(marks: readonly (readonly Mark[])[]): string[] {
  const useful = marks.map((own) => own.filter(isTelling));
  const names = useful.map((own, group) => said(startOf(own.length > 0 ? own : marks[group].slice(0, 1))));
  const most = useful.reduce((length, own) => Math.max(length, own.length), 0);
  for (let more = 1; more <= most; more++) {
    const twice = names.map((name) => names.indexOf(name) !== names.lastIndexOf(name));
    if (!twice.includes(true)) break;
    twice.forEach((again, group) => {
      if (!again) return;
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

function isTelling({ term, effect, inside }: Mark): boolean {
  return term === '' ? Math.abs(effect) >= FAR : effect > 0 && inside >= MOST_OF_IT;
}

/** Structure and fibre where they tell; otherwise the two strongest marks. */
function startOf(marks: readonly Mark[]): readonly Mark[] {
  const lead = marks.filter(({ attribute }) => attribute === 'structure' || attribute === 'fibre');
  return lead.some(({ attribute }) => attribute === 'structure') ? lead : marks.slice(0, AT_FIRST);
}

function said(marks: readonly Mark[]): string {
  const structure = marks.find(({ attribute }) => attribute === 'structure');
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
