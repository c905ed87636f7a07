import { printCount, printSome } from '../../analyses/phrasing.ts';
import { termLabel } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import { rowOf } from '../../sources/quality/checked-row.ts';
import { fibreByMethod } from '../../sources/quality/fibre-checks.ts';
import type { Prepared } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';

/** Most methods that the line names. */
const MOST_NAMED = 4;

/** How fibres were identified, and how many are surer as written than their method can tell. */
export function identificationLine({
  fragments,
  register,
}: Pick<Prepared, 'fragments' | 'register'>): readonly ReadinessLine[] {
  const columns = ['fibre', 'fibre2'].map((id) => fragments.columns.get(id));
  const attribute = register.attributes.get('fibreMethod');
  if (attribute === undefined) return [];
  const checks = ['fibre', 'fibre2'].map(fibreByMethod);
  const lowered = new Map<string, number>();
  let recorded = 0;
  let stated = 0;
  for (let at = 0; at < fragments.rows; at++) {
    if (columns.every((column) => column === undefined || isMissing(column, at))) continue;
    recorded += 1;
    const row = rowOf(fragments, register, at);
    const method = row.term('fibreMethod');
    if (method === null) continue;
    stated += 1;
    if (!checks.some((check) => check(row) !== null)) continue;
    const label = termLabel(attribute, method, register);
    lowered.set(label, (lowered.get(label) ?? 0) + 1);
  }
  if (recorded === 0) return [];
  const topic = 'identification';
  if (stated === 0)
    return [
      {
        topic,
        state: 'mind',
        says: `How the fibre of ${printCount(recorded, 'fragment')} was identified is nowhere said; none is lowered for it.`,
        mend: 'Add a column of methods: by the naked eye no species is certain, and protein tells of no plant.',
      },
    ];
  const count = [...lowered.values()].reduce((sum, one) => sum + one, 0);
  const said = `How the fibre was identified is said of ${stated} of ${printCount(recorded, 'fragment')}`;
  if (count === 0) return [{ topic, state: stated === recorded ? 'ready' : 'mind', says: `${said}.` }];
  const ways = [...lowered].sort((a, b) => b[1] - a[1]).map(([label, n]) => `${label} ${n}`);
  return [
    {
      topic,
      state: 'mind',
      says: `${said}; ${count} are given as surer than the method can tell, and count as doubtful: ${printSome(ways, MOST_NAMED)}.`,
      mend: 'What each method can tell stands in docs/methods/identification.md; “certainty” in a condition leaves the doubtful ones out.',
    },
  ];
}
