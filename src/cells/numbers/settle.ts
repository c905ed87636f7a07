import type { AttributeDefinition } from '../../attributes/definition.ts';
import { append, greatest, least } from '../../numerics/foundation/lists.ts';
import { lowered } from '../certainty.ts';
import { type CellContext, DEFAULT_CIRCA } from '../context.ts';
import { distinct, emptyNumeric, flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note, NumericReading } from '../reading.ts';
import { convert, knownUnit, unitDimension } from '../units.ts';
import { comparable } from './bracket.ts';
import type { Measure } from './measure.ts';

/** A statement turned into the attribute's unit. */
interface Settled {
  readonly low: number;
  readonly high: number;
  readonly step: number;
}

/**
 * Turns the statements of a cell into one reading: units, "about", open ends, several readings. The unit in
 * the cell wins over the header's, the header's over the attribute's own.
 */
export function settle(
  measures: readonly Measure[],
  attribute: AttributeDefinition,
  context: CellContext,
  before: readonly Note[],
  doubt: number,
): NumericReading {
  const shared = measures.findLast(({ unit }) => unit !== undefined)?.unit;
  const statements = measures.flatMap((measure) =>
    measure.other === undefined ? [measure] : [measure, measure.other],
  );
  const values = statements.filter(({ isMean }) => !isMean);
  const kept = values.length > 0 ? values : statements;
  const notes = [...before, ...statements.flatMap((statement) => statement.notes)];
  if (values.length > 0 && values.length < statements.length) {
    notes.push(readAs('mean-beside', 'a mean is stated beside the readings; the readings are what is kept'));
  }
  const mixed = statements.length > 1 && statements.some(({ labelled }) => labelled);
  if (mixed) {
    return emptyNumeric('not-observed', [
      notUnderstood('several-measures', 'several numbers, not all of one measure; split the column'),
    ]);
  }
  const chosen = twoUnits(kept, attribute, notes) ?? bounded(kept, notes) ?? kept;
  const settled: Settled[] = [];
  for (const statement of chosen) {
    const turned = inAttributeUnit(statement, statement.unit ?? shared, attribute, context, notes);
    if ('rule' in turned) return emptyNumeric('not-observed', [turned]);
    settled.push(turned);
  }
  const low = least(settled.map((one) => one.low));
  const high = greatest(settled.map((one) => one.high));
  if (Number.isNaN(low) || low === Number.POSITIVE_INFINITY || high === Number.NEGATIVE_INFINITY) {
    return emptyNumeric('not-observed', [notUnderstood('no-finite-value', 'the text gives no finite value')]);
  }
  if (low < 0 && attribute.scale === 'ratio' && startsAboveZero(attribute)) {
    return emptyNumeric('not-observed', [
      notUnderstood('negative', 'a minus before a measure that cannot be negative; it may mean "up to"'),
    ]);
  }
  const points = settled.length > 1 && settled.every((one) => one.low === one.high);
  if (settled.length > 1)
    notes.push(readAs('list', `${settled.length} readings in one cell, kept as a list with its spread`));
  const steps = settled.map((one) => one.step).filter((step) => step > 0 && Number.isFinite(step));
  const about = chosen.some((statement) => statement.about);
  if (about) notes.push(readAs('about', 'said to be approximate; widened on either side'));
  append(notes, sizeNotes(low, high, attribute));
  const doubted = doubt + Math.max(0, greatest(statements.map((statement) => statement.doubt)));
  if (doubted > doubt) notes.push(flagged('uncertain', 'marked as uncertain (?)'));
  return {
    kind: 'numeric',
    low,
    high,
    state: about ? 'approximate' : 'measured',
    ...(points ? { readings: settled.map((one) => one.low) } : {}),
    ...(steps.length > 0 ? { step: least(steps) } : {}),
    ...(doubted > 0 ? { certainty: lowered('certain', doubted) } : {}),
    notes: distinct(notes),
  };
}

/** Two statements of one thing in two units: the one in the attribute's unit is kept, the other checks it. */
function twoUnits(
  statements: readonly Measure[],
  attribute: AttributeDefinition,
  notes: Note[],
): readonly Measure[] | null {
  const [one, other] = statements;
  if (statements.length !== 2 || one === undefined || other === undefined) return null;
  if (one.unit === undefined || other.unit === undefined || one.unit === other.unit) return null;
  if (!comparable(one.unit, other.unit)) return null;
  const keepOther = other.unit === attribute.unit;
  const [keep, check] = keepOther ? [other, one] : [one, other];
  const [low, high] = withinStep(keep);
  const [checkLow, checkHigh] = convert(withinStep(check), check.unit ?? '', keep.unit ?? '');
  const agree = checkLow <= high && low <= checkHigh;
  const names = `${keep.unit} (kept) and ${check.unit}`;
  notes.push(
    agree
      ? readAs('two-units', `stated in ${names}; the two agree`)
      : flagged('two-units-differ', `stated in ${names}, and the two do not agree`),
  );
  return [keep];
}

