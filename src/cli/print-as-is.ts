import { printCount } from '../analyses/phrasing.ts';
import { OWN_SORTS, type OwnSort, type Proposal } from '../sources/columns/propose-attributes.ts';
import type { Terminal } from './terminal.ts';
import { tame, textTable, wrap } from './text-table.ts';

const SORT_NAMES: Readonly<Record<OwnSort, string>> = {
  numbers: 'numbers',
  kinds: 'kinds',
  'yes-no': 'yes or no',
  text: 'text, kept and not compared',
};

/** Columns of one sort that are shown before the rest is only counted. */
const MOST = 8;

/** What was made of the columns that nothing claimed, by sort, each with three of its cells. */
export function printAsIs({ out, colour, width }: Terminal, proposals: readonly Proposal[]): void {
  if (proposals.length === 0) return;
  out(`\n${colour.underline('Taken as they are')}\n`);
  for (const sort of OWN_SORTS) {
    const own = proposals.filter((one) => one.sort === sort);
    if (own.length === 0) continue;
    out(`${wrap(`${printCount(own.length, 'column')} of ${SORT_NAMES[sort]}`, width).join('\n')}\n`);
    out(
      textTable(
        [
          { head: 'column', align: 'left' },
          { head: 'for example', align: 'left' },
        ],
        own.slice(0, MOST).map(({ header, examples }) => [header, examples.map(tame).join(' · ')]),
        width,
      ),
    );
    if (own.length > MOST) out(`and ${own.length - MOST} more; --json has them all.\n`);
  }
  out(
    `${wrap('To read one otherwise, change its attribute in the study ("scale") or its rule in the profile.', width).join('\n')}\n`,
  );
}
