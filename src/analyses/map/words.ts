import type { Answer, Turn } from '../contract.ts';
import { sayLikeness } from '../likeness-rank.ts';
import { oneSentence } from '../one-sentence.ts';
import {
  inSentence,
  printCount,
  printLevel,
  printNumber,
  printP,
  printSmall,
  printSome,
} from '../phrasing.ts';
import { besideTurns } from '../shared/guard/turn-words.ts';
import { sayFolds, sayTooBroad } from '../shared/level/said.ts';
import type { Line, MapFound } from './found.ts';

/** Which places lean the same way, the surest first, and what that hangs on. */
export function mapWords(found: MapFound): Answer {
  return { answer: sentence(found), because: evidence(found), unless: turns(found), next: next(found) };
}

const nameOf = ({ places }: MapFound, { first, second }: Line) =>
  `${places[first].label} with ${places[second].label}`;

function sentence(found: MapFound): string {
  const { lines, verdict, kindsLabel, places } = found;
  const drawn = lines.filter((line) => line.drawn);
  const kinds = inSentence(kindsLabel);
  const judged = places.filter((place) => place.judged).length;
  switch (verdict) {
    case 'cannot be told':
      return oneSentence([
        `cannot be told which places lean the same way in ${kinds}: fewer than two have items enough`,
      ]);
    case 'none':
      return oneSentence([
        `no two of ${printSmall(judged)} places lean the same way in ${kinds} further than chance explains`,
      ]);
    case 'some':
      return oneSentence(
        [
          `${printSmall(drawn.length)} of ${printCount(lines.length, 'pair')} of places ${drawn.length === 1 ? 'leans' : 'lean'} the same way in ${kinds} further than chance explains`,
        ],
        [
          `: ${printSome(
            drawn.map((line) => nameOf(found, line)),
            3,
          )}`,
          `, surest ${nameOf(found, drawn[0])}`,
        ],
      );
  }
}

function evidence(found: MapFound): string[] {
  const { lines, options, places, to, coordinates, share } = found;
  const alike = [...places].filter((place) => place.likeness !== null && place.judged);
  const sign = options.coefficient === 'chi-square' ? 1 : -1;
  alike.sort((a, b) => sign * ((a.likeness ?? 0) - (b.likeness ?? 0)));
  const most = [...places].filter((place) => place.judged).sort((a, b) => b.share - a.share);
  return [
    ...lines
      .slice(0, 1)
      .map(
        (line) =>
          `Surest: ${nameOf(found, line)}, ${sayLikeness(line.likeness, options.coefficient)}, shared leaning ${printNumber(line.leaning)}, ${printP(line.pAdjusted)} adjusted over ${printCount(lines.length, 'pair')}.`,
      ),
    ...(alike.length === 0
      ? []
      : [
          `Most like ${to}: ${printSome(
            alike
              .slice(0, 3)
              .map(({ label, likeness }) => `${label} (${sayLikeness(likeness ?? 0, options.coefficient)})`),
            3,
          )}.`,
        ]),
    ...(most.length === 0
      ? []
      : [
          `Share of ${share}: ${printSome(
            most
              .slice(0, 3)
              .map((place) => `${place.label} ${Math.round(100 * place.share)} % of ${place.records}`),
            3,
          )}.`,
        ]),
    'why' in coordinates
      ? `No map: ${coordinates.why}.`
      : `${printCount(places.filter(({ at }) => at !== null).length, 'place')} on the map, ${places.filter(({ at, within }) => at !== null && within > 0).length} of them in coarsened cells.`,
  ];
}

function turns(found: MapFound): Turn[] {
  const { asRecorded, level, unit, tooFew, without, options } = found;
  const list: Turn[] = [];
  if (asRecorded !== null)
    list.push({
      what: 'counted as recorded',
      size: `${asRecorded.drawn === 0 ? 'no line is' : `${printCount(asRecorded.drawn, 'line')} ${asRecorded.drawn === 1 ? 'is' : 'are'}`} drawn`,
      overturns: asRecorded.overturns,
    });
  if (level.differs && level.folds.length > 0)
    list.push({ what: 'what is compared', size: sayFolds(level), overturns: false });
  if (level.tooBroad.length > 0)
    list.push({ what: 'left out', size: sayTooBroad(level, unit), overturns: false });
  if (tooFew.length > 0)
    list.push({
      what: `too few items for a line: ${printSome(
        tooFew.map(({ label, items }) => `${label} (${items})`),
        6,
      )}`,
      size: 'they are drawn, and no line is',
      overturns: false,
    });
  if (without.length > 0)
    list.push({
      what: `without coordinates: ${printSome(without, 6)}`,
      size: 'on the network and not on the map',
      overturns: false,
    });
  list.push({
    what: `lines are chosen so that at most ${printLevel(1 - options.confidence)} of them are of chance`,
    size: 'a likeness of all places to each other draws none',
    overturns: false,
  });
  list.push(...besideTurns(found.beside, 'a shared leaning, or the lack of one,'));
  return list.sort((a, b) => Number(b.overturns) - Number(a.overturns));
}

function next({ coordinates, without }: MapFound): string[] {
  if (!('why' in coordinates))
    return without.length === 0
      ? []
      : [`Give coordinates, coarsened where needed, of ${printSome(without, 4)}.`];
  return ['Map two columns to latitude and longitude, or name the coordinates of a grid ("places").'];
}