/** "min. 3, max. 5" and "3; max. 5": bounds beside other values are the ends of one range. */
function bounded(statements: readonly Measure[], notes: Note[]): readonly Measure[] | null {
  const first = statements[0];
  const open = statements.filter((statement) => statement.open !== undefined);
  if (first === undefined || statements.length < 2 || open.length === 0) return null;
  const units = new Set(statements.flatMap(({ unit }) => (unit === undefined ? [] : [unit])));
  if (units.size > 1) return null;
  const ends = statements.flatMap(({ low, high }) => [low, high]).filter(Number.isFinite);
  const stated = (side: 'low' | 'high') => statements.some((statement) => statement.open !== side);
  const openSide = stated('low') && stated('high') ? undefined : first.open;
  const unit = [...units][0];
  notes.push(flagged('bound-beside', 'a bound beside a value is taken as the end of its range'));
  const { open: _, unit: __, ...rest } = first;
  return [
    {
      ...rest,
      low: openSide === 'high' ? Number.NEGATIVE_INFINITY : least(ends),
      high: openSide === 'low' ? Number.POSITIVE_INFINITY : greatest(ends),
      about: statements.some(({ about }) => about),
      step: least(statements.map(({ step }) => step)),
      ...(openSide === undefined ? {} : { open: openSide }),
      ...(unit === undefined ? {} : { unit }),
    },
  ];
}

function withinStep({ low, high, step }: Measure): [number, number] {
  const half = Number.isFinite(step) ? step / 2 : 0;
  return [Math.max(0, low - half), high + half];
}

function inAttributeUnit(
  statement: Measure,
  cellUnit: string | undefined,
  attribute: AttributeDefinition,
  context: CellContext,
  notes: Note[],
): Settled | Note {
  const from = cellUnit ?? context.unit ?? attribute.unit;
  const to = attribute.unit;
  let ends: readonly [number, number] = [statement.low, statement.high];
  const least = attribute.scale === 'ratio' ? 0 : Number.NEGATIVE_INFINITY;
  if (statement.open === 'high') ends = [Math.min(least, ends[1]), ends[1]];
  if (statement.about) ends = widened(ends, statement.step, context.circa ?? DEFAULT_CIRCA, least);
  cellUnitNotes(cellUnit, attribute, context, notes);
  if (from === undefined || to === undefined || from === to)
    return { low: ends[0], high: ends[1], step: statement.step };
  try {
    const [low, high] = convert(ends, from, to);
    if (!notes.some(({ rule }) => rule === 'unit-converted' || rule === 'count-to-spacing'))
      notes.push(convertedNote(from, to));
    return { low, high, step: convertedStep(statement, from, to) };
  } catch {
    return notUnderstood(
      'unit-mismatch',
      `"${from}" cannot be turned into "${to}"; the text is kept without a reading`,
    );
  }
}

function widened(
  ends: readonly [number, number],
  step: number,
  share: number,
  least: number,
): [number, number] {
  const by = (end: number) => (Number.isFinite(end) ? Math.max(Math.abs(end) * share, step) : 0);
  // An end at the least possible value stays there: "c. <5" is still at least 0.
  const low = ends[0] === least ? ends[0] : Math.max(least, ends[0] - by(ends[0]));
  return [low, ends[1] + by(ends[1])];
}

const CONVERTED = new Map<string, Note>();

/** One note object for each pair of units, since whole columns are converted alike. */
function convertedNote(from: string, to: string): Note {
  const key = `${from}|${to}`;
  const known = CONVERTED.get(key);
  if (known !== undefined) return known;
  const turned = (unitDimension(from) === 'count') !== (unitDimension(to) === 'count');
  const note = turned
    ? readAs('count-to-spacing', `${from} turned over into ${to}; the ends of a range change places`)
    : readAs('unit-converted', `converted from ${from} to ${to}`);
  if (CONVERTED.size < 200) CONVERTED.set(key, note);
  return note;
}

/** Printed step in the new unit; across a reciprocal, the width that one step has at this value. */
function convertedStep(statement: Measure, from: string, to: string): number {
  const turned = (unitDimension(from) === 'count') !== (unitDimension(to) === 'count');
  if (!turned) return convert([statement.step, statement.step], from, to)[0];
  const at = Number.isFinite(statement.low) && statement.low > 0 ? statement.low : statement.high;
  if (!(at - statement.step / 2 > 0) || !Number.isFinite(at)) return Number.NaN;
  const [low, high] = convert([at - statement.step / 2, at + statement.step / 2], from, to);
  return high - low;
}

function cellUnitNotes(
  cellUnit: string | undefined,
  attribute: AttributeDefinition,
  context: CellContext,
  notes: Note[],
): void {
  if (cellUnit === undefined || notes.some(({ rule }) => rule.startsWith('cell-unit'))) return;
  const header = context.unit === undefined ? undefined : (knownUnit(context.unit) ?? context.unit);
  if (header !== undefined && header !== cellUnit) {
    notes.push(flagged('cell-unit', `the cell says ${cellUnit}, the header ${header}; the cell is believed`));
  } else if (attribute.unit === undefined) {
    notes.push(flagged('cell-unit-unexpected', `the cell says ${cellUnit}, but the attribute has no unit`));
  }
}

function sizeNotes(low: number, high: number, attribute: AttributeDefinition): readonly Note[] {
  if (attribute.scale !== 'ratio') return [];
  if (low < 0) return [flagged('negative', 'a negative value of a measure that starts at 0')];
  if (low === 0 && high === 0 && startsAboveZero(attribute))
    return [flagged('zero', 'a plain 0 where the measure cannot be 0')];
  return [];
}

/** Whether 0 itself is impossible: a density or a diameter, but not a gap. */
function startsAboveZero(attribute: AttributeDefinition): boolean {
  const least = attribute.plausible?.limit?.[0];
  return least === undefined
    ? attribute.unit !== undefined && unitDimension(attribute.unit) === 'count'
    : least > 0;
}
