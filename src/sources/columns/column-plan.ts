import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { ColumnRule, SplitRule } from '../profile/profile.ts';
import type { ColumnStatus, Suggestion } from '../source-reading.ts';
import type { Bound } from './bound-headers.ts';

/** What is to be done with one column of the file. */
export interface ColumnPlan {
  readonly index: number;
  readonly header: string;
  readonly status: ColumnStatus;
  readonly attribute?: AttributeDefinition;
  readonly split?: SplitRule;
  readonly bound?: Bound;
  readonly unit?: string;
  readonly via?: string;
  readonly suggestion?: Suggestion;
  readonly doubt?: string;
  readonly rule: Partial<ColumnRule>;
}
