import { type ClaimsFound, type JudgedFigure, VERDICTS } from '../analyses/claims/found.ts';
import { placeAndText } from '../analyses/claims/place-words.ts';
import { claimsTables } from '../analyses/claims/tables.ts';
import { claimsWords } from '../analyses/claims/words.ts';
import { printCount, printList, printTurn } from '../analyses/phrasing.ts';
import { escapeHtml } from './html-parts.ts';
import { tablePart } from './page/table-part.ts';
import { REPORT_STYLE } from './style.ts';

/** One HTML page that stands alone: every printed figure with its verdict, its working folded beneath it. */
export function renderClaimsPage(found: ClaimsFound, title: string): string {
  const { answer, because, unless, next = [] } = claimsWords(found);
  const { digits } = claimsTables(found);
  const names = new Map(found.judged.map(({ figure }) => [figure.id, placeAndText(figure)]));
  const sections = VERDICTS.map((verdict) => ({
    verdict,
    entries: found.judged.filter((one) => one.verdict === verdict),
  }))
    .filter(({ entries }) => entries.length > 0)
    .sort((a, b) => ORDER.indexOf(a.verdict) - ORDER.indexOf(b.verdict));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="content-security-policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escapeHtml(title)}</title>
<style>${REPORT_STYLE}${STYLE}</style>
</head>
<body>
<header>
<p class="over">Printed figures</p>
<h1>${escapeHtml(title)}</h1>
${
  found.paper === ''
    ? ''
    : `<p>${escapeHtml(found.paper)}</p>
`
}<p class="say">${escapeHtml(answer)}</p>
<nav aria-label="Contents"><ol>
${sections.map(({ verdict, entries }) => `<li><a href="#${anchor(verdict)}">${verdict}: ${entries.length}</a></li>`).join('\n')}
</ol></nav>
${listPart('Because', because)}${listPart('Unless', unless.map(printTurn))}${listPart('To settle it', next)}
</header>
<main>
${sections
  .map(
    ({ verdict, entries }) =>
      `<section id="${anchor(verdict)}"><h2>${verdict} (${printCount(entries.length, 'figure')})</h2>
${entries.map((one) => entryPart(one, names)).join('\n')}
</section>`,
  )
  .join('\n')}
${digits === undefined ? '' : `<section>${tablePart(digits)}</section>`}
${found.unread.length === 0 ? '' : `<section><h2>Not read</h2><ul>${found.unread.map((text) => `<li>${escapeHtml(text)}</li>`).join('')}</ul></section>`}
</main>
</body>
</html>
`;
}

function listPart(head: string, lines: readonly string[]): string {
  if (lines.length === 0) return '';
  return `<div class="mind"><h2>${head}</h2><ul>${lines.map((line) => `<li>${escapeHtml(line)}</li>`).join('\n')}</ul></div>`;
}

const ORDER = ['cannot be', 'differs', 'agrees only if rounded', 'cannot be checked', 'agrees'];

const STYLE = `
.claim { border-bottom: 1px solid #DDD2BF; padding: .5rem 0; }
.claim summary { display: block; }
.claim summary::before { content: "+ "; font-weight: bold; }
.claim[open] summary::before { content: "− "; }
.claim q { font-weight: bold; }
.claim dl { display: grid; grid-template-columns: max-content 1fr; gap: .15rem 1rem; margin: .5rem 0; font-size: .9375rem; }
.claim dt { color: #655A4F; }
.claim dd { margin: 0; }
@media print { .claim > *:not(summary) { display: block; } }
`;

function anchor(verdict: string): string {
  return verdict.replaceAll(' ', '-');
}

function entryPart(
  { figure, verdict, says, why, explained, resolve, checks }: JudgedFigure,
  names: ReadonlyMap<string, string>,
): string {
  const open = verdict === 'cannot be' || verdict === 'differs' ? ' open' : '';
  const where = figure.place === '' && figure.cell !== null ? figure.id : figure.place;
  const place = where === '' ? '' : `${escapeHtml(where)}: `;
  const lines: readonly (readonly [string, string])[] = [
    ['why', why],
    ['would be explained by', explained],
    ['to settle it', resolve],
    ['note', figure.note],
  ];
  const told = lines.filter(([, text]) => text !== '');
  const working = checks.map(
    (check) =>
      `<dt>${escapeHtml(check.name)}</dt><dd>${escapeHtml(
        `${check.outcome === 'agrees only if rounded' ? `${check.outcome} ${check.rounded ?? ''}` : check.outcome}: ${check.working}`,
      )}${check.with.length === 0 ? '' : ` <span class="note">(rests on ${escapeHtml(restsOn(check.with.map((id) => names.get(id) ?? id)))})</span>`}</dd>`,
  );
  return `<details class="claim"${open}>
<summary>${place}${escapeHtml(figure.quantity)} <q>${escapeHtml(figure.printed)}</q> – ${escapeHtml(says)}</summary>
<dl>${told.map(([name, text]) => `<dt>${name}</dt><dd>${escapeHtml(text)}</dd>`).join('')}</dl>
${working.length === 0 ? '' : `<h3>Working</h3><dl>${working.join('')}</dl>`}
</details>`;
}

const MOST_NAMED = 12;

function restsOn(ids: readonly string[]): string {
  const shown = ids.slice(0, MOST_NAMED);
  return printList(ids.length > MOST_NAMED ? [...shown, `${ids.length - MOST_NAMED} more`] : shown);
}
