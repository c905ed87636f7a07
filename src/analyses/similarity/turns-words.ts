import type { Turn } from '../contract.ts';
import { coefficientName } from '../likeness-rank.ts';
import { inSentence, printList, printNumber, printSome } from '../phrasing.ts';
import { guardTurns } from '../shared/guard/turn-words.ts';
import { sayCloser, sayTooBroad } from '../shared/level/said.ts';
import { asideTurn, missingKindsTurn } from '../shared/missing/words.ts';
import { survivalTurns, thoughLostInPairs } from '../shared/survival/words.ts';
import type { SimilarityFound } from './found.ts';

/** What would change which assemblages are alike: what was tried and does so first. */
export function similarityTurns(found: SimilarityFound): readonly Turn[] {
  const turns = [
    ...guardTurns(found.guard).filter(({ overturns }) => overturns),
    ...closerTurns(found),
    ...recordedTurns(found),
    ...lookAlikeTurns(found),
    ...coefficientTurns(found),
    ...rivalTurns(found),
    ...survivalTurns(found.losses),
    ...sizeTurns(found),
    ...missingKindsTurn(found.missing, {
      kinds: inSentence(found.kindsLabel),
      unit: found.unit,
      turned: 'others would be the most alike',
      stands: 'the same would be the most alike',
    }),
    ...ownCautions(found),
    ...asideTurns(found),
    ...guardTurns(found.guard).filter(({ overturns }) => !overturns),
  ];
  return [...turns.filter(({ overturns }) => overturns), ...turns.filter(({ overturns }) => !overturns)];
}

/** Pairs that a few broad records of one place keep from being told: what the rest says of them. */
function closerTurns({ ranking, toldCloser, losses }: SimilarityFound): Turn[] {
  if (toldCloser === null || 'why' in ranking.most || 'why' in toldCloser.ranking.most) return [];
  return [rankedOtherwise(sayCloser(toldCloser.said), ranking, toldCloser.ranking, losses)];
}

function rankedOtherwise(
  what: string,
  here: SimilarityFound['ranking'],
  there: SimilarityFound['ranking'],
  losses: SimilarityFound['losses'],
  more = '',
): Turn {
  const leaders = ({ most }: SimilarityFound['ranking']) => ('why' in most ? [] : most.labels);
  const least = 'why' in here.least || 'why' in there.least ? null : [here.least, there.least];
  const overturns =
    !leaders(there).some((label) => leaders(here).includes(label)) ||
    (least !== null && !least[1].labels.some((label) => least[0].labels.includes(label)));
  const said = `most alike ${printSome(leaders(there), 2)}${least === null ? '' : `, least ${printSome(least[1].labels, 2)}${thoughLostInPairs(losses, least[1].labels)}`}`;
  return { what, size: `${overturns ? '' : 'still '}${said}${more}`, overturns };
}

function recordedTurns({ level, ranking, asRecorded, table, unit, losses }: SimilarityFound): Turn[] {
  if (asRecorded === null || 'why' in ranking.most || 'why' in asRecorded.most) {
    if (table.nested.length === 0) return [];
    return [
      {
        what: 'Recorded more closely everywhere',
        size: `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same, so that places recorded more closely look different for that alone`,
        overturns: false,
      },
    ];
  }
  const out = level.tooBroad.length === 0 ? '' : `; left out here: ${sayTooBroad(level, unit)}`;
  return [rankedOtherwise('Counted by the words as recorded', ranking, asRecorded, losses, out)];
}

/** Kinds that a piece may show alike, counted as one. */
function lookAlikeTurns({ lookAlikes, ranking, losses }: SimilarityFound): Turn[] {
  if ('why' in ranking.most) return [];
  return lookAlikes.map(({ kinds, ranking: there }) => {
    const what = `${printList(kinds)}, which a piece may show alike, counted as one`;
    if (there === null || 'why' in there.most)
      return { what, size: 'nothing is left in which they could differ', overturns: true };
    return rankedOtherwise(what, ranking, there, losses);
  });
}

function coefficientTurns({ otherCoefficients }: SimilarityFound): Turn[] {
  return otherCoefficients
    .filter(({ overturns }) => overturns)
    .map(({ coefficient, most }) => ({
      what: `By another coefficient, ${coefficientName(coefficient)}`,
      size: `most alike ${printSome(most, 2)}`,
      overturns: true,
    }));
}

function rivalTurns({ ranking, losses }: SimilarityFound): Turn[] {
  return (['most', 'least'] as const).flatMap((how): Turn[] => {
    const rank = ranking[how];
    if ('why' in rank || rank.rivals.length === 0) return [];
    const shares = rank.rivals
      .slice(0, 3)
      .map(({ label, share }) => `${label} in ${printNumber(share * 100, 2)} %`);
    return [
      {
        what: 'Had other items been found',
        size: `${how} alike come ${printList(shares)} of draws of the items${
          how === 'least'
            ? thoughLostInPairs(
                losses,
                rank.rivals.map(({ label }) => label),
              )
            : ''
        }`,
        overturns: false,
      },
    ];
  });
}

function sizeTurns({ few, tooFew, unit, table }: SimilarityFound): Turn[] {
  if (few.length === 0) return [];
  const named = printSome(
    few.map(({ label, items }) => `${label} (${items})`),
    3,
  );
  const left =
    tooFew.length === 0
      ? ''
      : `; ${printSome(
          tooFew.map(({ label }) => label),
          3,
        )} ${tooFew.length === 1 ? 'is' : 'are'} not ranked`;
  return [
    {
      what: `With more ${unit}s`,
      size: `${few.length} of ${table.rows.length} have so few that their likeness is mostly chance: ${named}${left}`,
      overturns: false,
    },
  ];
}

function ownCautions({ options, newcomers, rare, axes, unit }: SimilarityFound): Turn[] {
  const unplaced = newcomers.filter((one) => one.unplaced > 0);
  return [
    ...(options.coefficient === 'jaccard'
      ? [
          {
            what: 'Were all assemblages as large',
            size: 'small ones have fewer kinds by size alone, and presence does not make up for it',
            overturns: false,
          },
        ]
      : []),
    ...(options.coefficient === 'bray-curtis'
      ? [
          {
            what: 'Were all assemblages as large',
            size: 'Bray-Curtis works on counts, and those of unlike size cannot be fully alike',
            overturns: false,
          },
        ]
      : []),
    ...(rare.length > 0 && !('why' in axes)
      ? [
          {
            what: `On the map, without kinds of fewer than five ${unit}s`,
            size: `${printSome(rare, 3)} can dominate the axes`,
            overturns: false,
          },
        ]
      : []),
    ...unplaced.map(({ label, n, unplaced: count }) => ({
      what: `On the map, ${label}`,
      size: `${count} of ${n} are of kinds that none on the axes has, so that it lies too near the others`,
      overturns: false,
    })),
  ];
}

function asideTurns({ n, unit }: SimilarityFound): Turn[] {
  const turns: Turn[] = asideTurn(n.setAside);
  if (unit === 'fragment' && n.items < n.fragments)
    turns.push({
      what: 'Counted by item',
      size: `${n.fragments} fragments come from ${n.items} items; draws take items whole, but counts and coefficients are of fragments`,
      overturns: false,
    });
  return turns;
}
