import { countBehind } from '../../fragments/behind.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { AnalysisInput } from '../contract.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { conditionsBeside } from '../shared/guard/beside.ts';
import { levelSaid } from '../shared/level/said.ts';
import { changesOf, type Groups } from './change.ts';
import { type Entries, type Entry, gatherEntries, labelsIn } from './entries.ts';
import type { ChangeInTime, ChronologyFound, PlaceSeries, Series } from './found.ts';
import type { ChronologyOptions } from './options.ts';
import { sharesOf, sliceCounts, sliceEdges } from './slices.ts';
import { inOrder, spansOf } from './spans.ts';

/** Spans that are shared by the most finds. */
const COMMONEST = 5;
/** Finds from which on so few spans are those of phases rather than of single finds. */
const MANY = 20;

/**
 * When were the finds made, place by place and kind by kind, how many fall into each slice of time given what is not
 * known of their dates, and which kinds come later or earlier than the others?
 *
 * @throws InputError where no source records the date or the kinds, and for slices that are none or too many.
 */
export function computeChronology(input: AnalysisInput, options: ChronologyOptions): ChronologyFound {
  const { records, unit, register } = input;
  const gathered = gatherEntries(input, options);
  const { entries } = gathered;
  const edges = sliceEdges(entries, options);
  const shares = new Map(entries.map((entry) => [entry, sharesOf(entry, edges)] as const));
  const slices = Math.max(0, edges.length - 1);
  const labelOf = (id: string) =>
    register.attributes.get(id)?.label ?? (id === 'assemblage' ? 'Assemblage' : id);
  const level = levelSaid(options.level, gathered.level);
  const marks = { kinds: marksOf(input, options.of, level.folds), places: marksOf(input, options.places) };
  const series = (label: string, own: readonly Entry[], mark: number | null): Series => ({
    label,
    mark,
    n: own.length,
    slices: sliceCounts(own, shares, slices, options.confidence),
  });
  const kinds = gathered.kinds
    .flatMap((label) => {
      const own = entries.filter(({ kind }) => kind === label);
      return own.length === 0 ? [] : [series(label, own, marks.kinds.get(label) ?? null)];
    })
    .sort((a, b) => b.n - a.n);
  const names = kinds.map(({ label }) => label);
  const placeSpans = spansOf(entries, gathered.places, ({ place }) => place, marks.places);
  const places = placeSpans.map(({ label, mark }): PlaceSeries => {
    const own = entries.filter(({ place }) => place === label);
    const byKind = [...names, null].map((kind) =>
      expectedIn(
        own.filter((one) => one.kind === kind),
        shares,
        slices,
      ),
    );
    return { ...series(label, own, mark), byKind };
  });
  const all = series('', entries, null);
  const within = groupsOf(input, options, gathered, labelOf);
  const lookedWithin = within.map(({ attribute }) => attribute);
  const changes = changesOf(entries, kinds, within, options, input.random.stream('changes'));
  const phases = spansOf(entries, gathered.phases, ({ phase }) => phase, new Map());
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, unit, rows);
  return {
    options,
    unit,
    placesLabel: labelOf(options.places),
    kindsLabel: labelOf(options.of),
    phasesLabel: labelOf(options.phases),
    level,
    beside: conditionsBeside({
      records,
      register,
      by: labelOf(options.of),
      groups: names.map((name) => entries.filter(({ kind }) => kind === name).map(({ row }) => row)),
      about: [options.of, options.places, options.phases, options.date, ...lookedWithin],
      across: null,
      confidence: options.confidence,
      random: input.random.stream('conditions'),
    }),
    edges,
    all,
    kinds,
    withoutKind: entries.filter(({ kind }) => kind === null).length,
    places,
    spans: { places: placeSpans, kinds: spansOf(entries, names, ({ kind }) => kind, marks.kinds) },
    phases: inOrder(phases, entries, names),
    changes,
    verdict: verdictOf(changes),
    ...spansShared(entries),
    outside: entries.filter((entry) => shares.get(entry)?.every((share) => share === 0)).length,
    peak: peakOf(all),
    n: {
      ...behind(entries.map(({ row }) => row)),
      setAside: gathered.lacking.map(({ reason, rows }) => ({ reason, fragments: behind(rows).fragments })),
    },
  };
}

/** Those of the places first, whether recorded or not; what defaults name and nobody recorded is passed over. */
function groupsOf(
  { records, register }: AnalysisInput,
  { places, of, within }: ChronologyOptions,
  { places: labels }: Entries,
  labelOf: (id: string) => string,
): Groups[] {
  const first = { attribute: places, label: labelOf(places), of: ({ place }: Entry) => place };
  const more = within
    .filter((id) => id !== places && id !== of)
    .flatMap((id): Groups[] => {
      const found = labelsIn(records, id, register);
      if (found.labels.length === 0) return [];
      return [{ attribute: id, label: labelOf(id), of: ({ row }) => found.of.get(row) ?? null }];
    });
  return labels.length === 0 ? more : [first, ...more];
}

function expectedIn(
  entries: readonly Entry[],
  shares: ReadonlyMap<Entry, Float64Array>,
  slices: number,
): number[] {
  return Array.from({ length: slices }, (_, slice) =>
    entries.reduce((sum, entry) => sum + (shares.get(entry)?.[slice] ?? 0), 0),
  );
}

function verdictOf(changes: readonly ChangeInTime[]): ChronologyFound['verdict'] {
  const told = changes.filter(({ verdict }) => verdict !== 'cannot be told');
  if (told.length === 0) return 'cannot be told';
  const changing = told.filter(({ verdict }) => verdict !== 'not told apart');
  if (changing.length === 0) return 'none';
  return changing.every(({ verdict }) => verdict.endsWith('across places')) ? 'across places' : 'some';
}

function spansShared(entries: readonly Entry[]): Pick<ChronologyFound, 'distinct' | 'shared' | 'byPhase'> {
  const counts = new Map<string, number>();
  for (const { low, high } of entries) counts.set(`${low} ${high}`, (counts.get(`${low} ${high}`) ?? 0) + 1);
  const most = [...counts.values()].sort((a, b) => b - a).slice(0, COMMONEST);
  return {
    distinct: counts.size,
    shared: most.reduce((sum, count) => sum + count, 0),
    byPhase: counts.size <= COMMONEST && entries.length > MANY,
  };
}

function peakOf({ slices }: Series): number | null {
  if (slices.length === 0) return null;
  const most = greatest(slices.map(({ expected }) => expected));
  return slices.findIndex(({ expected }) => expected === most);
}
