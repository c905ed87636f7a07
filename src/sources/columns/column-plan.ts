import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import type { ColumnRule, SourceProfile, SplitRule } from '../profile/profile.ts';
import type { ColumnStatus, Suggestion } from '../source-reading.ts';
import type { Bound } from './bound-headers.ts';
import type { ColumnEvidence } from './column-evidence.ts';

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

/** What the columns of a file are planned from. */
export interface PlanInput {
  readonly headers: readonly string[];
  /** A second wording of each header: the lower of two header rows. */
  readonly alternatives: readonly string[];
  readonly evidence: readonly ColumnEvidence[];
  readonly profile: SourceProfile;
  readonly register: Register;
  readonly file: string;
  readonly acceptSuggestions: boolean;
}
