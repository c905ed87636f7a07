import type { Condition } from '../../../../fragments/select-condition.ts';
import { fitOfWays } from '../../conventions/way.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { selectionText } from '../../reading/select-text.ts';
import { recompute } from '../quantities.ts';
import { rowsOf, termsOf, type View } from '../values.ts';

/** The same figure of records selected otherwise. */
interface Variant {
  readonly said: string;
  readonly figure: PrintedFigure;
}

/** Above this many, single records fit by chance. */
const MOST_ADDED = 500;
const MOST_KINDS = 40;
/** Just beyond a limit, for "more than" in place of "at least". */
const BEYOND = 1e-9;

/**
 * Which other selections of the records give the printed figure: certain attributions only, another level of
 * recording, a kind left out, a limit taken in or not, one condition less, one record more. All of them are
 * tried, so that one is told only where it alone fits.
 */
export function otherSelections(figure: PrintedFigure, view: View): readonly string[] {
  const fits = (one: PrintedFigure, seen: View) => {
    const found = recompute(one, seen);
    return !('why' in found) && fitOfWays(one, found.ways) !== null;
  };
  const selections = (['select', 'versus', 'counted'] as const).flatMap((part) =>
    variantsOf(figure, part, view),
  );
  const fitting = selections.filter((one) => fits(one.figure, view)).map(({ said }) => said);
  return [...fitting, ...otherKind(figure, view, fits), ...oneMore(figure, view, fits)];
}

/** The figure of another kind of the same attribute, a line further up or down; none where several would do. */
function otherKind(
  figure: PrintedFigure,
  view: View,
  fits: (figure: PrintedFigure, view: View) => boolean,
): readonly string[] {
  const fitting = figure.select.flatMap((one, at) => {
    if (one.in?.length !== 1) return [];
    const all = Array.from({ length: view.table.rows }, (_, row) => row);
    const terms = termsOf(view, one.attribute, all);
    const others = 'why' in terms ? [] : [...new Set(terms)].filter((term) => term !== null);
    if (others.length > MOST_KINDS) return [];
    // A broader term is another level of recording, and is told as one.
    const apart = new Set([one.in[0], ...broader(one, view)]);
    return others.filter(
      (term) =>
        !apart.has(term) &&
        fits({ ...figure, select: figure.select.toSpliced(at, 1, { ...one, in: [term] }) }, view),
    );
  });
  return fitting.length === 1 ? [`the figure of "${fitting[0]}"`] : [];
}

type Part = 'select' | 'versus' | 'counted';

function variantsOf(figure: PrintedFigure, part: Part, view: View): Variant[] {
  const conditions = figure[part];
  const changed = (at: number, said: string, ...others: readonly Condition[]): Variant => ({
    said,
    figure: { ...figure, [part]: conditions.toSpliced(at, 1, ...others) },
  });
  return conditions.flatMap((one, at): Variant[] => {
    const { attribute, in: wanted, atLeast, atMost } = one;
    return [
      ...(conditions.length > 1 ? [changed(at, `the selection without "${selectionText([one])}"`)] : []),
      ...(wanted === undefined
        ? []
        : [
            changed(at, `only certain attributions of "${selectionText([one])}"`, {
              ...one,
              certainty: 'certain' as const,
            }),
            ...(wanted.length < 2
              ? []
              : wanted.map((term) =>
                  changed(at, `"${term}" left out of "${selectionText([one])}"`, {
                    ...one,
                    in: wanted.filter((other) => other !== term),
                  }),
                )),
            ...kindsWithin(one, view).map((kind) =>
              changed(at, `"${kind}" left out of "${selectionText([one])}"`, one, {
                attribute,
                notIn: [kind],
              }),
            ),
            ...broader(one, view).map((parent) =>
              changed(at, `everything within "${parent}" instead of "${selectionText([one])}"`, {
                ...one,
                in: [parent],
              }),
            ),
          ]),
      ...(atMost === undefined
        ? []
        : [
            changed(at, `less than ${atMost} instead of at most ${atMost}`, {
              ...without(one, 'atMost'),
              below: atMost,
            }),
          ]),
      ...(atLeast === undefined
        ? []
        : [
            changed(at, `more than ${atLeast} instead of at least ${atLeast}`, {
              ...one,
              atLeast: atLeast + BEYOND * Math.max(1, Math.abs(atLeast)),
            }),
          ]),
    ];
  });
}

function without(condition: Condition, key: 'atMost'): Condition {
  const { [key]: _, ...rest } = condition;
  return rest;
}

/** Kinds that occur under the terms of a condition, other than the terms themselves. */
function kindsWithin(condition: Condition, view: View): string[] {
  const rows = rowsOf(view, [condition]);
  const terms = termsOf(view, condition.attribute, rows);
  if ('why' in terms) return [];
  const kinds = [...new Set(terms)].filter((term) => term !== null && !(condition.in ?? []).includes(term));
  return kinds.length < 1 || kinds.length > MOST_KINDS ? [] : (kinds as string[]);
}

function broader({ attribute, in: wanted }: Condition, { register }: View): string[] {
  const vocabulary = register.vocabularies.get(register.attributes.get(attribute)?.vocabulary ?? '');
  const parents = (wanted ?? []).map((term) => vocabulary?.terms.find(({ id }) => id === term)?.parent);
  return [...new Set(parents)].filter((parent) => parent !== undefined);
}

/** One record more: of those that fail a single condition. */
function oneMore(
  figure: PrintedFigure,
  view: View,
  fits: (figure: PrintedFigure, view: View) => boolean,
): readonly string[] {
  if (figure.select.length === 0 || figure.counted.length > 0) return [];
  const inside = new Set(rowsOf(view, figure.select));
  const near = figure.select.flatMap((_, at) =>
    figure.select.length === 1
      ? []
      : rowsOf(view, figure.select.toSpliced(at, 1)).filter((row) => !inside.has(row)),
  );
  const candidates = [...new Set(near)];
  if (candidates.length === 0 || candidates.length > MOST_ADDED) return [];
  const fitting = candidates.filter((row) =>
    fits(figure, { ...view, also: { row, of: JSON.stringify(figure.select) } }),
  );
  // Where several would do it, none is told.
  return fitting.length === 1 ? [`one record more: ${view.table.id[fitting[0]]}`] : [];
}
