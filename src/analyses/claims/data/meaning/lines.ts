import { foldText } from '../../../../attributes/matching.ts';
import type { Condition } from '../../../../fragments/select-condition.ts';
import { lookUp, type Names } from './names.ts';

/** A row or a column of a printed table, by its words. */
export interface LineWords {
  /** The head or label that spans several lines; empty for none. */
  readonly over: string;
  /** Its own words; empty where they only say what the line holds. */
  readonly own: string;
  readonly sum: boolean;
}

/** What a row or a column is of, in the data. */
export interface LineMeaning {
  readonly select: readonly Condition[];
  /** The other group of "Early vs. Late"; empty for none. */
  readonly versus: readonly Condition[];
  readonly measure: string | null;
  /** The other measure of "Length × Width". */
  readonly second: string | null;
  /** An attribute of kinds that the line names as a whole: the heading "Fibre". */
  readonly kind: string | null;
}

const NOTHING: LineMeaning = { select: [], versus: [], measure: null, second: null, kind: null };

/** "Early vs. Late", "Length × Width": two names in one label. */
const PAIR = /^(?<one>.+?)\s+(?:vs?\.?|versus|against|gegen|contre|and|und|et|×|x|[-–—/])\s+(?<other>.+)$/iu;

/**
 * What the lines along one side of a table are of: terms of one attribute, measures, or both. Where the words fit
 * several attributes the corner or the caption decides; where they do not, nothing is taken.
 *
 * @param said attribute that a study names for this side.
 */
export function meaningOfLines(
  lines: readonly LineWords[],
  names: Names,
  { hints, said }: { readonly hints: string; readonly said?: string | undefined },
): readonly LineMeaning[] {
  const parts = lines.map(({ over, own, sum }) => (sum ? [] : partsOf(over, own)));
  const overs = [...new Set(parts.flatMap(([first, ...rest]) => (rest.length > 0 ? [first] : [])))];
  const asked = { hints, ...(said === undefined ? {} : { said }) };
  // "no ulcer" and "ulcer" of the attribute "ulcer" are its terms, not its name.
  const allTerms = kindOf(overs, names, asked);
  const named = allTerms !== null && allTerms.terms.size === overs.length;
  const headings = overs.map((over) => ({
    over,
    measure: named ? null : (lookUp(over, names.measures) ?? null),
    kind: named ? null : (lookUp(over, names.kinds) ?? null),
  }));
  const heading = (over: string) => headings.find((one) => one.over === over);
  const open = overs.filter((over) => heading(over)?.measure === null && heading(over)?.kind === null);
  const ofOvers = kindOf(open, names, asked);
  const groups = new Map<string, string[]>();
  const groupOf = (line: readonly string[]) =>
    line.length > 1 && heading(line[0])?.kind != null ? line[0] : '';
  for (const line of parts) {
    const last = line[line.length - 1];
    if (last === undefined) continue;
    const open = namesIn(last, names).filter((name) => lookUp(name, names.measures) === undefined);
    if (open.length > 0) groups.set(groupOf(line), [...(groups.get(groupOf(line)) ?? []), ...open]);
  }
  const ofGroup = new Map(
    [...groups].map(([over, labels]) => {
      const kind = heading(over)?.kind ?? said;
      const find = (of: readonly string[]) =>
        kindOf([...new Set(of)], names, { hints, ...(kind == null ? {} : { said: kind }) });
      // A heading among its kinds ("Fibre", with p at its end) is no kind itself.
      const own = labels.filter((label) => lookUp(label, names.kinds) === undefined);
      return [over, find(labels) ?? find(own)] as const;
    }),
  );
  return parts.map((line): LineMeaning => {
    if (line.length === 0) return NOTHING;
    const last = line[line.length - 1];
    const over = line.length > 1 ? line[0] : '';
    const [one, other] = namesIn(last, names);
    const ofGroups = (name: string | undefined) =>
      name === undefined ? [] : conditionOf(ofGroup.get(groupOf(line)) ?? null, name);
    const terms = [over === '' || ofOvers === null ? [] : conditionOf(ofOvers, over), ofGroups(one)].flat();
    const measureOf = (name: string | undefined) =>
      name === undefined ? null : (lookUp(name, names.measures) ?? null);
    return {
      select: terms.filter(
        (term, i) => terms.findIndex(({ attribute }) => attribute === term.attribute) === i,
      ),
      versus: ofGroups(other),
      measure: measureOf(one) ?? heading(over)?.measure ?? null,
      second: measureOf(other),
      kind: lookUp(last, names.kinds) ?? null,
    };
  });
}

/** A label as one name, or as the two that it holds. */
function namesIn(label: string, names: Names): readonly string[] {
  const isKnown = (name: string | undefined) =>
    name !== undefined &&
    [names.measures, names.kinds, ...names.terms.values()].some(
      (known) => lookUp<string>(name, known) !== undefined,
    );
  const { one, other } = PAIR.exec(label)?.groups ?? {};
  return !isKnown(label) && isKnown(one) && isKnown(other) ? [one ?? '', other ?? ''] : [label];
}

/** "Row spacing, Early" of two columns of labels is what both say. */
function partsOf(over: string, own: string): string[] {
  const rest = over !== '' && own.startsWith(`${over}, `) ? own.slice(over.length + 2) : own;
  return [over, rest].filter((text) => text !== '');
}

interface KindTerms {
  readonly attribute: string;
  readonly terms: ReadonlyMap<string, string>;
}

function conditionOf(found: KindTerms | null, label: string): Condition[] {
  const term = found?.terms.get(label);
  return found === null || term === undefined ? [] : [{ attribute: found.attribute, in: [term] }];
}

/** The attribute whose terms most labels are; null where none is, or several are and nothing tells them apart. */
function kindOf(
  labels: readonly string[],
  names: Names,
  { hints, said }: { readonly hints: string; readonly said?: string },
): KindTerms | null {
  if (labels.length === 0) return null;
  const candidates = [...names.terms].flatMap(([attribute, terms]): KindTerms[] => {
    if (said !== undefined && attribute !== said) return [];
    const found = new Map(
      labels.flatMap((label) => {
        const term = lookUp(label, terms);
        return term === undefined ? [] : [[label, term] as const];
      }),
    );
    const enough =
      found.size === labels.length ||
      (said !== undefined && found.size > 0) ||
      (found.size >= 3 && found.size * 4 >= labels.length * 3);
    return enough ? [{ attribute, terms: found }] : [];
  });
  if (candidates.length < 2) return candidates[0] ?? null;
  const words = foldText(hints);
  const label = new Map([...names.kinds].map(([name, id]) => [id, name]));
  const hinted = candidates.filter(({ attribute }) => words.includes(label.get(attribute) ?? attribute));
  return hinted.length === 1 ? hinted[0] : null;
}
