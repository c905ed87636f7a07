import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results/results.ts';
import { renderBrief } from './brief.ts';
import { packageFiles } from './data-package.ts';
import { type TextContent, wholeTexts } from './file-content.ts';
import { figurePdf, figureSvg, readableAt } from './files/figure-file.ts';
import { type PageParts, renderReport } from './html.ts';
import { outlineOf } from './page/outline.ts';

/**
 * Everything that a run hands over, file name -> text: results.json, the report, the brief, the normalised table, the
 * ledger, each table of the results, and their description. The same from the terminal and the workbench.
 */
export function runFiles(prepared: Prepared, results: Results, parts: PageParts): Map<string, string> {
  return wholeTexts(runContents(prepared, results, parts));
}

/** The same for a disk: each page is made when its turn comes, and long tables piece by piece. */
export function runContents(
  prepared: Prepared,
  results: Results,
  parts: PageParts,
): Map<string, TextContent> {
  return packageFiles(prepared, results)
    .set('report.html', () => renderReport({ prepared, results, parts }))
    .set('brief.html', (before) =>
      renderBrief({ prepared, results, parts, hash: before.get('results.json')?.hash }),
    );
}

/** Every figure as SVG and PDF for print, one column and both wide, where it can be read there: file name -> text. */
export function figureFiles(results: Results): Map<string, string> {
  const files = new Map<string, string>();
  for (const { result, figure, furtherFigures } of outlineOf(results))
    for (const { figure: one, name, number } of [...(figure === null ? [] : [figure]), ...furtherFigures])
      for (const measure of readableAt(one)) {
        const path = `figures/${name}-${measure}mm`;
        const svg = figureSvg(one, measure, name);
        const pdf = figurePdf(one, measure, `Figure ${number}. ${result.title}`);
        if (svg !== null) files.set(`${path}.svg`, svg);
        if (pdf !== null) files.set(`${path}.pdf`, pdf);
      }
  return files;
}
