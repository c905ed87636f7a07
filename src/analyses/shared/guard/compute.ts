import type { RecordsCondition } from '../../../fragments/conditions.ts';
import { adjustKnown } from '../../../numerics/tests/adjust.ts';
import type { Unavailable } from '../../contract.ts';
import { type Told, toldAt } from '../../verdicts.ts';
import { associationWith } from './association.ts';
import type { Guard, GuardVerdict, LookedAt, SharedEffect, ToldAmong } from './found.ts';
import type { GuardRequest } from './request.ts';
import { isBridged, isOfLabels, isOneEach, namesThatShare, sharedEffect, tiedAmong } from './strata.ts';

/** An effect within a condition of less than this share of the plain one has gone. */
const GONE = 0.5;
/** A condition that is not shown to go with the labels may go with them all the same, from this Cramér's V on. */
const MAY_GO = 0.2;

/**
 * Is the difference between labels one between conditions? Each condition is tested for association with the labels
 * (Holm over those looked at); where it goes with them, the labels are compared among records that share it, by
 * dealing labels within it again, and beside that the same records with the condition left out of account.
 */
export function guardAgainst(request: GuardRequest): Guard {
  const { conditions, labels, confidence, random, told } = request;
  const tests = conditions.map((condition) =>
    condition.state === 'looked at'
      ? associationWith(request, condition)
      : { p: { why: NOT_LOOKED[condition.state] }, v: { why: NOT_LOOKED[condition.state] } },
  );
  const p = adjustKnown(
    tests.map((test) => test.p),
    'holm',
  );
  const goes = conditions.map((_, at) => toldAt(p[at], confidence) === 'told apart');
  const mayGo = tests.map(({ v }) => typeof v === 'number' && v >= MAY_GO);
  const parts = conditions.map((condition, at) => {
    const state = condition.state === 'looked at';
    const oneEach = state && isOneEach(condition, labels);
    const shared: SharedEffect | Unavailable = !state
      ? { why: NOT_LOOKED[condition.state] }
      : oneEach
        ? { why: 'no two groups share a kind of it' }
        : goes[at] || (mayGo[at] && told === 'told apart')
          ? sharedEffect(request, condition, random.stream(condition.id))
          : { why: 'it does not go with the groups' };
    return { condition, oneEach, shared, bridged: state && isBridged(condition, request) };
  });
  // That a difference appears within a condition is asked of several: these p are adjusted together.
  const appearing = adjustKnown(
    parts.map(({ shared }, at) => (goes[at] && !('why' in shared) ? shared.p : { why: 'not looked at' })),
    'holm',
  );
  const looked = parts.map(({ condition, oneEach, shared, bridged }, at): LookedAt => {
    const verdict = verdictOf(
      condition.state,
      { oneEach, goes: goes[at], bridged },
      told,
      shared,
      appearing[at],
      confidence,
    );
    return {
      id: condition.id,
      label: condition.label,
      known: condition.known,
      kinds: condition.kinds.length,
      verdict,
      p: p[at],
      v: tests[at].v,
      shared,
      adjusted: goes[at] && !oneEach && request.adjust !== undefined ? request.adjust(condition) : null,
      oneEach,
      weaker: !('why' in shared) && isWeaker(shared),
      ofLabels: condition.own && isOfLabels(condition, request.places ?? labels),
      bridged,
      among:
        'why' in shared || bridged || !goes[at]
          ? null
          : toldAmong(request, condition, toldAt(appearing[at], confidence)),
    };
  });
  const found = sorted(looked, confidence);
  const matter = new Set([...found.changes, ...found.withstood].map(({ id }) => id));
  return {
    by: request.by,
    n: labels.length,
    conditions: looked,
    ...found,
    tied: tiedAmong(conditions.filter(({ id }) => matter.has(id))),
  };
}

const NOT_LOOKED = {
  unknown: 'not recorded',
  scarce: 'known of too few',
  one: 'the same for all',
  'looked at': '',
} as const;

function toldAmong(
  { labels, names }: GuardRequest,
  condition: RecordsCondition,
  told: Told,
): ToldAmong | null {
  if (names === undefined || told === 'cannot be told') return null;
  return { labels: namesThatShare(condition, labels, names), told };
}

function verdictOf(
  state: RecordsCondition['state'],
  { oneEach, goes, bridged }: { oneEach: boolean; goes: boolean; bridged: boolean },
  told: Told,
  shared: SharedEffect | Unavailable,
  appearing: number | Unavailable,
  confidence: number,
): GuardVerdict {
  if (state !== 'looked at') return state;
  if (told === 'cannot be told') return goes ? 'none within it' : 'does not go with them';
  const apart = told === 'told apart';
  if (oneEach) return apart ? 'cannot be told apart' : 'none within it';
  if (!goes) return 'does not go with them';
  if ('why' in shared || !bridged) return apart ? 'cannot be told apart' : 'none within it';
  if (!apart) return toldAt(appearing, confidence) === 'told apart' ? 'appears within it' : 'none within it';
  return withinOf(shared, confidence);
}

/** What is left within a condition of a difference that is told apart. */
function withinOf(shared: SharedEffect, confidence: number): GuardVerdict {
  if (toldAt(shared.p, confidence) === 'told apart')
    return shared.sameWay ? 'holds within it' : 'reversed within it';
  return isWeaker(shared) ? 'vanishes within it' : 'cannot be told apart';
}

const isWeaker = ({ plain, within }: SharedEffect) => plain > 0 && within < GONE * plain;

const WORST: readonly GuardVerdict[] = [
  'reversed within it',
  'vanishes within it',
  'appears within it',
  'cannot be told apart',
];

function sorted(
  looked: readonly LookedAt[],
  confidence: number,
): Pick<Guard, 'changes' | 'ofLabels' | 'hinted' | 'unseen' | 'withstood'> {
  const by = (verdict: GuardVerdict) => looked.filter((one) => one.verdict === verdict);
  // Where the recorders are known and withstood, that each label has a table of its own says no more.
  const recorder = looked.find(({ id }) => id === 'recorder')?.verdict;
  const settled =
    recorder === 'holds within it' || recorder === 'does not go with them' || recorder === 'one';
  const ofLabels = looked.filter((one) => one.ofLabels && one.verdict === 'cannot be told apart');
  const harmless = (one: LookedAt) =>
    ofLabels.includes(one) || (one.id === 'source' && settled && one.verdict === 'cannot be told apart');
  return {
    changes: WORST.flatMap(by).filter((one) => !harmless(one)),
    ofLabels,
    hinted: by('does not go with them').flatMap((one) => {
      if ('why' in one.shared || !one.bridged) return [];
      const verdict = withinOf(one.shared, confidence);
      return verdict === 'reversed within it' || verdict === 'vanishes within it'
        ? [{ ...one, verdict }]
        : [];
    }),
    unseen: looked.filter(({ verdict }) => verdict === 'unknown' || verdict === 'scarce'),
    withstood: by('holds within it'),
  };
}
