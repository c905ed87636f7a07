import { isBlank } from './blank.ts';
import { canHold } from './can-hold.ts';
import { type Role, readHead, sizeIn } from './heads.ts';
import { isOfReadings, labelStatistic } from './label-statistic.ts';
import { kindOf, type Labelled, lineOf, unique } from './labels.ts';
import type { Layout } from './laid.ts';
import { column, letterHead, sized } from './line-roles.ts';
import { lineRole } from './line-words.ts';
import { isOfTest, isStatistic, OF_TEST } from './role-kinds.ts';

/** Heads of the columns of numbers. */
export type Heads = readonly { readonly head: string; readonly group: string }[];

/** Whether the labels name statistics of readings, more of them than the heads do. */
export function namesStatistics(rows: readonly Labelled[], heads: Heads): boolean {
  const alone = rows.filter(
    ({ own }) => !/^[^n](?:\s*[([,].*)?$/iu.test(own) && isStatistic(readHead(own)),
  ).length;
  const behind = rows.filter(({ own }) => {
    const parted = labelStatistic(own);
    return parted !== undefined && isOfReadings(parted);
  }).length;
  const headed = heads.filter(({ head }) => {
    const reading = readHead(head);
    return isStatistic(reading) && !isOfTest(reading) && !(behind > 0 && reading?.role === 'n');
  }).length;
  return (alone >= 2 || behind >= 1) && alone + behind > headed;
}

/** Statistics that stand in the first column are columns that were turned; what was a head is a sample. */
export function turnedLayout(
  rows: readonly Labelled[],
  heads: Heads,
  texts: readonly (readonly string[])[],
  corner: string,
  roles: Readonly<Record<string, Role>>,
): Layout {
  // "P", "TAU" or "F" may be a group: under them stand what groups hold.
  const fits = (head: string, at: number) => {
    const cells = texts.map((row) => row[at] ?? '').filter((cell) => !isBlank(cell));
    return sizeIn(head) === null && sizeIn(heads[at].group) === null && canHold(readHead(head), cells);
  };
  const tested = heads.some(({ head }, at) => isOfTest(readHead(head)) && fits(head, at));
  return {
    columns: rows.map(({ own, section, line }) => ({
      ...column(own, section, roles),
      ...(line === 'aside' ? { line } : {}),
    })),
    rows: unique(heads.map(({ head, group }) => (group === '' ? head : `${group}, ${head}`))).map(
      (label, i) => {
        const { head, group } = heads[i];
        const reading = readHead(head);
        const holds =
          reading !== undefined && tested && fits(head, i) && (isOfTest(reading) || OF_TEST.has(reading.role))
            ? reading
            : null;
        return {
          label,
          own: head,
          line: holds === null ? lineRole(head) : 'aside',
          holds,
          section: group,
          under: null,
          kind: '',
          size: sizeIn(head) ?? sizeIn(group),
        };
      },
    ),
    texts: heads.map((_, i) => texts.map((row) => row[i] ?? '')),
    corner,
    turned: true,
  };
}

/** Rows as rows, columns as columns. */
export function plainLayout(
  rows: readonly Labelled[],
  heads: Heads,
  texts: readonly (readonly string[])[],
  corner: string,
  roles: Readonly<Record<string, Role>>,
): Layout {
  const labels = unique(rows.map(({ own, section }) => (section === '' ? own : `${section}, ${own}`)));
  return {
    columns: heads.map(({ head, group }) => column(letterHead(head, heads), group, roles)),
    rows: rows.map(({ own, under, section, first, line }, i) => ({
      label: labels[i],
      own,
      line: line ?? (under === null ? sized(lineOf(own), own, texts[i], rows) : 'percent'),
      holds: labelStatistic(own)?.reading.role === 'share' ? { role: 'share' } : null,
      section: section === '' ? first : section,
      under,
      kind: kindOf(own),
      size: sizeIn(own),
    })),
    texts,
    corner,
    turned: false,
  };
}
