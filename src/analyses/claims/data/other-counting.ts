import type { FigureCheck } from '../found.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Quantity } from '../reading/terms.ts';
import { ancestorsOf } from './term-levels.ts';
import { idOf, termsOf, type View } from './values.ts';

/** An attribute counted otherwise than it is named. */
interface Counting {
  /** In words that follow "counted". */
  readonly said: string;
  readonly figures: readonly PrintedFigure[];
  readonly view: View;
}

/** What rests on how kinds are told apart. */
const OF_KINDS: ReadonlySet<Quantity> = new Set<Quantity>([
  'statistic',
  'df',
  'p',
  'effect',
  'similarity',
  'diversity',
  'low',
  'high',
]);

/**
 * A text that differs as its attribute is counted, and agrees in every figure under exactly one other reading of it:
 * the kinds in place of the structure or the other way round, its broader terms, or the wording of the source. Null
 * where none or several readings give all, or where so little is printed that one would fit by chance.
 *
 * @param again all checks of the text under another reading.
 */
export function countedOtherwise(
  line: readonly PrintedFigure[],
  checks: readonly FigureCheck[],
  view: View,
  again: (figures: readonly PrintedFigure[], view: View) => readonly FigureCheck[],
): readonly FigureCheck[] | null {
  const concerned = line.filter(({ quantity }) => OF_KINDS.has(quantity));
  const differing = checks.filter(({ outcome }) => outcome === 'differs').map(({ figure }) => figure);
  if (!differing.every((id) => concerned.some((figure) => figure.id === id)) || !telling(concerned))
    return null;
  const fitting = countings(line, view).flatMap((counting) => {
    const found = again(counting.figures, counting.view);
    const before = new Map(checks.map((check) => [check.figure, check.outcome]));
    const all = found.every(
      ({ figure, outcome }) =>
        outcome.startsWith('agrees') ||
        outcome === 'passes' ||
        (before.get(figure) === outcome && outcome === 'open'),
    );
    return all ? [{ said: counting.said, found }] : [];
  });
  if (fitting.length !== 1) return null;
  const [{ said, found }] = fitting;
  return found.map((check) =>
    check.outcome.startsWith('agrees') && differing.includes(check.figure)
      ? { ...check, when: `counted ${said}` }
      : check,
  );
}

const FEWEST_DIGITS = 4;

/** Whether the figures hold so many digits together that another reading gives them hardly by chance. */
function telling(figures: readonly PrintedFigure[]): boolean {
  const digits = figures
    .flatMap(({ values }) => values)
    .filter(({ relation }) => relation === '=')
    .map(({ number }) => String(number.digits < 0n ? -number.digits : number.digits).length);
  return digits.reduce((sum, one) => sum + one, 0) >= FEWEST_DIGITS;
}

function countings(line: readonly PrintedFigure[], view: View): Counting[] {
  const attributes = [...new Set(line.flatMap((figure) => figure.attributes))];
  return attributes.flatMap((attribute) => {
    const rows = Array.from({ length: view.table.rows }, (_, row) => row);
    const terms = termsOf(view, attribute, rows);
    if ('why' in terms) return [];
    const id = idOf(attribute, view.register);
    const instead = (other: string): readonly PrintedFigure[] =>
      line.map((figure) => ({
        ...figure,
        attributes: figure.attributes.map((one) => (one === attribute ? other : one)),
      }));
    const other = id === 'structure' ? 'kind' : id === 'kind' ? 'structure' : null;
    const label = view.register.attributes.get(other ?? '')?.label.toLowerCase();
    const readings: Counting[] = [
      ...(other === null || label === undefined
        ? []
        : [{ said: `by ${other === 'kind' ? 'kind' : label}`, figures: instead(other), view }]),
      ...ancestorsOf(terms, id, view.register).map(({ said, of }) => ({
        said: `by its broader terms (${said})`,
        figures: line,
        view: { ...view, broader: { attribute: id, of } },
      })),
      { said: 'by the wording of the source', figures: line, view: { ...view, worded: id } },
    ];
    // Readings that tell the records apart alike are one, the first of them.
    const seen = new Set([parting(terms)]);
    return readings.filter(({ figures, view: other }) => {
      const [instead = attribute] = figures.flatMap((figure, i) =>
        figure.attributes.filter((one, at) => one !== line[i].attributes[at]),
      );
      const found = termsOf(other, instead, rows);
      if ('why' in found) return false;
      const parted = parting(found);
      return !seen.has(parted) && seen.add(parted);
    });
  });
}

/** Which records count as one kind, whatever the kinds are called. */
function parting(terms: readonly (string | null)[]): string {
  const first = new Map<string, number>();
  return terms
    .map((term, row) => {
      if (term === null) return '-';
      if (!first.has(term)) first.set(term, row);
      return first.get(term);
    })
    .join();
}
