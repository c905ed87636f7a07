import { printCount, printList, printSome } from '../../analyses/phrasing.ts';
import type { CompoundName } from '../../sources/names/compound-names.ts';
import { joinNear, withoutNames } from '../../sources/names/names.ts';
import type { Material } from '../prepare.ts';
import { withFragments } from '../with-fragments.ts';
import type { WhatIf } from './otherwise.ts';

/**
 * The material without labels that stand for one of several names: such a record is of a known place only as far as
 * "one of these", and counts as one whose place is not known. Where nobody has said so, the same with those names as
 * names of their own stands beside it; where somebody has, the same with each record at either end of what it may be.
 *
 * @param asked attributes that the question rests on.
 * @param named texts that its options hold: a name that is asked about is one of its own.
 */
export function compoundsLeftOut(
  given: Material,
  asked: ReadonlySet<string>,
  named: ReadonlySet<string>,
): { readonly prepared: Material; readonly apart: readonly WhatIf[] } {
  const met = given.compoundNames.filter(({ attribute, name }) => asked.has(attribute) && !named.has(name));
  if (met.length === 0) return { prepared: given, apart: [] };
  const leaving = (names: readonly CompoundName[]) =>
    withFragments(given, withoutNames(given.fragments, names));
  const open = met.filter(({ settled }) => !settled);
  const settled = met.filter((one) => one.settled);
  return {
    prepared: leaving(met),
    apart: [
      ...(open.length === 0 ? [] : [asTheirOwn(open, () => leaving(settled), given)]),
      ...(settled.length === 0
        ? []
        : [0, -1].map((end) => atOneEnd(settled, end, () => takenAt(leaving(open), settled, end)))),
    ],
  };
}

function asTheirOwn(
  names: readonly CompoundName[],
  prepared: () => Material,
  { register }: Material,
): WhatIf {
  const [first] = names as readonly [CompoundName, ...CompoundName[]];
  const label = register.attributes.get(first.attribute)?.label.toLowerCase() ?? first.attribute;
  const more = names.length === 1 ? '' : ` (as ${printCount(names.length - 1, 'more name')})`;
  return {
    what: `Counted as names of their own, and not left out: ${listed(names)}`,
    open: 'which names are made up of others',
    onlyIf: [
      `, if ${first.name} is no ${label} of its own${more}`,
      `, with ${printCount(names.length, 'name')} made up of others left out`,
      ', compound names left out',
    ],
    hangsOn: '',
    next: `Say of ${listed(names)} whether each is one of those or a name of its own ("names" in the study, or on Sources).`,
    prepared,
  };
}

function atOneEnd(names: readonly CompoundName[], end: number, prepared: () => Material): WhatIf {
  const [first] = names as readonly [CompoundName, ...CompoundName[]];
  return {
    what: `Taken at ${end === 0 ? 'the first' : 'the last'} of what each may be: ${printSome(
      names.map(({ name, of }) => `${name} as ${of.at(end)}`),
      3,
    )}`,
    open: `whether ${first.name} is ${printOr(first.of)}`,
    hangsOn: `Cannot be told yet: what is called ${first.name} may be of ${printOr(first.of)}, and the answer hangs on which.`,
    next: `Find out of which each record called ${printList(names.map(({ name }) => name).slice(0, 3))} is.`,
    prepared,
  };
}

function takenAt(prepared: Material, names: readonly CompoundName[], end: number): Material {
  const pairs = names.map(({ attribute, name, of }) => ({
    attribute,
    names: [of.at(end)!, name] as const,
    why: '',
    sure: 'likely' as const,
  }));
  return withFragments(prepared, joinNear(prepared.fragments, pairs));
}

const printOr = (names: readonly string[]): string => names.join(' or ');
const listed = (names: readonly CompoundName[]): string =>
  printSome(
    names.map(({ name, of }) => `${name} (${printOr(of)})`),
    3,
  );
