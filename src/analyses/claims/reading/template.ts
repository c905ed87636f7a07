import { writeCsv } from '../../../sources/formats/safe-csv.ts';
import { CLAIM_COLUMNS } from './claim.ts';

/** Two samples, a test, shares and a diversity, filled in as examples (invented). */
const EXAMPLES: readonly Readonly<Record<string, string>>[] = [
  {
    id: 'c1',
    place: 'p. 12, table 2',
    quantity: 'n',
    set: 'spacing Q',
    attribute: 'rowSpacing',
    select: 'site in Quorrimel Cave',
    printed: '28',
  },
  {
    id: 'c2',
    place: 'p. 12, table 2',
    quantity: 'mean',
    set: 'spacing Q',
    step: '1',
    attribute: 'rowSpacing',
    select: 'site in Quorrimel Cave',
    printed: '5.18±1.4',
    note: 'readings in whole mm',
  },
  {
    id: 'c3',
    place: 'p. 12, table 2',
    quantity: 'range',
    set: 'spacing Q',
    attribute: 'rowSpacing',
    select: 'site in Quorrimel Cave',
    printed: '2-9',
  },
  {
    id: 'c4',
    place: 'p. 13',
    quantity: 'n',
    set: 'fibre Q',
    select: 'site in Quorrimel Cave',
    printed: '34',
  },
  {
    id: 'c5',
    place: 'p. 13',
    quantity: 'count',
    set: 'fibre Q',
    select: 'site in Quorrimel Cave',
    counted: 'fibre within treeBast',
    printed: '12 (35 %)',
  },
  {
    id: 'c6',
    place: 'p. 14',
    quantity: 'statistic',
    set: 'test 1',
    attribute: 'rowSpacing',
    select: 'site in Quorrimel Cave',
    versus: 'site in Ysketh Pans',
    printed: 't(18) = 2.31, p = .033',
    sided: 'two',
  },
  {
    id: 'c7',
    place: 'p. 15',
    quantity: 'diversity',
    test: 'shannon',
    attribute: 'structure',
    select: 'site in Ysketh Pans',
    printed: '1.24',
  },
];

/** A claims file to fill in: the header and a few invented examples. */
export function claimsTemplate(): string {
  return writeCsv([
    [...CLAIM_COLUMNS],
    ...EXAMPLES.map((example) => CLAIM_COLUMNS.map((column) => example[column] ?? '')),
  ]);
}
