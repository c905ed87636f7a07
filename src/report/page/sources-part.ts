import { printCount } from '../../analyses/phrasing.ts';
import { nameIn } from '../../sources/reading/assemble.ts';
import type { LedgerEntry } from '../../sources/source-reading.ts';
import type { Prepared } from '../../study/prepare.ts';
import type { Results } from '../../study/results/results.ts';
import { escapeHtml } from '../html-parts.ts';
import { tablePart } from './table-part.ts';

/** Everything that did not reach the analyses, and every kind of change that cells went through. */
export function setAsidePart(prepared: Prepared, results: Results): string {
  const rows = prepared.sources.flatMap((source) =>
    source.rowsSetAside.map(({ row, reason }) => [source.name, row, reason]),
  );
  const selection = results.study.n.setAside.map(
    ({ reason, fragments }) => `<li>${escapeHtml(`${printCount(fragments, 'fragment')}: ${reason}`)}</li>`,
  );
  const disagreements = results.study.disagreements.map(({ label, items }) => [label, items]);
  return `<section id="set-aside"><h2>What was set aside</h2>
<p>Rows in a file are rows kept and rows set aside, each with its reason. Nothing is dropped in silence.</p>
${selection.length > 0 ? `<h3>By the selection</h3><ul>${selection.join('\n')}</ul>` : ''}
<div class="aside">${
    rows.length === 0
      ? '<p>No row of any source was set aside.</p>'
      : tablePart(
          {
            title: 'Rows set aside',
            columns: [
              { id: 'file', label: 'file' },
              { id: 'row', label: 'row' },
              { id: 'reason', label: 'reason' },
            ],
            rows,
          },
          { file: 'ledger.csv' },
        )
  }
${
  disagreements.length === 0
    ? ''
    : tablePart({
        title: 'Items whose fragments contradict each other',
        columns: [
          { id: 'attribute', label: 'attribute' },
          { id: 'items', label: 'items' },
        ],
        rows: disagreements,
        note: 'Such an item takes the median of its numbers, the lowest common parent of its terms, or nothing.',
      })
}</div>
<p>${printCount(prepared.ledger.length, 'cell was', 'cells were')} changed, flagged or not understood; each stands in ledger.csv with its reason.</p>
${ledgerTable(prepared.ledger)}
</section>`;
}

function ledgerTable(ledger: readonly LedgerEntry[]): string {
  const groups = new Map<string, { readonly first: LedgerEntry; count: number }>();
  for (const entry of ledger) {
    // Neither a level nor a rule holds a line end: each key is of one source, level and rule.
    const key = `${entry.level}\n${entry.rule}\n${entry.source}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { first: entry, count: 1 });
    else group.count++;
  }
  const table = {
    title: 'How cells were read, by source and rule',
    columns: [
      { id: 'source', label: 'source' },
      { id: 'level', label: 'level' },
      { id: 'rule', label: 'rule' },
      { id: 'n', label: 'cells' },
      { id: 'row', label: 'first in row' },
      { id: 'raw', label: 'first text' },
      { id: 'readAs', label: 'read as' },
      { id: 'why', label: 'why' },
    ],
    rows: [...groups.values()].map(({ first, count }) => [
      first.source,
      first.level.replace('-', ' '),
      first.rule,
      count,
      first.row,
      first.raw,
      first.readAs,
      first.why,
    ]),
    note: 'Every single entry stands in ledger.csv.',
  };
  return `<details><summary>${table.title} (${printCount(groups.size, 'line')}; every entry in ledger.csv)</summary>${tablePart(table)}</details>`;
}

/** The sources: how each is cited, under which licence, who recorded, and the hash by which a reader can tell that theirs is the same. */
export function sourcesPart(prepared: Prepared, results: Results): string {
  const said = prepared.study.sources;
  const lines = results.study.sources.map((head, place): string => {
    const { citation, licence } = said[place] ?? {};
    const cited = [...(citation === undefined ? [] : [citation]), ...wordsOf(prepared, 'citation', place)];
    const recorders = wordsOf(prepared, 'recorder', place);
    const rows = `${head.role === 'fragments' ? 'Finds' : 'Assemblages'}: ${printCount(head.rowsRead, 'row')} read, ${head.rowsKept} kept, ${head.rowsSetAside} set aside.`;
    const parts = [
      rows,
      cited.length === 0 ? 'No citation is given.' : `Cited as: ${few(cited)}`,
      licence === undefined ? 'No licence is given.' : `Licence: ${sentence(licence)}`,
      recorders.length === 0 ? 'Who recorded is not given.' : `Recorded by ${few(recorders)}`,
    ];
    return `<li><b>${escapeHtml(head.file)}.</b> ${escapeHtml(parts.join(' '))} <span class="hash">SHA-256 ${head.sha256}</span></li>`;
  });
  return `<section id="sources"><h2>Sources</h2>
<ul>${lines.join('\n')}</ul>
</section>`;
}

/** Most citations or recorders of one source that are named. */
const MOST_NAMED = 5;

function few(names: readonly string[]): string {
  const more = names.length - MOST_NAMED;
  const shown = names.slice(0, MOST_NAMED).join('; ');
  return sentence(more > 0 ? `${shown}; and ${more} more in fragments.csv` : shown);
}

function sentence(text: string): string {
  return text.endsWith('.') ? text : `${text}.`;
}

/** Distinct texts of a column in the rows that come from one source, as far as they may be shown. */
function wordsOf({ fragments, sources }: Prepared, id: string, source: number): readonly string[] {
  const column = fragments.columns.get(id);
  if (column === undefined) return [];
  // A table that was written normalised holds rows of several.
  const own: readonly (string | undefined)[] = sources[source]?.table.sources ?? [];
  const words = fragments.origin.flatMap((origin, row) =>
    own.includes(fragments.sources[origin.source])
      ? [(id === 'recorder' ? nameIn(column, row) : (column.raw[row] ?? '')).trim()]
      : [],
  );
  return [...new Set(words.filter((word) => word !== ''))].sort();
}
