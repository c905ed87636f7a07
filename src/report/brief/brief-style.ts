import { GROUND } from '../../analyses/shared/figure/colours.ts';
import { FIGURE_FONT } from '../../analyses/shared/figure/style.ts';
import { SET } from '../heights.ts';

const set = (name: keyof typeof SET) => `font-size: ${SET[name].size}pt; line-height: ${SET[name].line};`;

/** The brief looks on a screen as it does on paper: two sheets. */
export const BRIEF_STYLE = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
@page { margin: 16mm 18mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; color: ${GROUND.inkSoft}; } }
body { margin: 0; background: ${GROUND.paper}; color: ${GROUND.ink}; font-family: ${FIGURE_FONT.family.replaceAll('"', "'")}; ${set('text')} }
.sheet { background: #FFFFFF; width: 210mm; max-width: 100%; margin: 8mm auto; padding: 16mm 18mm; }
h1 { ${set('title')} margin: 0 0 1.5mm; }
h2 { ${set('heading')} margin: 0 0 1mm; }
p, ul { margin: 0 0 1mm; }
ul { padding-left: 3.5mm; }
.over, .soft { color: ${GROUND.inkSoft}; }
.over { font-size: 7.5pt; }
.ready { border-top: .5pt solid ${GROUND.ink}; padding-top: 1.5mm; margin-top: 1.5mm; }
.answer { border-top: .5pt solid ${GROUND.ink}; padding-top: 1.5mm; margin-top: 2.5mm; display: grid; grid-template-columns: 84mm 84mm; gap: 0 6mm; break-inside: avoid; }
.answer h2 { grid-column: 1 / -1; }
.say { ${set('answer')} font-weight: bold; margin-bottom: 1.5mm; }
.mind { border-left: 1.5pt solid #8C2418; padding-left: 2mm; margin-top: 1.5mm; }
.mind h3 { ${set('beside')} margin: 0; }
figure { margin: 0; }
figure svg { display: block; width: 84mm; height: auto; }
.broad figure { grid-column: 1 / -1; margin-top: 1mm; }
.broad figure svg { width: 100%; }
.broad .mind { margin-top: 0; }
figcaption { ${set('caption')} }
.cite { border-top: .5pt solid ${GROUND.ink}; padding-top: 1.5mm; margin-top: 2.5mm; overflow-wrap: anywhere; }
@media (max-width: 800px) { .answer { grid-template-columns: 1fr; } .sheet { padding: 1rem; } figure svg { width: 100%; } }
@media print {
  body { background: none; }
  .sheet { width: auto; max-width: 174mm; margin: 0; padding: 0; break-after: page; }
  .sheet:last-child { break-after: auto; }
  .answer { grid-template-columns: 84mm 84mm; }
  .sheet > .answer:first-child { border-top: 0; margin-top: 0; }
}
`;
