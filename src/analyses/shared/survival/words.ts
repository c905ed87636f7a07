import type { Turn } from '../../contract.ts';
import { printList, printSome } from '../../phrasing.ts';
import type { Loss } from './found.ts';

/** Kinds and places that one line names. */
const MOST_NAMED = 3;

/** Which absences say nothing, one line for each fibre and where it is lost. */
export function survivalTurns(losses: readonly Loss[]): Turn[] {
  const alike = new Map<string, Loss[]>();
  for (const loss of losses) {
    const key = `${loss.fibre} ${loss.where}`;
    alike.set(key, [...(alike.get(key) ?? []), loss]);
  }
  return [...alike.values()].map((same): Turn => {
    const [{ where }] = same;
    const absent = same.filter(({ found }) => found === 0);
    const scarce = same.filter(({ found }) => found > 0);
    const lasting = [...new Set(same.flatMap((loss) => loss.lasting))];
    const parts = [
      ...(absent.length === 0
        ? []
        : [`its absence from ${printSome(absent.map(sayPlace), MOST_NAMED)} says nothing`]),
      ...(scarce.length === 0
        ? []
        : [
            `that ${printSome(scarce.map(sayPlace), MOST_NAMED)} ${scarce.length === 1 ? 'has' : 'have'} little of it (${printList(scarce.map(({ found, counted }) => `${found} of ${counted} counted`))}) says nothing of how much there was`,
          ]),
      ...(lasting.length === 0 ? [] : [`that of ${printList(lasting)} would say something`]),
    ];
    return { what: `${sayFibre(same)} would be lost ${where}`, size: parts.join('; '), overturns: false };
  });
}

function sayFibre(same: readonly Loss[]): string {
  const [{ fibre }] = same;
  const kinds = [...new Set(same.flatMap((loss) => loss.kinds))].filter((kind) => kind !== fibre);
  return kinds.length === 0 ? fibre : `${fibre} (${printSome(kinds, MOST_NAMED)})`;
}

function sayPlace({ place, where, records, of }: Loss): string {
  const share = `${records} of ${of}`;
  return place === where ? `finds ${where} (${share})` : `${place} (${where}, ${share})`;
}

/** ", though plant fibre would be lost at A", of those of some places where that holds; empty where it holds of none. */
export function thoughLost(losses: readonly Loss[], places: readonly string[]): string {
  const [first, ...more] = losses.filter(({ place }) => places.includes(place));
  if (first === undefined) return '';
  return `, though ${printList([
    `${first.fibre} would be lost at ${first.place}`,
    ...more.map(({ fibre, place }) => `${fibre} at ${place}`),
  ])}`;
}

/** The same of pairs of places, called "A with B". */
export function thoughLostInPairs(losses: readonly Loss[], pairs: readonly string[]): string {
  return thoughLost(
    losses,
    losses
      .map(({ place }) => place)
      .filter((place) =>
        pairs.some((pair) => pair.startsWith(`${place} with `) || pair.endsWith(` with ${place}`)),
      ),
  );
}
