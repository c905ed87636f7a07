import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { Condensed } from '../../numerics/dissimilarity/condensed.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { adjustKnown } from '../../numerics/tests/adjust.ts';
import { testAssociation } from '../../numerics/tests/association-test.ts';
import { withoutEmptyLines } from '../../numerics/tests/contingency.ts';
import { toldAt } from '../verdicts.ts';
import type { Condition, Within } from './found.ts';
import { type Kind, withinKinds } from './within.ts';

export interface ConditionsRequest {
  /** The compared records, in the order of the matrix, and their types. */
  readonly table: FragmentTable;
  readonly matrix: Condensed;
  readonly labels: Int32Array;
  readonly register: Register;
  /** The attribute that the study names, such as preservation; recorder and source are always asked. */
  readonly within: string;
  readonly relabellings: number;
  readonly confidence: number;
  readonly random: Random;
}

interface Candidate {
  readonly attribute: string;
  readonly label: string;
  readonly kinds: readonly Kind[];
}

/**
 * What could pass for the types: who recorded, which table they come from, how they were preserved. A condition
 * that the types go with is harmless only where the types are told apart within one of its kinds alone.
 */
export function conditionsOf(request: ConditionsRequest): Condition[] {
  const { labels, confidence, random } = request;
  const candidates = candidatesOf(request);
  const tests = candidates.map(({ attribute, kinds }) => {
    const types = [...new Set(labels)];
    const counts = types.map((type) =>
      kinds.map(({ rows }) => rows.filter((row) => labels[row] === type).length),
    );
    return testAssociation(withoutEmptyLines(counts).table, random.stream(`${attribute} and types`)).p;
  });
  const adjusted = adjustKnown(tests, 'holm');
  return candidates.map(({ attribute, label, kinds }, place) => {
    const within = withinKinds(kinds, request.matrix, labels, {
      ...request,
      random: random.stream(attribute),
    });
    const of = (told: Within['told']) => within.filter((one) => one.told === told).map(({ kind }) => kind);
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
}

/** Those that are recorded with two kinds or more. */
function candidatesOf({ table, register, within }: ConditionsRequest): Candidate[] {
  const ids = [...new Set([within, 'recorder'])];
  const recorded = ids.flatMap((attribute): Candidate[] => {
    const kinds = kindsOf(table, attribute, register);
    const label = register.attributes.get(attribute)?.label ?? 'Assemblage';
    return kinds.length < 2 ? [] : [{ attribute, label, kinds }];
  });
  const sources = table.sources.map((kind, source) => ({
    kind,
    rows: table.origin.flatMap((origin, row) => (origin.source === source ? [row] : [])),
  }));
  const used = sources.filter(({ rows }) => rows.length > 0);
  return used.length < 2 ? recorded : [...recorded, { attribute: 'source', label: 'Source', kinds: used }];
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
