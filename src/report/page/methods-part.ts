import { printCount } from '../../analyses/phrasing.ts';
import type { Results } from '../../study/results/results.ts';
import { escapeHtml } from '../html-parts.ts';
import { REFERENCES } from '../methods/references.ts';
import { methodsSaid } from '../methods/said.ts';

/** How it was computed, fit for a chapter on methods, and the works that it leans on. */
export function methodsPart({ study, analyses }: Results): string {
  const { sentences, cited } = methodsSaid(Object.values(analyses));
  const one = study.unit === 'item' ? study.witness.one : 'fragment';
  const head = `Computed with Thrum ${study.version} from ${printCount(study.sources.length, 'table')}; one record is one ${one}, so that ${study.unit === 'item' ? 'fragments of one count together' : 'each fragment counts for itself'}. All chance comes from the seed ${study.seed}: the same study and tables give the same numbers.`;
  return `<section id="methods"><h2>Methods</h2>
<div class="methods">${[head, ...sentences].map((said) => `<p>${escapeHtml(said)}</p>`).join('\n')}</div>
${
  cited.length === 0
    ? ''
    : `<h3>References</h3>
<ul class="references">${cited.map((name) => `<li>${escapeHtml(REFERENCES[name] ?? name)}</li>`).join('\n')}</ul>`
}
</section>`;
}
