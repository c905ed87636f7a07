import type { FirstOf, LabelsLeft, ShortVerdict, ToldUnder } from '../../analyses/contract.ts';

/**
 * How a verdict changes where the same question is asked otherwise:
 * - `within`: another is said, which the first verdict leaves open in its own words ("though B cannot be ruled out");
 * - `moved`: the first verdict stands, but more or less is left open; `which` says of what;
 * - `turned`: the contrary.
 */
export interface Change {
  readonly how: 'the same' | 'within' | 'moved' | 'turned';
  /** What is left open, to be followed by "hangs on": "which stay". */
  readonly which: string;
}

const WORST = ['turned', 'moved', 'within', 'the same'] as const;

/** @param calls the name by which the first verdict calls what the other calls so. */
export function changeOf(
  here: ShortVerdict,
  there: ShortVerdict,
  calls: (name: string) => string = (name) => name,
): Change {
  if (typeof here === 'string' || typeof there === 'string')
    return { how: here === there ? 'the same' : 'turned', which: '' };
  const changes = here.map((part) => {
    const other = there.find((one) => keyOf(one) === keyOf(part));
    return other === undefined ? gone(part) : partChange(part, named(other, calls));
  });
  const more = there.some((part) => !here.some((one) => keyOf(one) === keyOf(part)));
  const all: Change[] = more ? [...changes, { how: 'moved', which: STAY }] : changes;
  const worst = WORST.find((how) => all.some((one) => one.how === how)) ?? 'the same';
  return all.find(({ how }) => how === worst) ?? { how: 'the same', which: '' };
}

type Part = LabelsLeft | FirstOf | ToldUnder;

const STAY = 'which stay';

const keyOf = (part: Part): string =>
  'labels' in part ? `labels ${part.attribute}` : 'rank' in part ? part.rank : `of ${part.of}`;

function named(part: Part, calls: (name: string) => string): Part {
  const all = (names: readonly string[]) => [...new Set(names.map(calls))];
  if ('labels' in part) return { ...part, labels: all(part.labels) };
  return 'rank' in part ? { ...part, first: all(part.first), open: all(part.open) } : part;
}

/** What could not be asked again is left open. */
const gone = (part: Part): Change => ({ how: 'moved', which: 'rank' in part ? part.which : STAY });

function partChange(here: Part, there: Part): Change {
  if ('labels' in here && 'labels' in there)
    return { how: setChange(here.labels, there.labels), which: STAY };
  if ('rank' in here && 'rank' in there) {
    const how = rankChange(here, there);
    // That another is the least alike does not overturn which is the most.
    return { how: how === 'turned' && here.rank === 'least' ? 'moved' : how, which: here.which };
  }
  return 'of' in here && 'of' in there ? toldChange(here, there) : { how: 'turned', which: '' };
}

function setChange(here: readonly string[], there: readonly string[]): Change['how'] {
  const [one, other] = [new Set(here), new Set(there)];
  const shared = [...one].filter((label) => other.has(label)).length;
  if (shared === one.size && shared === other.size) return 'the same';
  return shared === 0 ? 'turned' : 'moved';
}

function rankChange(here: FirstOf, there: FirstOf): Change['how'] {
  if (here.first.length === 0) return there.first.length === 0 ? 'the same' : 'within';
  if (there.first.length === 0) return 'moved';
  if (setChange(here.first, there.first) === 'the same') return 'the same';
  const possible = ({ first }: FirstOf, { first: leaders, open }: FirstOf) =>
    first.every((name) => leaders.includes(name) || open.includes(name));
  const [stays, foreseen] = [possible(here, there), possible(there, here)];
  if (stays && foreseen) return 'within';
  return stays || foreseen ? 'moved' : 'turned';
}

function toldChange(here: ToldUnder, there: ToldUnder): Change {
  if (here.told !== there.told) return { how: 'turned', which: '' };
  const [added] = there.under.filter((condition) => !here.under.includes(condition));
  if (added !== undefined) return { how: 'moved', which: `whether ${added} matters` };
  return { how: here.under.length > there.under.length ? 'within' : 'the same', which: '' };
}
