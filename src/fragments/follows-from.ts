import type { AttributeDefinition } from '../attributes/definition.ts';
import { isMissing } from './missing.ts';
import type { FragmentTable } from './table.ts';

const COUNTS = ['density1', 'rowSpacing'] as const;

/**
 * What each computed attribute follows from: each list is one way, and all of it is needed. Row spacing stands for
 * density2, its inverse. The ways are those of derive.ts; that a value was computed without one of them being known
 * cannot be, so that a value without any was recorded.
 */
const WAYS: Readonly<Record<string, readonly (readonly string[])[]>> = {
  rowGap: [['rowSpacing', 'rowWidth']],
  gapRatio: [
    ['rowSpacing', 'rowWidth'],
    ['rowGap', 'rowWidth'],
  ],
  denser: [COUNTS],
  sparser: [COUNTS],
  balance: [COUNTS],
  logBalance: [COUNTS, ['balance']],
  balanceEither: [COUNTS],
  cover1: [['diameter1', 'density1']],
  cover2: [
    ['rowWidth', 'rowSpacing'],
    ['diameter2', 'rowSpacing'],
  ],
  openness: [['cover1', 'cover2']],
  bindingPoints: [COUNTS],
  threadLength: [COUNTS],
  ...Object.fromEntries(
    ['1', '2'].flatMap((system) => [
      [`turnsPerMetre${system}`, [[`twistAngle${system}`, `diameter${system}`]]],
      [`linearDensity${system}`, [[`diameter${system}`]]],
      [`angleClass${system}`, [[`twistAngle${system}`]]],
    ]),
  ),
};

/**
 * The ways in which an attribute follows from others, by their ids: only what is recorded itself. An attribute that
 * follows from computed ones follows from what these follow from too.
 *
 * @param spacing the one of row spacing and density2 that stands for both.
 */
export function waysTo(id: string, spacing: 'rowSpacing' | 'density2'): readonly (readonly string[])[] {
  const direct = WAYS[id] ?? [];
  const deeper = direct.flatMap((way) =>
    way.reduce<readonly (readonly string[])[]>(
      (lists, input) => {
        const ways = WAYS[input] ?? [];
        const choices = [[input], ...ways];
        return lists.flatMap((list) => choices.map((choice) => [...list, ...choice]));
      },
      [[]],
    ),
  );
  return [
    ...new Set(
      deeper.map((way) => [...new Set(way)].map((one) => (one === 'rowSpacing' ? spacing : one)).join()),
    ),
  ].map((way) => way.split(','));
}

/** Whether some record has this computed attribute and not what it follows from, so that it says something of its own. */
export function isRecordedItself(attribute: AttributeDefinition, table: FragmentTable): boolean {
  const has = (id: string, row: number) => {
    const column = table.columns.get(id);
    return column !== undefined && column.kind !== 'text' && !isMissing(column, row);
  };
  // Of one find one of the two may be known where nothing tells that rows are a thing of its structure.
  const ways = [...waysTo(attribute.id, 'rowSpacing'), ...waysTo(attribute.id, 'density2')];
  for (let row = 0; row < table.rows; row++)
    if (has(attribute.id, row) && !ways.some((way) => way.every((input) => has(input, row)))) return true;
  return false;
}

/** The attributes of a table that a formula of ours could have filled, and of which some record has a value of its own. */
export function recordedItself(table: FragmentTable): readonly string[] {
  return [...table.columns].flatMap(([id, { attribute, kind }]) =>
    attribute.derived && !attribute.composed && kind !== 'text' && isRecordedItself(attribute, table)
      ? [id]
      : [],
  );
}
