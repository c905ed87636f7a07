import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import { CLAIM_COLUMNS, type ClaimRow, claimRow, type PrintedFigure, perUnitOf } from './claim.ts';
import type { DecimalMark } from './numbers.ts';
import { readPrinted } from './printed-text.ts';
import { readSelection, selectionText } from './select-text.ts';
import { mannersIn } from './symbols.ts';
import { methodNamed, type Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

export type Where = InputError['where'];

/** One line as a claim. @throws InputError for a cell that is not of its column. */
export function readRow(
  textOf: (column: keyof ClaimRow) => string,
  where: Where & { readonly row: number },
): ClaimRow {
  const raw = Object.fromEntries(CLAIM_COLUMNS.map((column) => [column, textOf(column)])) as Record<
    keyof ClaimRow,
    string
  >;
  const test = raw.test === '' ? '' : (methodNamed(raw.test) ?? raw.test);
  const given = {
    ...raw,
    test,
    quantity: raw.quantity.toLowerCase(),
    sided: raw.sided.toLowerCase().replace(/^(one|two)[- ]?sided$/, '$1'),
    id: raw.id === '' ? String(where.row) : raw.id,
  };
  const parsed = claimRow.safeParse(given);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  const column = String(issue.path[0]);
  throw new InputError(
    issue.code === 'invalid_value'
      ? `"${raw[column as keyof ClaimRow]}" is not known here`
      : `the cell ${issue.message}`,
    { ...where, column },
    issue.code === 'invalid_value'
      ? `use ${issue.values.filter((value) => value !== '').join(', ')}`
      : 'correct the cell',
  );
}

/** The numbers of one claim. @throws InputError for a printed text or a selection that cannot be read. */
export function figuresOf(
  claim: ClaimRow,
  where: Where,
  mark: DecimalMark,
  /** The test as the row names it: Welch's is a t of its own. */
  test = '',
): PrintedFigure[] {
  const read = readPrinted(claim.printed, claim.quantity, { mark });
  if (read === null)
    throw new InputError(
      `"${claim.printed}" cannot be read as a printed ${claim.quantity}`,
      { ...where, column: 'printed' },
      'copy the figure alone, and put words into "note"',
    );
  const { parts, unused } = read;
  const select = selectionOf(claim, 'select', where);
  const versus = selectionOf(claim, 'versus', where);
  const said = [
    ...mannersIn(`${claim.note} ${test}`),
    // What names the test is of all its figures.
    ...mannersIn(claim.printed).filter((manner) => manner === 'welch' || manner === 'variances'),
  ];
  const ofShare = claim.counted !== '' || parts.some(({ quantity }) => quantity === 'share');
  const whole = {
    select,
    versus,
    selectText: select.length > 0 ? selectionText(select) : claim.select,
    versusText: versus.length > 0 ? selectionText(versus) : claim.versus,
  };
  const recordsOf = ({ group }: TextPart) =>
    group === undefined
      ? whole
      : ofOneGroup(group, whole, parts.filter((one) => one.group !== undefined).length);
  const times = new Map<string, number>();
  return parts.map((part, i) => ({
    id: i === 0 ? claim.id : partId(claim.id, part.quantity, times),
    place: claim.place,
    quantity: part.quantity,
    // What one text prints together belongs together: "t(18) = 2.31, p = .03".
    set: claim.set === '' && parts.length > 1 ? claim.id : claim.set,
    line: claim.id,
    cell: null,
    method: part.method ?? (claim.test === '' ? null : claim.test),
    sided: claim.sided === '' ? (part.sided ?? '') : claim.sided,
    perUnit: perUnitOf(claim.step),
    attributes: claim.attribute
      .split(';')
      .map((id) => id.trim())
      .filter((id) => id !== ''),
    counted: part.quantity === 'n' && i > 0 ? [] : selectionOf(claim, 'counted', where),
    ...recordsOf(part),
    values: inParts(part, ofShare),
    vague: part.vague === true,
    stars: part.stars === true,
    manners: [...new Set([...(part.manners ?? []), ...said])],
    level: part.level ?? null,
    unused: i === 0 ? unused : [],
    printed: claim.printed,
    note: claim.note,
  }));
}

type Compared = Pick<PrintedFigure, 'select' | 'versus' | 'selectText' | 'versusText'>;

/**
 * The records of one of two groups, as a program calls it. Where neither selection names it, only its label is
 * known, and which records that means cannot be told.
 */
function ofOneGroup(
  group: string,
  { select, versus, selectText, versusText }: Compared,
  groups: number,
): Compared & Partial<PrintedFigure> {
  const alone = { versus: [], versusText: '' };
  const names = (conditions: typeof select) =>
    conditions.some((one) => one.in?.some((term) => foldText(term) === foldText(group)) === true);
  if ((group === 'x' && (groups === 1 || select.length > 0)) || names(select))
    return { select, selectText, ...alone };
  if ((group === 'y' && versus.length > 0) || names(versus))
    return { select: versus, selectText: versusText, ...alone };
  return { select: [], selectText: group, ...alone, attributes: [] };
}

/** The second number of records of a text is its n 2. */
function partId(id: string, quantity: string, times: Map<string, number>): string {
  const before = times.get(quantity) ?? 0;
  times.set(quantity, before + 1);
  return before === 0 ? `${id} (${quantity})` : `${id} (${quantity} ${before + 1})`;
}

/** A set that is a printed table names its rows by label; such a cell is no condition. */
function selectionOf(claim: ClaimRow, column: 'select' | 'versus' | 'counted', where: Where) {
  const text = claim[column];
  const label =
    claim.set !== '' && column !== 'counted' && !/[=<>≤≥;]|\s(?:in|within|known|unknown|to)\b/.test(text);
  return label ? [] : readSelection(text, { ...where, column });
}

/** Ends and differences, which are in per cent where they are of shares. */
const OF_SHARES: ReadonlySet<Quantity> = new Set<Quantity>(['low', 'high', 'difference']);
/** Numbers of records and sums of percentages stay what they are. */
const SUMMED: ReadonlySet<Quantity> = new Set<Quantity>(['n', 'count', 'total']);

/**
 * Shares, their intervals and variation are kept as parts of one: "34 %" and "34" are 0.34. A bare number that may
 * be either, such as a variation of "0.8" or "1.4", keeps its other reading. Of any other figure the sign of per
 * cent is its unit.
 */
function inParts({ quantity, values }: TextPart, ofShare: boolean): TextPart['values'] {
  const share = quantity === 'share' || quantity === 'cv' || (ofShare && OF_SHARES.has(quantity));
  if (!share) return SUMMED.has(quantity) ? values : values.map((value) => ({ ...value, percent: false }));
  return values.map((value) => {
    const { digits, decimals } = value.number;
    const size = Math.abs(Number(`${digits}e-${decimals}`));
    const perCent = { digits, decimals: decimals + 2 };
    if (value.percent) return { ...value, number: perCent };
    if (size > 1)
      return {
        ...value,
        percent: true,
        number: perCent,
        ...(quantity === 'cv' && size < 5 ? { otherwise: value.number } : {}),
      };
    return size > 0 && decimals > 0 ? { ...value, otherwise: perCent } : value;
  });
}
