import type { Register } from '../../attributes/definition.ts';
import {
  type RecordsCondition as SharedCondition,
  conditionsOf as sharedConditions,
} from '../../fragments/conditions.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { testAssociation } from '../../numerics/tests/association-test.ts';
import { withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import { toldAt } from '../verdicts.ts';
import type { RivalCondition, Within } from './apart-found.ts';
import { type Kind, withinKinds } from './within.ts';

export interface ConditionsRequest {
  /** The compared records, in the order of the matrix, and their types. */
  readonly table: FragmentTable;
  readonly matrix: Condensed;
  readonly labels: Int32Array;
  readonly register: Register;
  /** The attribute that the study names, such as preservation, besides those that are always looked at. */
  readonly within: string;
  /** Attributes that define the types, or that they are compared in: no conditions. */
  readonly about: readonly string[];
  readonly relabellings: number;
  readonly confidence: number;
  readonly random: Random;
}

interface Candidate {
  readonly attribute: string;
  readonly label: string;
  readonly state: SharedCondition['state'];
  readonly kinds: readonly Kind[];
}

/**
 * What could pass for the types: who recorded, which table they come from, how they were recovered and preserved, of
 * which structure and period they are. A condition
 * that the types go with is harmless only where the types are told apart within one of its kinds alone.
 */
export function conditionsOf(request: ConditionsRequest): RivalCondition[] {
  const { labels, confidence, random } = request;
  const candidates = candidatesOf(request);
  const looked = candidates.filter(({ state }) => state === 'looked at');
  const tests = looked.map(({ attribute, kinds }) => {
    const types = [...new Set(labels)];
    const counts = types.map((type) =>
      kinds.map(({ rows }) => rows.filter((row) => labels[row] === type).length),
    );
    return testAssociation(withoutEmptyLines(counts).table, random.stream(`${attribute} and types`)).p;
  });
  const adjusted = adjustKnown(tests, 'holm');
  const unseen = candidates.flatMap(({ attribute, label, state }): RivalCondition[] =>
    state === 'unknown' || state === 'scarce'
      ? [{ attribute, label, p: { why: WHY[state] }, verdict: state, holds: [], fails: [], untested: [] }]
      : [],
  );
  const seen = looked.map(({ attribute, label, kinds }, place): RivalCondition => {
    const within = withinKinds(kinds, request.matrix, labels, {
      ...request,
      random: random.stream(attribute),
    });
    const of = (told: Within['told']) =>
      within.filter((one) => one.told === told).map(({ kind }) => (kind.includes(',') ? `“${kind}”` : kind));
    const [holds, fails, untested] = [of('told apart'), of('not told apart'), of('cannot be told')];
    const goes = toldAt(adjusted[place], confidence) === 'told apart';
    return {
      attribute,
      label,
      p: adjusted[place],
      verdict: !goes
        ? 'does not go with them'
        : holds.length > 0
          ? 'holds within it'
          : fails.length > 0
            ? 'not told within it'
            : 'may explain them',
      holds,
      fails,
      untested,
    };
  });
  return [...seen, ...unseen];
}

const WHY = { unknown: 'not recorded', scarce: 'known of less than half' } as const;

/** The conditions that are looked at wherever labels are compared, and the attribute that the study names. */
function candidatesOf({ table, register, within, about }: ConditionsRequest): Candidate[] {
  const all = Array.from({ length: table.rows }, (_, row) => row);
  const across = table.columns.has('site') ? 'site' : null;
  const shared = sharedConditions(table, all, about, across, register).map(
    ({ id, label, state, kinds, of }): Candidate => ({
      attribute: id,
      label,
      state,
      kinds: kinds.map((kind, code) => ({ kind, rows: all.filter((row) => of[row] === code) })),
    }),
  );
  if (about.includes(within) || shared.some(({ attribute }) => attribute === within)) return shared;
  const kinds = kindsOf(table, within, register);
  const label = register.attributes.get(within)?.label ?? 'Assemblage';
  return kinds.length < 2 ? shared : [{ attribute: within, label, state: 'looked at', kinds }, ...shared];
}

/** The kinds of an attribute with the rows of each; none where it is not recorded or a number. */
export function kindsOf(table: FragmentTable, attribute: string, register: Register): Kind[] {
  const column = table.columns.get(attribute);
  if (column?.kind === 'numeric' || (column === undefined && attribute !== 'assemblage')) return [];
  if (column?.kind === 'text') {
    const texts = column.raw.map((text) => text.trim());
    return [...new Set(texts)]
      .filter((text) => text !== '')
      .map((kind) => ({ kind, rows: texts.flatMap((text, row) => (text === kind ? [row] : [])) }));
  }
  return groupRows(table, [attribute], register).groups.map(({ labels: [kind], rows }) => ({ kind, rows }));
}
