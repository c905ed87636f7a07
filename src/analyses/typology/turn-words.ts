import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Turn } from '../contract.ts';
import { inSentence, printCount, printList, printNumber, printP, printQuantity } from '../phrasing.ts';
import { unseenTurn } from '../shared/guard/turn-words.ts';
import type { Apart, RivalCondition } from './apart-found.ts';
import type { Meaning, TypologyFound } from './found.ts';
import type { HeapSplit } from './split-found.ts';

/** What would change the verdict on these types, worst first. */
export function turnsOf(found: TypologyFound): Turn[] {
  const { apart, typology, splits, small, assignment, verdict, meaning } = found;
  const claimed = verdict === 'supported' || verdict === 'may be a condition';
  const turns: Turn[] = [
    ...('why' in apart ? [] : apart.conditions.flatMap(conditionTurn)),
    ...splits.flatMap((split) => splitTurns(found, split)),
    ...('why' in apart || !claimed ? [] : apartTurns(found, apart)),
    ...('why' in apart
      ? []
      : unseenTurn(
          apart.conditions.filter((one) => one.verdict === 'unknown'),
          apart.conditions.filter((one) => one.verdict === 'scarce'),
        )),
    ...meaning.flatMap(levelTurn),
    ...small.map((type) => ({
      what: `if more than ${printCount(assignment.type.filter((own) => own === type).length, 'record')} of “${typology.types[type].label}” were known`,
      size: 'of so few nothing can be said',
      overturns: false,
    })),
  ];
  return turns.sort((a, b) => Number(b.overturns) - Number(a.overturns));
}

/** Types that go with something only by how closely it was recorded, or only once that is allowed for. */
function levelTurn({ label, told, asRecorded }: Meaning): Turn[] {
  if (asRecorded === null || asRecorded === told) return [];
  return [
    {
      what: `if ${inSentence(label)} were counted by the words as recorded`,
      size:
        asRecorded === 'told apart'
          ? 'the types would go with it; at the level recorded of all types they are not told to'
          : 'the types would not be told to go with it, as they are at the level recorded of all types',
      overturns: false,
    },
  ];
}

function conditionTurn({ label, p, verdict, holds, fails, untested }: RivalCondition): Turn[] {
  if (verdict === 'does not go with them' || verdict === 'unknown' || verdict === 'scarce') return [];
  const goes = isUnavailable(p) ? 'the types go with it' : `the types go with it (${printP(p)})`;
  const where = [
    ...(holds.length === 0 ? [] : [`they are told apart among ${printList(holds)} alone`]),
    ...(fails.length === 0 ? [] : [`they are not among ${printList(fails)} alone`]),
    ...(untested.length === 0 ? [] : [`too few are ${printList(untested)}`]),
  ];
  return [
    {
      what: `if ${inSentence(label)} made the difference`,
      size: `${goes}; ${where.join(', ')}`,
      overturns: verdict === 'may explain them' || verdict === 'not told within it',
    },
  ];
}

function splitTurns({ moved }: TypologyFound, split: HeapSplit): Turn[] {
  const { label, unit, values, distinct, coarse, verdict, steps, visible } = split;
  const turns: Turn[] = [];
  const divided = verdict === 'divided at the cut' || verdict === 'divided elsewhere';
  if (coarse && divided)
    turns.push({
      what: `if ${inSentence(label)} had been read more coarsely than in steps of ${printQuantity(steps.most, unit)}`,
      size: `${printCount(values.length, 'reading')} take only ${distinct} different values; rounding by that step is allowed for, coarser rounding is not`,
      overturns: false,
    });
  if (verdict === 'one range') {
    const { halves, asCut } = visible;
    const cut = isUnavailable(asCut) ? '' : `, and as the rules part them less than ${printNumber(asCut)}`;
    turns.push({
      what: `if two heaps of ${inSentence(label)} lay near to each other`,
      size: isUnavailable(halves)
        ? halves.why
        : `with ${printCount(values.length, 'reading')} even heaps less than ${printNumber(halves)} standard deviations apart would be missed in more than 2 cases of 10${cut}`,
      overturns: false,
    });
  }
  if (verdict === 'cannot be told' && !isUnavailable(split.dip) && isUnavailable(visible.asCut))
    turns.push({
      what: `if there were more readings of ${inSentence(label)}`,
      size: visible.asCut.why,
      overturns: false,
    });
  if (divided) {
    for (const cut of split.cuts) {
      const tries = moved.filter(
        (one) => one.attribute === split.attribute && one.cut === cut && one.by !== 0,
      );
      const worst = tries.reduce((most, one) => Math.max(most, one.changed), 0);
      const n = tries[0]?.n;
      if (n === undefined) continue;
      turns.push({
        what: `if the cut of ${inSentence(label)} stood up to a fifth below or above ${printQuantity(cut, unit)}`,
        size:
          worst === 0
            ? `none of ${printCount(n, 'record')} would change type`
            : `at most ${worst} of ${printCount(n, 'record')} would change type`,
        overturns: false,
      });
    }
  }
  return turns;
}

function apartTurns({ typology }: TypologyFound, apart: Apart): Turn[] {
  const name = (type: number) => typology.types[type].label;
  const { merged, divided } = apart.finerCoarser;
  const { dispersion, freeGroups } = apart;
  const turns: Turn[] = [];
  if (apart.differInSpread === 'told apart' && !isUnavailable(dispersion))
    turns.push({
      what: 'if the types differed in spread alone',
      size: `their spreads differ (${printP(dispersion.p)}), which can pass for a difference of place`,
      overturns: false,
    });
  if (!isUnavailable(merged) && merged.told === 'not told apart' && !isUnavailable(merged.difference))
    turns.push({
      what: `if ${name(merged.first)} and ${name(merged.second)} were one type`,
      size: `they are not told apart in what did not define them (${printP(merged.difference.p)})`,
      overturns: false,
    });
  if (!isUnavailable(divided) && divided.mayBeTwo)
    turns.push({
      what: `if ${name(divided.type)} were two types`,
      size: `groups of ${printList(divided.sizes.map(String))} predict one another from half to half (strength ${printNumber(divided.strength)})`,
      overturns: false,
    });
  if (!isUnavailable(freeGroups) && freeGroups.shaky.length > 0)
    turns.push({
      what: 'if groups were made without the rules',
      size: `${printList(freeGroups.shaky.map((type) => `${name(type)} (mean Jaccard ${printNumber(freeGroups.stability[type].mean)})`))} would not be found again`,
      overturns: false,
    });
  return turns;
}
