import type { Answer, Turn } from '../contract.ts';
import { oneSentence } from '../one-sentence.ts';
import { inSentence, printCount, printLevel, printList, printNumber, printP } from '../phrasing.ts';
import type { Ratio, ThreadcountFound, Within } from './found.ts';

/** How the two go together, which of them is the greater, and what that hangs on. */
export function threadcountWords(found: ThreadcountFound): Answer {
  return {
    answer: sentence(found),
    because: evidence(found),
    unless: turns(found),
    next: next(found),
  };
}

function sentence(found: ThreadcountFound): string {
  const { x, y, verdict, ratio, within, unit } = found;
  const both = `${inSentence(x.label)} and ${inSentence(y.label)}`;
  const one = `within one ${inSentence(found.byLabel)}`;
  if (found.points.length === 0) return oneSentence([`cannot be told: no ${unit} has both ${both}`]);
  const greater = ratio === null ? [] : greaterSaid(ratio);
  switch (verdict) {
    case 'cannot be told':
      return oneSentence([
        `cannot be told how ${both} go together: ${why(found)}`,
        `cannot be told how ${both} go together`,
      ]);
    case 'not told apart':
      return oneSentence([`${both} are not shown to go together`], greater);
    case 'rise together':
    case 'run against each other': {
      const inside = within[0]?.told === 'told apart' ? [`, also ${one}`] : [];
      return oneSentence([`${both} ${verdict}`], inside, greater);
    }
    case 'rise together across groups':
    case 'run against each other across groups':
      return oneSentence(
        [`${both} ${verdict.replace(' across groups', '')} on the whole, but are not shown to do so ${one}`],
        greater,
      );
    default:
      return oneSentence(
        [`${both} ${verdict.replace(' within groups', '')} ${one}, but not on the whole`],
        greater,
      );
  }
}

function why({ all }: ThreadcountFound): string {
  return typeof all.rho === 'number' ? 'too little is measured' : all.rho.why;
}

function greaterSaid({ greater, median }: Ratio): string[] {
  if (typeof median !== 'number') return [];
  switch (greater) {
    case 'first':
      return [`; the former is the greater, by median ${printNumber(median)} times`];
    case 'second':
      return [`; the latter is the greater, by median ${printNumber(1 / median)} times`];
    case 'neither':
      return ['; neither is shown to be the greater'];
    default:
      return [];
  }
}

function evidence(found: ThreadcountFound): string[] {
  const { all, within, ratio, options, x, y } = found;
  const level = printLevel(options.confidence);
  const lines: string[] = [];
  if (typeof all.rho === 'number' && typeof all.p === 'number') {
    const limits =
      'why' in all.limits
        ? ''
        : `, ${level} limits ${printNumber(all.limits.low)} to ${printNumber(all.limits.high)}`;
    lines.push(
      `Rank correlation (Spearman) ${printNumber(all.rho)}${limits}; n = ${all.n}, ${printP(all.p)}.`,
    );
  }
  const [by] = within;
  if (by !== undefined && !('why' in by.pooled))
    lines.push(`Within ${inSentence(by.label)}: ${pooledSaid(by, level)}.`);
  if (ratio !== null && typeof ratio.median === 'number') {
    const limits =
      'why' in ratio.limits
        ? ''
        : `, ${level} limits ${printNumber(ratio.limits.low)} to ${printNumber(ratio.limits.high)}`;
    const bounds =
      'why' in ratio.bounds || ratio.bounds.low === ratio.bounds.high
        ? ''
        : `; readings that are ranges allow ${printNumber(ratio.bounds.low)} to ${printNumber(ratio.bounds.high)}`;
    lines.push(
      `${x.label} divided by ${inSentence(y.label)}: median ${printNumber(ratio.median)}${limits}${bounds}; n = ${ratio.n}.`,
    );
  }
  return lines;
}

function pooledSaid({ pooled }: Within, level: string): string {
  if ('why' in pooled) return pooled.why;
  return `${printNumber(pooled.rho)}, ${level} limits ${printNumber(pooled.low)} to ${printNumber(pooled.high)} (${printCount(pooled.groups, 'group')} of 5 or more, n = ${pooled.n})`;
}

function turns(found: ThreadcountFound): Turn[] {
  const { within, drawn, untold, ratio, unit, openEnded, findNotes, options } = found;
  const level = printLevel(options.confidence);
  const list: Turn[] = within.slice(1).flatMap((one): Turn[] =>
    'why' in one.pooled
      ? []
      : [
          {
            what: `within ${inSentence(one.label)}`,
            size: `${one.overturns ? 'it is not shown to hold: ' : ''}rank correlation ${pooledSaid(one, level)}`,
            overturns: one.overturns,
          },
        ],
  );
  if (!('why' in drawn))
    list.push({
      what: `values drawn within the ranges of ${printCount(found.ranges, unit)}`,
      size: `rank correlation ${printNumber(drawn.low)} to ${printNumber(drawn.high)}; the verdict is another in ${drawn.otherwise} of ${drawn.draws} draws`,
      overturns: drawn.overturns,
    });
  if (untold > 0 && ratio !== null)
    list.push({
      what: `${printCount(untold, unit)} whose systems were not told apart stand with the denser first`,
      size: 'their ratio is 1 or more by that alone',
      overturns: false,
    });
  if (openEnded > 0)
    list.push({
      what: `${printCount(openEnded, 'open-ended reading')}`,
      size: 'they stand at their known end',
      overturns: false,
    });
  if (findNotes.length > 0) list.push({ what: 'of the find', size: printList(findNotes), overturns: false });
  return list.sort((a, b) => Number(b.overturns) - Number(a.overturns));
}

function next({ n, x, y, unit }: ThreadcountFound): string[] {
  const lacking = n.setAside.reduce((sum, { fragments }) => sum + fragments, 0);
  if (lacking <= n.fragments) return [];
  const both =
    n.fragments === 0
      ? 'none'
      : `only ${printCount(n.fragments, 'fragment')}${unit === 'item' ? ` of ${printCount(n.items, 'item')}` : ''}`;
  return [
    `Count ${inSentence(x.label)} and ${inSentence(y.label)} where both can be seen: ${both} of ${n.fragments + lacking} ${n.fragments === 1 ? 'has' : 'have'} both.`,
  ];
}
