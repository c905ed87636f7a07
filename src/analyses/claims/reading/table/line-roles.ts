import { type HeadReading, type Role, readHead, sizeIn } from './heads.ts';
import { isOfReadings, labelStatistic } from './label-statistic.ts';
import type { TableColumn } from './laid.ts';
import { type LineRole, lineRole } from './line-words.ts';
import { OF_TEST } from './role-kinds.ts';

/** What a head says of its column, and what "n" as a label says of its row. */

/** "n" beside "y" is a kind. */
export function letterHead(head: string, heads: readonly { readonly head: string }[]): string {
  const others = heads.filter((one) => one.head !== head);
  const letters = others.filter((one) => /^[a-z]$/.test(one.head) && readHead(one.head) === undefined).length;
  return /^n$/.test(head) && letters > 0 && letters * 2 >= others.length ? `kind ${head}` : head;
}

/** "N" among other single letters, or beside counts with per cents, is a kind and not a number of records. */
export function sized(
  line: LineRole,
  own: string,
  texts: readonly string[],
  rows: readonly { readonly own: string }[],
): LineRole {
  if (line !== 'n') return line;
  const same = /\p{Lu}/u.test(own) ? /^\p{Lu}$/u : /^\p{Ll}$/u;
  const letters = rows.filter((row) => row.own !== own && same.test(row.own)).length;
  const closes = letters > 2 && rows[rows.length - 1].own === own;
  const mixed = texts.some((text) => /\d\s*%?\s*[([]|[.,]\d{1,2}$/.test(text.trim()));
  return (/^n$/i.test(own) && letters > 0 && !closes) || mixed ? 'part' : 'n';
}

/** @param roles what columns were said to hold, by their heads. */
export function column(head: string, group: string, roles: Readonly<Record<string, Role>>): TableColumn {
  const said = roles[group === '' ? head : `${group} ${head}`] ?? roles[head];
  // What a column holds is its role; of its line only matters whether it sums.
  const sums = (text: string) => {
    const line = lineRole(text);
    return line === 'total' || line === 'subtotal' ? line : null;
  };
  const line = sums(head) ?? (group === '' ? null : sums(group)) ?? 'part';
  const size = sizeIn(head) ?? sizeIn(group);
  const own = readHead(head);
  const inLabel = labelStatistic(head);
  // "Length, mean (SD)" is a measure with its statistic; "Length" alone is no part of a sum.
  const measured = own?.role === 'not part' && inLabel !== undefined && isOfReadings(inLabel);
  const parted = own === undefined || measured ? inLabel : undefined;
  const over = labelStatistic(group);
  const read = (measured ? undefined : own) ?? parted?.reading ?? readHead(group) ?? over?.reading;
  // "F (n = 47)" and "TAU (n = 48)" are groups: no statistic has a number of records of its own.
  const reading: HeadReading =
    said !== undefined
      ? { role: said }
      : read === undefined || (size !== null && ofNoGroup(read))
        ? { role: 'unknown' as const }
        : read;
  return {
    head: group === '' ? head : head === '' ? group : `${group} ${head}`,
    own: parted !== undefined && isOfReadings(parted) ? '' : head,
    group: group === '' && parted !== undefined && isOfReadings(parted) ? parted.of : (over?.of ?? group),
    reading,
    line,
    size,
  };
}

/** Whether that is said of a comparison and never of one group alone. */
function ofNoGroup({ role }: HeadReading): boolean {
  return OF_TEST.has(role) || role === 'low' || role === 'high' || role === 'step';
}
