import { InputError } from '../../errors.ts';
import { type ConditionAnswer, conditionAnswer } from '../../fragments/select-answer.ts';
import { describeCondition } from '../../fragments/select-condition.ts';
import { viewRows } from '../../fragments/subset.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { sampleRows } from '../../numerics/grouping/sampled-medoids.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Axes } from './found.ts';
import type { OrdinationOptions } from './options.ts';

/** Which records make the axes, and which are only placed on them. */
export interface ActiveAndPassive {
  /** Rows in the table of records. */
  readonly active: readonly number[];
  readonly passive: readonly number[];
  /** Rows about which a condition cannot be answered: they neither make axes nor are placed. */
  readonly undecided: Axes['setAside'];
  /** The active records alone; the table itself where all are active. */
  readonly table: FragmentTable;
  /** Said where chance decided which make the axes; "" where nothing was drawn. */
  readonly drawn: string;
}

/** Said of the records that are placed, wherever those that make the axes are counted. */
export const NO_SAY = 'supplementary: placed on the axes without a say in them';

/**
 * Parts the records by the conditions of `supplementaryRecords`, all of which a supplementary record must meet.
 * One that certainly fails any of them makes the axes. Without conditions all do; where every pair is compared, of very
 * many records some that are drawn by chance, and the others are placed.
 *
 * @throws InputError for conditions that cannot be answered, that no record meets or that leave none, and
 * in correspondence analysis
 */
export function splitRecords(input: AnalysisInput, options: OrdinationOptions): ActiveAndPassive {
  const { records } = input;
  const all = Array.from({ length: records.rows }, (_, row) => row);
  if (options.supplementaryRecords.length === 0) return drawnOf(all, input, options);
  if (options.method === 'ca') {
    throw fault(
      'in correspondence analysis rows and columns of the table are supplementary, not records',
      'name labels under "supplementary", or choose another method',
    );
  }
  const answer = answerAll(input, options);
  const rowsThat = (given: ConditionAnswer) => all.filter((row) => answer(row) === given);
  const [active, passive] = [rowsThat('out'), rowsThat('in')];
  const asked = options.supplementaryRecords.map(describeCondition).join(' and ');
  if (passive.length === 0) {
    throw fault(`no ${input.unit} certainly meets ${asked}`, 'change the conditions, or leave them out');
  }
  if (active.length === 0) {
    throw fault(`no ${input.unit} is left to make the axes but those where ${asked}`, 'ask for fewer');
  }
  const undecided = (['not recorded', 'cannot say'] as const).flatMap((given) => {
    const rows = rowsThat(given);
    const reason =
      given === 'cannot say'
        ? `cannot say whether supplementary: ${asked}`
        : `not recorded whether supplementary: ${asked}`;
    return rows.length > 0 ? [{ reason, rows }] : [];
  });
  return { active, passive, undecided, table: viewRows(records, active), drawn: '' };
}

/** Said of records that are not on the map at all, of very many. */
export const NOT_PLACED = 'neither drawn to make the axes nor to be placed on them';

/** Records of which every pair is compared at most. */
const MOST_COMPARED = 2000;
/** Records that are placed on the axes at most: more would be one black cloud, and each is compared with all that make them. */
const MOST_PLACED = 10_000;

/** All records, or of very many those that the axes can be made from where every pair is compared. */
function drawnOf(
  all: readonly number[],
  { records, random }: AnalysisInput,
  { method }: OrdinationOptions,
): ActiveAndPassive {
  if (method !== 'pcoa' || all.length <= MOST_COMPARED)
    return { active: all, passive: [], undecided: [], table: records, drawn: '' };
  const active = Array.from(sampleRows(all.length, MOST_COMPARED, random.stream('drawn records')));
  const taken = new Set(active);
  const others = all.filter((row) => !taken.has(row));
  const placed =
    others.length <= MOST_PLACED
      ? others
      : Array.from(
          sampleRows(others.length, MOST_PLACED, random.stream('placed records')),
          (at) => others[at],
        );
  const onMap = new Set(placed);
  const left = others.filter((row) => !onMap.has(row));
  const rest = left.length === 0 ? 'the others' : `${placed.length} others`;
  return {
    active,
    passive: placed,
    undecided: left.length === 0 ? [] : [{ reason: NOT_PLACED, rows: left }],
    table: viewRows(records, active),
    drawn: `Every pair is compared, so that ${active.length} of ${all.length} records, drawn by chance, make the axes and ${rest} are placed on them.`,
  };
}

function answerAll(input: AnalysisInput, options: OrdinationOptions): (row: number) => ConditionAnswer {
  try {
    const answers = options.supplementaryRecords.map((one) =>
      conditionAnswer(one, input.records, input.register),
    );
    return (row) => {
      const given = answers.map((one) => one(row));
      const order: readonly ConditionAnswer[] = ['out', 'not recorded', 'cannot say'];
      return order.find((one) => given.includes(one)) ?? 'in';
    };
  } catch (error) {
    throw error instanceof InputError ? fault(error.what, error.mend) : error;
  }
}

function fault(what: string, mend: string): InputError {
  return new InputError(what, { path: 'supplementaryRecords' }, mend);
}
