import { printCount, printList, printP } from '../analyses/phrasing.ts';
import type { Register } from '../attributes/definition.ts';
import type { FragmentTable } from '../fragments/table.ts';
import { likelyDuplicates } from '../sources/combine/duplicates.ts';
import type { UnknownTerm } from '../sources/names/terms.ts';
import { agreementInWords } from '../sources/quality/derived-facets.ts';
import { lookAlikeInWords } from '../sources/quality/look-alikes.ts';
import type { QualityReport } from '../sources/quality/quality.ts';
import type { SourceReading } from '../sources/source-reading.ts';
import type { Terminal } from './terminal.ts';
import { clipped, tame, wrap } from './text-table.ts';

/** Lines of one sort that are shown before the rest is only counted. */
const MOST = 6;

/** What to look at again in a table that was read: nothing in it was left out for any of this. */
export function printQuality(
  terminal: Terminal,
  quality: QualityReport,
  terms: readonly UnknownTerm[],
  reading: Pick<SourceReading, 'columns' | 'repeatedIds' | 'role'>,
  table: FragmentTable,
  register: Register,
): void {
  const name = (id: string) => register.attributes.get(id)?.label ?? id;
  const row = (at: number) => `row ${table.origin[at]?.row ?? at + 1}`;
  const duplicates = reading.role === 'fragments' ? likelyDuplicates(table) : [];
  const sorts: [heading: string, lines: string[]][] = [
    [
      'Terms that no vocabulary holds (map each once, in the profile)',
      terms.map(
        ({ attribute, text, count, suggestion }) =>
          `${name(attribute)}: "${clipped(text)}", ${printCount(count, 'cell')}${
            suggestion === undefined ? '' : `; perhaps ${suggestion.term}, ${suggestion.reason}`
          }`,
      ),
    ],
    [
      'Identifiers in several rows, which count as fragments of one item (say in the profile what they are: ' +
        '"repeatedIds": { "ids": { … } } with one-item, two-finds, first-only or last-only; or "layout": { "gather": true })',
      reading.repeatedIds
        .filter(({ decision }) => decision === null)
        .map(({ id, rows }) => `"${id}": rows ${printList(rows.map(String))}`),
    ],
    [
      'Blank cells below a name that may mean "as above" (if so, say "copyDown": true for the column in the profile)',
      reading.columns
        .filter(({ blanksBelow }) => blanksBelow !== undefined)
        .map(({ header, blanksBelow }) => `"${header}": ${printCount(blanksBelow ?? 0, 'blank cell')}`),
    ],
    [
      'Rows that may be one find written down twice (both count; say what they are under "duplicates" of a study)',
      duplicates.map(({ ids, why }) => `"${ids[0]}" and "${ids[1]}": ${why}`),
    ],
    [
      'Cells that list the sizes of several pieces, of which the largest is read (say in the profile which one: ' +
        '"pieces": "largest", "first" or "unread"; or --pieces)',
      reading.columns
        .filter(({ severalPieces }) => severalPieces !== undefined)
        .map(({ header, severalPieces }) => `"${header}": ${printCount(severalPieces ?? 0, 'cell')}`),
    ],
    [
      'Columns without a stated unit (say it in the profile: "unit")',
      reading.columns
        .filter(({ assumedUnit }) => assumedUnit !== undefined)
        .map(({ header, assumedUnit }) => `"${header}": taken as ${assumedUnit}`),
    ],
    [
      'Columns that may be in another unit',
      quality.columnSlips.map(
        ({ attribute, outside, readings, likely }) =>
          `${name(attribute)}: ${outside} of ${readings} readings are unusual; ${likely}`,
      ),
    ],
    [
      'Readings out of the usual (kept)',
      quality.outOfBounds
        .filter(({ beyond }) => beyond === 'limit')
        .map(
          (one) =>
            `${name(one.attribute)}, ${row(one.row)}: "${clipped(one.raw)}" is hardly possible${one.likely === undefined ? '' : `; ${one.likely}`}`,
        ),
    ],
    [
      'Readings that are unusual for the structure (kept)',
      quality.outOfBounds
        .filter(({ beyond, ofStructure }) => beyond === 'usual' && ofStructure)
        .map((one) => `${name(one.attribute)}, ${row(one.row)}: "${clipped(one.raw)}"`),
    ],
    [
      'Cells of one row that do not go together (kept)',
      quality.crossChecks.map(
        ({ row: at, cells, why }) =>
          `${row(at)}: ${cells.map(({ attribute, raw }) => `${name(attribute)} "${clipped(raw)}"`).join(', ')}. ${why}`,
      ),
    ],
    ['Terms that another may hide behind (kept)', quality.lookAlikes.map(lookAlikeInWords)],
    [
      'Facets recorded, and what the measurements beside them say',
      quality.derivedFacets.map((one) => `${one.label}: ${agreementInWords(one)}`),
    ],
    [
      'Fragments of one item that contradict each other',
      quality.contradictions.map(
        ({ item, attribute, says }) =>
          `${item}, ${name(attribute)}: ${says.map((text) => `"${clipped(text)}"`).join(', ')}`,
      ),
    ],
    [
      'Last digits that recorders preferred',
      quality.heaping
        .filter(({ preferred }) => preferred)
        .map(
          ({ attribute, n, zeroOrFive, p }) =>
            `${name(attribute)}: ${Math.round(100 * zeroOrFive)} % of ${n} readings end in 0 or 5 (20 % without preference), ${printP(p)}`,
        ),
    ],
    [
      'Recorders or sources that differ on one assemblage',
      quality.recorders.map(
        ({ attribute, assemblage, names, medians, pAdjusted }) =>
          `${name(attribute)}, ${assemblage}: median ${medians[0]} by ${names[0]}, ${medians[1]} by ${names[1]} (adjusted ${printP(pAdjusted)})`,
      ),
    ],
  ];
  const filled = sorts.filter(([, lines]) => lines.length > 0);
  if (filled.length === 0) return;
  terminal.out(`\n${terminal.colour.underline('To look at again')}\n`);
  for (const [heading, lines] of filled) {
    terminal.out(`${wrap(`${heading}: ${lines.length}`, terminal.width).join('\n')}\n`);
    for (const line of lines.slice(0, MOST))
      terminal.out(`${wrap(tame(`  ${line}`), terminal.width).join('\n')}\n`);
    if (lines.length > MOST) terminal.out(`  and ${lines.length - MOST} more; --json has them all.\n`);
  }
}
