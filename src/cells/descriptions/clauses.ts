import type { Item } from './items.ts';
import type { Sense } from './lexicon.ts';
import { type Rest, unused } from './said.ts';

/** A term where it stands, with what is denied and doubted of it. */
export interface Placed {
  readonly text: string;
  readonly senses: readonly Sense[];
  readonly doubt: number;
  readonly denied: 'no' | 'absent' | 'unseen';
}

/** Parts between full stops, commas, brackets, "with" and "and": what stands in one is said of one thing. */
export function clauses(items: readonly Item[]): readonly (readonly Item[])[] {
  const parts: Item[][] = [[]];
  let headed = false;
  for (const item of items) {
    if (item.kind === 'elsewhere' && item.heads === true) headed = true;
    if (item.kind === 'stop' && /[.;\n]/u.test(item.text)) headed = false;
    if (!headed && (item.kind === 'stop' || item.kind === 'with' || item.kind === 'and')) parts.push([]);
    if (item.kind === 'stop' || item.kind === 'and') continue;
    parts.at(-1)!.push(item);
  }
  return doubtsBeside(parts.filter((part) => part.some(({ kind }) => kind !== 'with')));
}

/** A mark of doubt by itself, as in "open twining (?)", is of what stands before it; where nothing does, of what follows. */
function doubtsBeside(parts: readonly (readonly Item[])[]): readonly (readonly Item[])[] {
  const joined: (readonly Item[])[] = [];
  let leading: readonly Item[] = [];
  for (const part of parts) {
    const before = joined.pop();
    if (!part.every(({ kind }) => kind === 'doubt')) {
      if (before !== undefined) joined.push(before);
      joined.push([...leading, ...part]);
      leading = [];
    } else if (before === undefined) leading = [...leading, ...part];
    else joined.push([...before, ...part]);
  }
  return joined;
}

/** The terms of a clause with what is denied and doubted of them; the rest is listed. */
export function placeTerms(clause: readonly Item[], rest: Rest[]): readonly Placed[] {
  const whole = clause
    .filter(({ kind }) => kind !== 'with')
    .map(({ text }) => text)
    .join(' ');
  const other = clause.find(({ kind }) => kind === 'elsewhere');
  if (other !== undefined) {
    rest.push(unused(whole, `"${other.text}" is another part of the fabric than its ground`));
    return [];
  }
  const looks = clause.find(({ kind }) => kind === 'looks-like');
  if (looks !== undefined) {
    rest.push(unused(whole, `"${looks.text}" may say that it is something else`));
    return [];
  }
  const doubt = clause.reduce((sum, item) => sum + (item.kind === 'doubt' ? item.steps : 0), 0);
  const placed: Placed[] = [];
  let denying: string | null = null;
  for (const item of clause) {
    if (item.kind === 'not') denying = item.text;
    else if (item.kind === 'term') {
      const of = beside(item, clause);
      if (of !== null) {
        rest.push(unused(item.text, `with "${of}" beside it, it may be said of what the fabric is made of`));
        continue;
      }
      const denied = denying === null ? 'no' : 'absent';
      placed.push({
        text: denying === null ? item.text : `${denying} ${item.text}`,
        senses: item.senses,
        doubt,
        denied,
      });
      denying = null;
    } else if (item.kind === 'absent' || item.kind === 'unseen') {
      const last = placed.pop();
      if (last === undefined)
        rest.push(unused(item.text, 'nothing stands before it that it could be said of'));
      else placed.push({ ...last, text: `${last.text} ${item.text}`, denied: item.kind });
    } else if (item.kind === 'unknown') {
      if (denying !== null) {
        // What is denied is not known, so nothing in the clause is safe.
        rest.push(unused(whole, `it is not known what "${denying}" denies`));
        return [];
      }
      rest.push(
        item.near === undefined
          ? { ...unused(item.text, 'the word is not known'), unknown: true }
          : {
              text: item.text,
              rule: 'suggested-term',
              why: `"${item.text}" is not known; it may mean "${item.near}"`,
              meant: item.near,
            },
      );
    }
  }
  if (denying !== null) {
    const last = placed.at(-1);
    // "pile: no" answers what stands before it.
    if (last?.denied === 'no' && clause.at(-2)?.kind === 'term')
      return [...placed.slice(0, -1), { ...last, text: `${last.text} ${denying}`, denied: 'absent' }];
    rest.push(unused(whole, `it is not known what "${denying}" denies`));
    return [];
  }
  return placed;
}

/** A word of the clause by which a term may be said of an element and not of the fabric: "metal thread", "weft looped". */
function beside(term: Extract<Item, { kind: 'term' }>, clause: readonly Item[]): string | null {
  const others = clause.filter((item) => item !== term && (item.kind === 'term' || item.kind === 'unknown'));
  const first = others[0];
  if (first !== undefined && term.senses.some(({ ingredient }) => ingredient === true)) return first.text;
  const system = others.find((item) => item.kind === 'unknown' && SYSTEM.test(item.text));
  const loops = term.senses.some(({ sets }) => sets.get('structure') === 'looped');
  return system !== undefined && loops ? system.text : null;
}

/** One of the two systems of a weave. */
const SYSTEM =
  /^(?:warps?|wefts?|kett?e?n?|schuss|schüsse|trames?|chaînes?|trama|ordito|urdimbre|trend|islæt|skud)$/iu;
