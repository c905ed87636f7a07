import { printCount, printList, printSome } from '../../analyses/phrasing.ts';
import { leastItems } from '../../fragments/items/least.ts';
import { witnessCandidates } from '../../sources/names/witness-candidates.ts';
import { impossibleObjects } from '../otherwise/restarting-numbers.ts';
import type { Prepared } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';
import { MOST_NAMED } from './rows.ts';

export function witnessLines(prepared: Prepared): readonly ReadinessLine[] {
  return [witnessLine(prepared), ...impossibleLine(prepared)];
}

/** Confirmed objects whose fragments cannot be of one: numbers that restart where nobody has said so. */
function impossibleLine(prepared: Prepared): readonly ReadinessLine[] {
  const found = impossibleObjects(prepared);
  if (found === null) return [];
  const { one, many } = prepared.witness;
  return [
    {
      topic: 'witness',
      state: 'ask',
      says: `Of ${printCount(found.of, one, many)} of several fragments ${found.objects} cannot each be one: their fragments differ in ${printList(found.in)}, as if numbers restarted. Where a verdict turns with that, its answer says so.`,
      mend: 'Name the column within which the numbers restart as the context, or confirm another column ("witness" in the study, or on Sources).',
    },
  ];
}

function witnessLine(prepared: Prepared): ReadinessLine {
  const { witness, fragments, suggestedItem, register, n } = prepared;
  const counted = printCount(fragments.rows, 'fragment');
  if (witness.status === 'confirmed')
    return {
      topic: 'witness',
      state: 'ready',
      says: `${counted} of ${printCount(n.items, witness.one, witness.many)}, as confirmed.`,
    };
  const least = `They are of at least ${printCount(leastItems(fragments, register), 'object')}: so many contradict one another, within source, site, phase and context, in structure, fibre or readings a fifth apart.`;
  if (witness.status === 'absent')
    return {
      topic: 'witness',
      state: 'mind',
      says: `${counted}; no column names the object that a fragment is of, so each counts as a find of its own. ${least}`,
      mend: `Name the column that does, or say that each row is one.${likeliest(prepared)}`,
    };
  const objects = new Set(suggestedItem).size;
  return {
    topic: 'witness',
    state: 'ask',
    says: `${counted}; numbers in the tables seem to name ${printCount(objects, 'object')}, but nobody has said so, and each fragment counts. ${least}`,
    mend: `Say which column names the object ("witness" in the study, or on Sources).${likeliest(prepared)}`,
  };
}

/** The columns that may name the object, one of each source. */
function likeliest({ sources, register }: Prepared): string {
  const named = sources.flatMap((reading) => {
    const [first] = witnessCandidates(reading, register);
    return first === undefined ? [] : [`“${first.header}” of ${reading.name}`];
  });
  return named.length === 0 ? '' : ` Likeliest: ${printSome(named, MOST_NAMED)}.`;
}
