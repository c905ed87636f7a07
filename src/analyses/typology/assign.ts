import type { Register } from '../../attributes/definition.ts';
import { InputError } from '../../errors.ts';
import { selectRows } from '../../fragments/select.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type Assignment, NO_TYPE } from './found.ts';
import { type RuleAnswer, ruleAnswer, type Typology } from './rules.ts';

/**
 * Which type is each record of? A record is undecided when a missing or straddling reading could
 * change the answer: under `first`, when an earlier type than the one it fits cannot be ruled out.
 *
 * @throws InputError naming the file and the type for an unknown attribute or term.
 */
export function assignTypes(
  table: FragmentTable,
  typology: Typology,
  register: Register,
  file: string,
): Assignment {
  const population = placed(file, 'among', () => selectRows(table, typology.among, register));
  const rules = typology.types.map(({ id, when }) =>
    placed(file, `types.${id}`, () => ruleAnswer(when, table, register)),
  );
  const overlaps = new Map<string, { first: number; second: number; records: number }>();
  const type = new Int32Array(population.rows.length);
  const blame: (string | null)[] = [];
  population.rows.forEach((row, place) => {
    const answers = rules.map((rule) => rule(row));
    countOverlaps(answers, overlaps);
    const { found, undecided } = decide(answers, typology.several);
    type[place] = found;
    blame.push(undecided);
  });
  return {
    rows: population.rows,
    type,
    blame,
    setAside: population.setAside,
    overlaps: [...overlaps.values()],
  };
}

/** Faults of a condition say in which file and type they stand. */
function placed<T>(file: string, path: string, make: () => T): T {
  try {
    return make();
  } catch (fault) {
    throw fault instanceof InputError ? new InputError(fault.what, { file, path }, fault.mend) : fault;
  }
}

function decide(
  answers: readonly RuleAnswer[],
  several: Typology['several'],
): { found: number; undecided: string | null } {
  const fits = answers.flatMap(({ answer }, place) => (answer === 'in' ? [place] : []));
  const open = answers.flatMap(({ answer }, place) => (answer === 'cannot say' ? [place] : []));
  const blamed = open.find((place) => several === 'undecided' || fits.length === 0 || place < fits[0]);
  if (blamed !== undefined) return { found: NO_TYPE.undecided, undecided: answers[blamed].blame };
  if (fits.length === 0) return { found: NO_TYPE.none, undecided: null };
  if (fits.length > 1 && several === 'undecided') return { found: NO_TYPE.several, undecided: null };
  return { found: fits[0], undecided: null };
}

function countOverlaps(
  answers: readonly RuleAnswer[],
  into: Map<string, { first: number; second: number; records: number }>,
): void {
  for (let first = 0; first < answers.length; first++)
    for (let second = first + 1; second < answers.length; second++) {
      if (answers[first].answer !== 'in' || answers[second].answer !== 'in') continue;
      const pair = into.get(`${first} ${second}`) ?? { first, second, records: 0 };
      pair.records++;
      into.set(`${first} ${second}`, pair);
    }
}
