import type { ConditionId } from '../../../fragments/conditions.ts';
import { inSentence, printList } from '../../phrasing.ts';
import type { LookedAt } from './found.ts';

/** How a condition is called in a sentence. */

/** "among finds …" that share the condition. */
const SHARING: Readonly<Record<ConditionId, string>> = {
  recorder: 'of one recorder',
  source: 'of one source',
  recovery: 'recovered alike',
  preservation: 'preserved alike',
  structure: 'of one structure',
  period: 'of one period',
  size: 'of like size',
};

/** "a difference …" that the labels may stand for. */
const DIFFERENCE: Readonly<Record<ConditionId, string>> = {
  recorder: 'between recorders',
  source: 'between sources',
  recovery: 'of recovery',
  preservation: 'of preservation',
  structure: 'of structure',
  period: 'of period',
  size: 'of size',
};

const isUsual = (id: string): id is ConditionId => id in SHARING;

export type Condition = Pick<LookedAt, 'id' | 'label'>;

/** A number of the study's own is shared by finds that are alike in it. */
export const sharing = ({ id, label }: Condition) =>
  isUsual(id) ? SHARING[id] : `alike in ${inSentence(label)}`;
export const difference = ({ id, label }: Condition) =>
  isUsual(id) ? DIFFERENCE[id] : `of ${inSentence(label)}`;

/** "recorder, recovery and period". */
export const labelsIn = (conditions: readonly Pick<LookedAt, 'label'>[]) =>
  printList(conditions.map(({ label }) => inSentence(label)));

/** Whether it is one of who wrote the finds down. */
export const recording = ({ id }: Pick<LookedAt, 'id'>) => id === 'recorder' || id === 'source';
