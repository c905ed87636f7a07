import type { Answer, Turn } from '../contract.ts';
import { printCount, printList, printP } from '../phrasing.ts';
import type { ClaimsFound, ClaimVerdict, JudgedFigure, Unchecked } from './found.ts';
import { placeAndText } from './place-words.ts';

/** How many figures agree, differ, cannot be or cannot be checked; never a word about why they were printed so. */
export function claimsWords(found: ClaimsFound): Answer {
  return { answer: answerOf(found), because: evidenceOf(found), unless: turnsOf(found), next: nextOf(found) };
}

function answerOf({ counts, judged, withData, unheld }: ClaimsFound): string {
  const all = judged.length;
  const impossible = counts['cannot be'];
  const { differs } = counts;
  const apart = figuresIn(unheld).filter(({ verdict }) => verdict.startsWith('agrees')).length;
  const agree = counts.agrees + counts['agrees only if rounded'] - apart;
  const open = counts['cannot be checked'];
  const figures = printCount(all, 'printed figure');
  if (all === open && all === 1)
    return `The printed figure cannot be checked ${withData ? 'here' : 'without the data'}.`;
  if (all === open) return `None of ${figures} can be checked ${withData ? 'here' : 'without the data'}.`;
  const rest = [
    ...(agree > 0 ? [`${agree} ${agree === 1 ? 'agrees' : 'agree'}`] : []),
    ...(apart > 0 ? [`${apart} ${apart === 1 ? 'agrees' : 'agree'} with other figures only`] : []),
    ...(open > 0 ? [`${open} cannot be checked`] : []),
  ];
  if (impossible + differs > 0) {
    const against = [
      ...(impossible > 0 ? [`${impossible} cannot be as printed`] : []),
      ...(differs > 0 ? [`${differs} ${differs === 1 ? 'differs' : 'differ'}`] : []),
    ];
    return `Of ${figures}, ${printList([...against, ...rest])}.`;
  }
  return withData && agree > 0
    ? `Of ${figures}, ${printList(rest)}; none differs from the data.`
    : `Of ${figures}, ${printList(rest)}; none contradicts another, which does not show that they are right.`;
}

/** All figures of such groups. */
export function figuresIn(groups: readonly Unchecked[]): readonly JudgedFigure[] {
  return groups.flatMap(({ entries }) => entries);
}

/** What figures were held against: "39 of 46 figures against the data, all of them against each other". */
export function heldAgainst({ judged, withData }: ClaimsFound): string {
  const all = printCount(judged.length, 'figure');
  if (!withData) return `${all} held against each other`;
  const held = judged.filter(({ unheld }) => unheld === '').length;
  if (held === judged.length) return `${all} held against the data and each other`;
  return `${held} of ${all} held against the data, all of them against each other`;
}

const MOST_NAMED = 2;

/** The gravest figures, each with its arithmetic, and how many more there are. */
function evidenceOf(found: ClaimsFound): string[] {
  const { judged, digits } = found;
  const lines = (['cannot be', 'differs'] as const).flatMap((verdict) => gravest(judged, verdict));
  const uneven = digits.filter((each) => each.uneven).slice(0, 1);
  return [
    ...lines,
    ...uneven.map(
      ({ set, n, zeroOrFive, p }) =>
        `Of ${n} readings of “${set}” ${Math.round(100 * zeroOrFive)} % end in 0 or 5 (${printP(p)}): likely taken to a coarser step.`,
    ),
    `${heldAgainst(found)}, each as any value that prints so, rounded or cut off.`,
  ].slice(0, 4);
}

function gravest(judged: readonly JudgedFigure[], verdict: ClaimVerdict): string[] {
  const all = judged.filter((one) => one.verdict === verdict);
  const [first] = all;
  if (first === undefined) return [];
  const named = all.slice(0, MOST_NAMED).map(({ figure }) => placeAndText(figure));
  const more = all.length > MOST_NAMED ? [`${all.length - MOST_NAMED} more`] : [];
  const which = printList([...named, ...more]);
  return [`${verdict === 'cannot be' ? 'Cannot be' : 'Differs'}: ${which}. The first: ${first.why}`];
}

/** Which of the verdicts against a figure rest on what the authors may have done otherwise. */
function turnsOf({ judged, ignored, unread, doubts, unheld }: ClaimsFound): Turn[] {
  const against = judged.filter(({ verdict }) => verdict === 'differs' || verdict === 'cannot be');
  const explained = against.filter((one) => one.explained !== '');
  const turns: Turn[] = [];
  if (explained.length > 0)
    turns.push({
      what: `The authors computed otherwise (${[...new Set(explained.map((one) => one.explained))].slice(0, 3).join('; ')})`,
      size: `${explained.length} of the ${against.length} that ${againstWords(against)} would agree`,
      overturns: true,
    });
  const apart = figuresIn(unheld);
  if (apart.length > 0)
    turns.push({
      what: 'Figures were held against other figures only, not against the data',
      size: `${printCount(apart.length, 'figure')}, the first: ${placeAndText(apart[0].figure)}; ${unheld[0].resolve}`,
      overturns: false,
    });
  if (unread.length > 0)
    turns.push({
      what: 'What could not be read is left out',
      size: `${printCount(unread.length, 'line')}, the first: ${unread[0]}`,
      overturns: false,
    });
  for (const doubt of doubts)
    turns.push({ what: 'A table of the data has an open question', size: doubt, overturns: false });
  if (ignored.length > 0)
    turns.push({
      what: 'Columns of the claims file are not read',
      size: printList(ignored),
      overturns: false,
    });
  return turns;
}

/** "differ", "cannot be", or both. */
function againstWords(against: readonly JudgedFigure[]): string {
  const [differ, impossible] = (['differs', 'cannot be'] as const).map((verdict) =>
    against.some((one) => one.verdict === verdict),
  );
  return [...(differ ? ['differ'] : []), ...(impossible ? ['cannot be'] : [])].join(' or ');
}

const MOST_STEPS = 3;

function nextOf({ judged, unchecked }: ClaimsFound): string[] {
  const against = judged.filter(({ verdict }) => verdict === 'cannot be' || verdict === 'differs');
  const steps = [...against, ...unchecked].map(({ resolve }) => resolve).filter((step) => step !== '');
  return [...new Set(steps)].slice(0, MOST_STEPS);
}
