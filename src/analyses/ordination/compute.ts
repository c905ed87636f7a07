import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { groupRows } from '../../fragments/groups.ts';
import { atLevel } from '../../fragments/level/common-level.ts';
import type { AnalysisInput } from '../contract.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { levelSaid } from '../shared/level/said.ts';
import { componentsOf, kindsOf, mixtureOf } from './by-attributes.ts';
import { countsOf, smallLines } from './by-counts.ts';
import { coordinatesOf } from './by-dissimilarity.ts';
import { centresOf } from './centres.ts';
import type { Axes, AxesOrWhy, OrdinationFound } from './found.ts';
import type { OrdinationMethod, OrdinationOptions } from './options.ts';
import { activeAttributes, supplementaryOf } from './supplementary.ts';
import { type ActiveAndPassive, NO_SAY, NOT_PLACED, splitRecords } from './supplementary-records.ts';
import { besidesOf, carriedBy, endsOf, followedBy, poorlyShown } from './verdict.ts';

const METHOD: Readonly<
  Record<
    OrdinationMethod,
    (input: AnalysisInput, options: OrdinationOptions, split: ActiveAndPassive) => AxesOrWhy
  >
> = {
  pcoa: coordinatesOf,
  pca: componentsOf,
  mca: kindsOf,
  mixed: mixtureOf,
  ca: countsOf,
};

/**
 * How do the records spread out, and what spreads them? Records, or rows and columns of a table of counts,
 * as points on a few axes, with what each contributes and how well it is shown.
 *
 * @throws InputError for attributes that the method cannot take, or labels that are not there.
 */
export function computeOrdination(input: AnalysisInput, options: OrdinationOptions): OrdinationFound {
  input.onProgress?.(0, 'spreading the records out');
  const split = splitRecords(input, options);
  const counted = atCommonLevel(input, options);
  const axes = METHOD[options.method](counted.input, options, split);
  const { records, unit } = input;
  const base = { options, unit, axes, level: counted.level };
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, unit, rows);
  if ('why' in axes) {
    return {
      ...base,
      centres: [],
      supplementary: [],
      by: '',
      marks: new Map(),
      labels: [],
      passiveLabels: [],
      n: { fragments: 0, items: 0, setAside: [] },
      carried: { axes: 0, share: axes, atMost: false },
      followed: [],
      besides: [],
      unseen: { unknown: [], scarce: [] },
      poorlyShown: 0,
      ends: null,
      endsAsRecorded: null,
      small: [],
      lost: [],
    };
  }
  if (axes.records[0]?.at.length === 0)
    throw new InputError('the ordination has no axis', {}, 'add attributes');
  const centres = centresOf(input, axes, options);
  const supplementary = supplementaryOf(input, axes, options);
  const by = byLabel(input, options, axes);
  const setAside = [...split.undecided, ...axes.setAside, { reason: NO_SAY, rows: axes.passiveRows }].filter(
    ({ rows }) => rows.length > 0,
  );
  const aside = new Set(setAside.flatMap(({ rows }) => rows));
  const used = Array.from({ length: records.rows }, (_, row) => row).filter((row) => !aside.has(row));
  const counts = setAside.map(({ reason, rows }) => ({ reason, fragments: behind(rows).fragments }));
  const asRecorded = counted.differs ? METHOD[options.method](input, options, split) : null;
  const isTable = axes.rows.length === 0;
  return {
    ...base,
    centres,
    supplementary,
    ...by,
    n: { ...behind(used), setAside: counts },
    carried: carriedBy(axes),
    followed: followedBy(axes),
    ...besidesOf(input, axes, [
      ...activeAttributes(split.table, options),
      ...options.supplementaryAttributes,
    ]),
    poorlyShown: poorlyShown(axes),
    ends: isTable ? endsOf(axes.records) : null,
    endsAsRecorded: asRecorded === null || 'why' in asRecorded ? null : endsOf(asRecorded.records),
    small: isTable ? smallLines(counted.input, options) : [],
    lost: counts.filter(({ reason }) => reason !== NO_SAY && reason !== NOT_PLACED),
  };
}

/** For a table of counts: columns, and rows, counted at the finest level that all of the other side record. */
function atCommonLevel(input: AnalysisInput, options: OrdinationOptions) {
  const { rows, columns, level } = options;
  if (options.method !== 'ca' || rows === undefined || columns === undefined)
    return { input, level: null, differs: false };
  const across = atLevel(input.records, columns, rows, input.register, { level });
  const down = atLevel(across.table, rows, columns, input.register, { level });
  const both = {
    ...across,
    folds: [...across.folds, ...down.folds],
    tooBroad: [...across.tooBroad, ...down.tooBroad],
    differs: across.differs || down.differs,
  };
  return {
    input: both.differs ? { ...input, records: down.table } : input,
    level: levelSaid(level, both),
    differs: both.differs,
  };
}

function byLabel(input: AnalysisInput, options: OrdinationOptions, axes: Axes) {
  if (options.by === undefined || axes.rows.length === 0)
    return { by: '', marks: new Map(), labels: [], passiveLabels: [] };
  const labelOf = new Map<number, string>();
  for (const { labels, rows } of groupRows(input.records, [options.by], input.register).groups) {
    for (const row of rows) labelOf.set(row, labels[0]);
  }
  return {
    by: input.register.attributes.get(options.by)?.label ?? options.by,
    marks: marksOf(input, options.by),
    labels: axes.rows.map((row) => labelOf.get(row) ?? ''),
    passiveLabels: axes.passiveRows.map((row) => labelOf.get(row) ?? ''),
  };
}
