import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results.ts';
import { dataPackage } from './data-package.ts';
import { renderReport } from './html.ts';

/**
 * Everything that a run hands over, file name -> text: results.json, the report, the normalised table, the
 * ledger, each table of the results, and their description. The same from the terminal and the workbench.
 *
 * @param plotly text of the drawing library, which the report carries along.
 */
export function runFiles(prepared: Prepared, results: Results, plotly: string): Map<string, string> {
  return dataPackage(prepared, results).set('report.html', renderReport({ prepared, results, plotly }));
}
