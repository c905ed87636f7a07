import type { Register } from '../../../attributes/definition.ts';
import { conditionsOf, type RecordsCondition } from '../../../fragments/conditions.ts';
import type { FragmentTable } from '../../../fragments/table.ts';
import type { Random } from '../../../numerics/foundation/random.ts';
import { adjustKnown } from '../../../numerics/tests/adjust.ts';
import type { Unavailable } from '../../contract.ts';
import { toldAt } from '../../verdicts.ts';
import { associationWith } from './association.ts';

/**
 * For answers that describe and test no difference: which conditions go with the groups that they set side by side, so
 * that what differs between these may be a difference of the condition. Nothing is compared within it.
 */
export interface Beside {
  /** Label of what forms the groups. */
  readonly by: string;
  readonly going: readonly GoesWith[];
  /** Conditions that could not be looked at: not recorded, and known of less than half. */
  readonly unknown: readonly Named[];
  readonly scarce: readonly Named[];
}

type Named = Pick<RecordsCondition, 'id' | 'label'>;

export interface GoesWith extends Named {
  /** By Holm over the conditions looked at. */
  readonly p: number | Unavailable;
  /** Cramér's V, bias-corrected. */
  readonly v: number | Unavailable;
  /** Whether it parts the records nearly as the groups do. */
  readonly nearlyOne: boolean;
}

/** Cramér's V from which on groups and condition hardly differ. */
const NEARLY_ONE = 0.8;

export interface BesideRequest {
  readonly records: FragmentTable;
  readonly register: Register;
  /** Label of what forms the groups. */
  readonly by: string;
  /** Rows of each group. */
  readonly groups: readonly (readonly number[])[];
  /** Attributes that the question is about, and the one across which structure is counted at one level. */
  readonly about: readonly string[];
  readonly across: string | null;
  /** Which of the conditions are looked at; all if left out. */
  readonly which?: (condition: RecordsCondition) => boolean;
  readonly confidence: number;
  readonly random: Random;
}

export function conditionsBeside(request: BesideRequest): Beside {
  const { records, register, by, groups, about, across, confidence, random } = request;
  const { which = () => true } = request;
  const rows = groups.flat();
  const labelled = {
    labels: Int32Array.from(groups.flatMap((own, group) => own.map(() => group))),
    labelCount: groups.length,
    items: rows.map((row) => records.item[row]),
    random,
  };
  const conditions = conditionsOf(records, rows, about, across, register).filter(which);
  const looked = conditions.filter(({ state }) => state === 'looked at');
  const tests = looked.map((condition) => associationWith(labelled, condition));
  const adjusted = adjustKnown(
    tests.map(({ p }) => p),
    'holm',
  );
  const inState = (state: RecordsCondition['state']) =>
    conditions.flatMap(({ id, label, state: own }) => (own === state ? [{ id, label }] : []));
  return {
    by,
    going: looked.flatMap(({ id, label }, at) => {
      const { v } = tests[at];
      return toldAt(adjusted[at], confidence) === 'told apart'
        ? [{ id, label, p: adjusted[at], v, nearlyOne: typeof v === 'number' && v >= NEARLY_ONE }]
        : [];
    }),
    unknown: inState('unknown'),
    scarce: inState('scarce'),
  };
}
