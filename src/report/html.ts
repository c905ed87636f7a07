import type { Answer } from '../analyses/contract.ts';
import { printBehind, printCount, printTurn } from '../analyses/phrasing.ts';
import type { Prepared } from '../study/prepare.ts';
import type { AnalysisResult, Results } from '../study/results.ts';
import { escapeHtml, figurePart, tablePart } from './html-parts.ts';
import { setAsidePart, sourcesPart } from './html-sources.ts';
import { REPORT_STYLE } from './style.ts';

export interface ReportRequest {
  readonly prepared: Prepared;
  readonly results: Results;
  /** Text of the plotting library, put into the page once. */
  readonly plotly: string;
}

/**
 * One HTML page that stands alone: every sentence, figure, table and caution of a run, what was set
 * aside and why, and the sources with their hashes. Opens without a network; texts of the sources are
 * escaped, and a content policy keeps the page from loading anything.
 */
export function renderReport({ prepared, results, plotly }: ReportRequest): string {
  const { study } = results;
  const entries = Object.entries(results.analyses);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="content-security-policy" content="default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:">
<title>${escapeHtml(study.title)}</title>
<style>${REPORT_STYLE}</style>
</head>
<body>
<header>
<p class="over">Report of a study</p>
<h1>${escapeHtml(study.title)}</h1>
<p>${printBehind(study.n, study.witness)}; one record is one ${study.unit === 'item' ? escapeHtml(study.witness.one) : 'fragment'}. Seed ${study.seed}, Thrum ${escapeHtml(study.version)}.</p>
<nav aria-label="Contents"><ol>
<li><a href="#readiness">Are the data ready?</a></li>
${entries.map(([id, result]) => `<li><a href="#${escapeHtml(id)}">${escapeHtml(`${id}: ${result.title}`)}</a></li>`).join('\n')}
<li><a href="#always">What always holds</a></li>
<li><a href="#set-aside">What was set aside</a></li>
<li><a href="#sources">Sources</a></li>
<li><a href="#minding">Minding finds, people and rights</a></li>
</ol></nav>
</header>
<main>
${readinessPart(study.readiness)}
${entries.map(([id, result]) => analysisPart(id, result, study)).join('\n')}
${alwaysPart(study.always)}
${setAsidePart(prepared, results)}
${sourcesPart(prepared, results)}
<section id="minding"><h2>Minding finds, people and rights</h2>
<ul>${study.cautions.map((caution) => `<li>${escapeHtml(caution)}</li>`).join('\n')}</ul></section>
</main>
<script>${plotly.replaceAll('</script', '<\\/script')}</script>
<script>${DRAW}</script>
</body>
</html>
`;
}

/** Whether the data are ready, before any verdict. */
function readinessPart(lines: Results['study']['readiness']): string {
  const line = ({ state, says, mend }: (typeof lines)[number]) =>
    `<li class="${state}"><strong>${STATE_WORDS[state]}</strong> ${escapeHtml(says)}${mend === undefined ? '' : ` <span class="soft">${escapeHtml(mend)}</span>`}</li>`;
  return `<section id="readiness"><h2>Are the data ready?</h2>
<ul class="readiness">${lines.map(line).join('\n')}</ul></section>`;
}

const STATE_WORDS = { ready: 'Ready.', mind: 'Mind.', ask: 'Open.' } as const;

function alwaysPart(truths: readonly string[]): string {
  if (truths.length === 0) return '';
  return `<section id="always"><h2>What always holds</h2>
<ul>${truths.map((truth) => `<li>${escapeHtml(truth)}</li>`).join('\n')}</ul></section>`;
}

function analysisPart(id: string, result: AnalysisResult, { witness }: Results['study']): string {
  const figures = Object.entries(result.figures).map(([name, figure]) => figurePart(`${id}-${name}`, figure));
  const tables = Object.values(result.tables).map((table) => tablePart(table));
  const aside = result.n.setAside.map(
    ({ reason, fragments }) => `<li>${escapeHtml(`${printCount(fragments, 'fragment')}: ${reason}`)}</li>`,
  );
  return `<section id="${escapeHtml(id)}">
<p class="over">${escapeHtml(`${id} · ${result.kind}`)}</p>
<h2>${escapeHtml(result.title)}</h2>${result.note === undefined ? '' : `<p class="note">${escapeHtml(result.note)}</p>`}
${answerPart(result.words)}
<p class="n">${escapeHtml(printBehind(result.n, witness))}.</p>
${figures.join('\n')}
${aside.length > 0 ? `<h3>Set aside here</h3><ul>${aside.join('\n')}</ul>` : ''}
${tables.join('\n')}
<details><summary>Settings</summary><pre>${escapeHtml(JSON.stringify({ kind: result.kind, ...result.options }, null, 2))}</pre></details>
</section>`;
}

/** The verdict, its evidence, what would change it, what would settle it. */
export function answerPart({ answer, because, unless, next = [] }: Answer): string {
  const list = (parts: readonly string[]) =>
    `<ul>${parts.map((part) => `<li>${escapeHtml(part)}</li>`).join('\n')}</ul>`;
  return [
    `<p class="say">${escapeHtml(answer)}</p>`,
    because.length > 0 ? `<div class="because">${list(because)}</div>` : '',
    unless.length > 0
      ? `<div class="mind"><h3>What would change this</h3>${list(unless.map(printTurn))}</div>`
      : '',
    next.length > 0 ? `<div class="next"><h3>What would settle it</h3>${list(next)}</div>` : '',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

/**
 * Draws each figure when it comes near the window, so that a long report opens at once, and all of them
 * before printing; widths follow the page. A figure is saved as SVG, sharp at any size in print.
 */
const DRAW = `
const draw = (place) => {
  if (place.dataset.drawn) return;
  place.dataset.drawn = 'yes';
  const figure = JSON.parse(document.getElementById(place.dataset.figure).textContent);
  const layout = { ...figure.layout, autosize: true };
  delete layout.width;
  Plotly.newPlot(place, figure.data, layout, {
    displaylogo: false, showSendToCloud: false, responsive: true,
    toImageButtonOptions: { format: 'svg', filename: place.dataset.figure },
  });
};
const places = [...document.querySelectorAll('[data-figure]')];
const near = new IntersectionObserver(
  (seen) => seen.filter((one) => one.isIntersecting).forEach((one) => draw(one.target)),
  { rootMargin: '800px' },
);
for (const place of places) {
  const { layout } = JSON.parse(document.getElementById(place.dataset.figure).textContent);
  place.style.minHeight = (layout.height ?? 450) + 'px';
  near.observe(place);
}
addEventListener('beforeprint', () => places.forEach(draw));
`;
