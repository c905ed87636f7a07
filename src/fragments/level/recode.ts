import type { Register, Vocabulary } from '../../attributes/definition.ts';
import { ancestors, isWithin } from '../../attributes/tree.ts';
import { withColumns } from '../columns-on-demand.ts';
import { termLabel } from '../groups.ts';
import type { TermColumn } from '../table.ts';
import type { Cut, Groups, TermCounts } from './cut.ts';
import type { LevelFound } from './found.ts';

/** The table with every term counted as the one that the cut makes of it; what says less than the cut is left out. */
export function recode(
  asIs: LevelFound,
  column: TermColumn,
  vocabulary: Vocabulary,
  { broad, under, isPlain, childrenOf }: TermCounts,
  cut: Cut,
  groups: Groups,
  register: Register,
): LevelFound {
  const labelOf = (id: string) => termLabel(column.attribute, id, register);
  const known = new Map(vocabulary.terms.map((term) => [term.id, term]));
  // The broadest term on the way down that is counted as one stands for everything under it.
  const kindOf = (term: string) =>
    [term, ...ancestors(vocabulary, term)].reverse().find((id) => cut(id) === 'kind') ?? term;
  const levels = [...column.levels];
  const places = new Map(levels.map((level, place) => [level, place]));
  const placeOf = (term: string) => {
    const own = places.get(term) ?? levels.push(term) - 1;
    places.set(term, own);
    return own;
  };
  const codes = Int32Array.from(column.codes);
  const folded = new Map<string, { narrower: Set<string>; records: number }>();
  const leftOut = new Map<string, number[]>();
  column.codes.forEach((code, row) => {
    const term = column.levels[code];
    if (code < 0 || !known.has(term)) return;
    const kind = kindOf(term);
    if (kind !== term) {
      const fold = folded.get(kind) ?? { narrower: new Set<string>(), records: 0 };
      fold.narrower.add(term);
      fold.records++;
      folded.set(kind, fold);
      codes[row] = placeOf(kind);
    } else if (cut(term) === 'split' && (childrenOf.get(term) ?? []).length > 0 && !isPlain(row)) {
      codes[row] = -1;
      const rows = leftOut.get(term);
      if (rows === undefined) leftOut.set(term, [row]);
      else rows.push(row);
    }
  });
  if (folded.size === 0 && leftOut.size === 0) return asIs;
  const folds = [...folded].map(([term, { narrower, records }]) => ({
    term,
    label: labelOf(term),
    mayBePlain: known.get(term)?.inner === 'variants',
    narrower: [...narrower].map(labelOf),
    records,
    because: groups
      .map(({ labels }, place) => ({
        label: labels[0],
        broad: broad.get(term)?.[place] ?? 0,
        of: under.get(term)?.[place] ?? 0,
      }))
      .filter((one) => one.broad > 0)
      .sort((a, b) => b.broad / b.of - a.broad / a.of),
  }));
  const present = new Set([...codes].filter((code) => code >= 0).map((code) => levels[code]));
  const tooBroad = [...leftOut].map(([term, rows]) => ({
    term,
    label: labelOf(term),
    rows,
    couldBe: [...present].filter((id) => isWithin(vocabulary, id, term)).map(labelOf),
  }));
  const columns = withColumns(asIs.table.columns, [[asIs.attribute, { ...column, codes, levels }]]);
  return { ...asIs, table: { ...asIs.table, columns }, folds, tooBroad, differs: true };
}
