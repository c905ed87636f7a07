import type { ResultTable, TableCell } from '../contract.ts';
import { printCount, printLevel } from '../phrasing.ts';
import type { PlacementFound } from './found.ts';
import type { SimulatedCoverage } from './sets-found.ts';

const WHY: Readonly<Record<SimulatedCoverage['verdict'], string>> = {
  'as asked': '',
  'too few to exclude': '; labels of so few can never be excluded at this level',
  'gaps exclude less': '; comparanda with gaps exclude less than they could',
  'steps of p': '; of so few, p comes in coarse steps',
  'less than asked': '; fewer than the level says',
};

/** How often sets like these held the true label when finds were simulated. */
export function simulatedTable({ simulated }: PlacementFound): ResultTable {
  return {
    title: 'How often such sets held the true label, simulated',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'level', label: 'level' },
      { id: 'labels', label: 'labels' },
      { id: 'items', label: 'items a label' },
      { id: 'gaps', label: 'not recorded' },
      { id: 'finds', label: 'finds' },
      { id: 'least', label: 'true label in the set, least' },
      { id: 'greatest', label: 'most' },
      { id: 'verdict', label: 'beside the level' },
      { id: 'said', label: 'in words' },
    ],
    rows: simulated.map((one): TableCell[] => [
      one.attribute,
      one.level,
      one.labels,
      one.items,
      one.gaps,
      one.finds,
      one.least,
      one.greatest,
      one.verdict,
      simulatedSaid(one),
    ]),
    briefly: ['attribute', 'level', 'least', 'greatest', 'verdict'],
    note: `The simulated cells nearest to this placement in items a label and in gaps, over several likenesses of what was found together (thrum: npm run simulate -- ${simulated[0]?.simulation ?? ''}, ${simulated[0]?.date ?? ''}).`,
  };
}

function simulatedSaid({
  level,
  labels,
  items,
  sites,
  gaps,
  finds,
  least,
  greatest,
  verdict,
  date,
}: SimulatedCoverage): string {
  const percent = (share: number) => Number((100 * share).toFixed(1));
  const shares = least === greatest ? `${percent(least)} %` : `${percent(least)} to ${percent(greatest)} %`;
  const of = sites === null ? `${items} items` : printCount(sites, 'site');
  return `Simulated, ${labels} labels of ${of}${gaps === 0 ? '' : ` with ${percent(gaps)} % gaps`}: the ${printLevel(level)} set held the true label of ${shares} of ${printCount(finds, 'find')}${WHY[verdict]} (${date})`;
}
