import { printCount } from '../analyses/phrasing.ts';
import type { LedgerEntry } from '../sources/source-reading.ts';
import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results.ts';
import { escapeHtml, tablePart } from './html-parts.ts';

/** Everything that did not reach the analyses, and every kind of change that cells went through. */
export function setAsidePart(prepared: Prepared, results: Results): string {
  const rows = prepared.sources.flatMap((source) =>
    source.rowsSetAside.map(({ row, reason }) => [source.name, row, reason]),
  );
  const selection = results.study.n.setAside.map(
    ({ reason, fragments }) => `<li>${escapeHtml(`${printCount(fragments, 'fragment')}: ${reason}`)}</li>`,
  );
  const disagreements = results.study.disagreements.map(({ attribute, items }) => [attribute, items]);
  return `<section id="set-aside"><h2>What was set aside</h2>
<p>Rows in a file are rows kept and rows set aside, each with its reason. Nothing is dropped in silence.</p>
${
  rows.length === 0
    ? '<p>No row of any source was set aside.</p>'
    : tablePart({
        title: 'Rows set aside',
        columns: [
          { id: 'file', label: 'file' },
          { id: 'row', label: 'row' },
          { id: 'reason', label: 'reason' },
        ],
        rows,
      })
}
${selection.length > 0 ? `<h3>By the selection</h3><ul>${selection.join('\n')}</ul>` : ''}
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
}
${ledgerTable(prepared.ledger)}
</section>`;
}

function ledgerTable(ledger: readonly LedgerEntry[]): string {
  const groups = new Map<string, { readonly first: LedgerEntry; count: number }>();
  for (const entry of ledger) {
    const key = JSON.stringify([entry.source, entry.level, entry.rule]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { first: entry, count: 1 });
    else group.count++;
  }
  return tablePart({
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
  });
}

/** The sources with the hashes by which a reader can tell that theirs are the same. */
export function sourcesPart(prepared: Prepared, results: Results): string {
  const table = tablePart({
    title: 'Sources',
    columns: [
      { id: 'file', label: 'file' },
      { id: 'role', label: 'role' },
      { id: 'rowsRead', label: 'rows read' },
      { id: 'rowsKept', label: 'kept' },
      { id: 'rowsSetAside', label: 'set aside' },
      { id: 'sha256', label: 'SHA-256' },
    ],
    rows: results.study.sources.map(({ file, role, rowsRead, rowsKept, rowsSetAside, sha256 }) => [
      file,
      role,
      rowsRead,
      rowsKept,
      rowsSetAside,
      sha256,
    ]),
  });
  const citations = prepared.fragments.columns.get('citation')?.raw ?? [];
  const distinct = [...new Set(citations.map((text) => text.trim()).filter((text) => text !== ''))].sort();
  return `<section id="sources"><h2>Sources</h2>
${table}
${
  distinct.length === 0
    ? ''
    : `<details><summary>${printCount(distinct.length, 'citation')} in the sources</summary><ul>${distinct
        .map((text) => `<li>${escapeHtml(text)}</li>`)
        .join('\n')}</ul></details>`
}
</section>`;
}
