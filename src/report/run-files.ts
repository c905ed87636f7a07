import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results.ts';
import { renderBrief } from './brief.ts';
import { dataPackage } from './data-package.ts';
import { type PageParts, renderReport } from './html.ts';

/**
 * Everything that a run hands over, file name -> text: results.json, the report, the brief, the normalised table, the
 * ledger, each table of the results, and their description. The same from the terminal and the workbench.
 */
export function runFiles(prepared: Prepared, results: Results, parts: PageParts): Map<string, string> {
  return dataPackage(prepared, results)
    .set('report.html', renderReport({ prepared, results, parts }))
    .set('brief.html', renderBrief({ prepared, results, parts }));
}
