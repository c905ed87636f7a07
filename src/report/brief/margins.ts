import { printCount } from '../../analyses/phrasing.ts';
import type { StudyHead } from '../../study/results/results.ts';
import type { Study } from '../../study/schema.ts';
import { linesHigh, MM } from '../heights.ts';
import { escapeHtml } from '../html-parts.ts';
import { STATE_WORDS } from '../page/front-part.ts';

/** Pixels that readiness may take on the first sheet. */
const READINESS = 62 * MM;

interface Part {
  readonly html: string;
  readonly height: number;
}

/** Whether the data are ready: what is open or to be minded, as far as there is room. */
export function readinessLines(lines: StudyHead['readiness']): Part {
  const open = lines.filter(({ state }) => state !== 'ready');
  let height = 6 * MM;
  const shown = open.filter(({ state, says }) => {
    const own = linesHigh(`${STATE_WORDS[state]} ${says}`, 'point');
    if (height + own > READINESS) return false;
    height += own;
    return true;
  });
  const left = open.length - shown.length;
  const items = shown.map(({ state, says }) => `<li><b>${STATE_WORDS[state]}</b> ${escapeHtml(says)}</li>`);
  const said =
    open.length === 0
      ? '<p>Nothing is open.</p>'
      : `<ul>${items.join('\n')}${left > 0 ? `<li class="soft">${printCount(left, 'further point')} in the report.</li>` : ''}</ul>`;
  return {
    html: `<section class="ready"><h2>Are the data ready?</h2>${said}</section>`,
    height: height + 3 * MM,
  };
}

/** How the study is cited, its sources, and the hash of what it rests on. */
export function citePart(study: Study, head: StudyHead, hash: string): Part {
  const who = study.authors === undefined ? '' : `${study.authors.replace(/\.$/, '')}. `;
  const own = `${who}${head.title}. Results of a study computed with Thrum ${head.version}, seed ${head.seed}; results.json, SHA-256 ${hash}.`;
  const cited = study.sources.flatMap(({ citation, licence }) =>
    citation === undefined
      ? []
      : [`${citation.replace(/\.$/, '')}${licence === undefined ? '' : ` (${licence})`}.`],
  );
  const sources =
    cited.length > 0
      ? `It rests on: ${cited.slice(0, MOST_SOURCES).join(' ')}${cited.length > MOST_SOURCES ? ` And ${cited.length - MOST_SOURCES} more, named in the report.` : ''}`
      : `It rests on ${printCount(head.sources.length, 'table')}, named with their hashes in the report.`;
  return {
    html: `<section class="cite"><h2>How to cite</h2>
<p>${escapeHtml(own)}</p>
<p>${escapeHtml(sources)}</p></section>`,
    height: linesHigh(own, 'text') + linesHigh(sources, 'text') + 11 * MM,
  };
}

const MOST_SOURCES = 6;
