import { GROUND } from '../analyses/shared/figure/colours.ts';
import { FIGURE_FONT } from '../analyses/shared/figure/style.ts';

/** Columns of a page that takes A4 and Letter alike: figures stand in one of them or across both. */
const COLUMN = { one: '84mm', two: '174mm' } as const;

/** The report's look on a screen, from the same values as figures and workbench (docs/look.md). */
const SCREEN = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 2rem 1rem 4rem; max-width: 62rem; background: ${GROUND.paper}; color: ${GROUND.ink};
  font: 1rem/1.5 ${FIGURE_FONT.family.replaceAll('"', "'")}; }
h1 { font-size: 1.9rem; line-height: 1.2; margin: 0 0 .5rem; }
h2 { font-size: 1.35rem; line-height: 1.25; margin: 0 0 .5rem; }
h3 { font-size: 1rem; margin: .75rem 0 .25rem; }
ul, ol { margin: .25rem 0; padding-left: 1.25rem; }
.over, .n, .note, .cited, .soft { color: ${GROUND.inkSoft}; font-size: .875rem; }
.over { margin: 0; }
.count { color: ${GROUND.inkSoft}; }
.say { font-size: 1.125rem; max-width: 46rem; margin: .25rem 0 .75rem; }
section { background: ${GROUND.sheet}; border-top: 2px solid ${GROUND.ink}; padding: 1.25rem; margin: 2rem 0; }
.mind { border-left: 4px solid #8C2418; padding: .1rem 1rem; margin: .75rem 0; }
figure { margin: 1rem 0; }
figcaption { font-size: .875rem; max-width: 46rem; margin-top: .25rem; }
.drawn { background: #FFFFFF; border: 1px solid ${GROUND.line}; }
.drawn > svg { display: block; width: 100%; height: auto; }
.beside, .further { display: grid; grid-template-columns: 1fr; gap: 0 1.5rem; }
@media (min-width: 56rem) {
  .beside { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  .beside > figure { order: 1; }
  .further { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  .further > figure:not(.half), .further > .live { grid-column: 1 / -1; }
}
.table { overflow-x: auto; margin: .75rem 0; }
table { border-collapse: collapse; font-size: .875rem; font-variant-numeric: tabular-nums; margin-bottom: .5rem; }
caption { text-align: left; padding: .5rem 0 .25rem; }
th, td { padding: .2rem .45rem; border-bottom: 1px solid ${GROUND.line}; text-align: right; vertical-align: top; white-space: nowrap; }
th { font-weight: bold; line-height: 1.2; white-space: normal; }
.t, .long { text-align: left; }
.long { white-space: normal; }
thead th { border-bottom: 1px solid ${GROUND.ink}; vertical-align: bottom; }
code, pre { font-size: .8125rem; overflow-wrap: anywhere; white-space: pre-wrap; }
.hash { font-size: .75rem; overflow-wrap: anywhere; color: ${GROUND.inkSoft}; }
sup { line-height: 0; }
a { color: #1E2C5C; }
button { font: inherit; font-size: .875rem; padding: .15rem .6rem; margin: .35rem 0 0; border: 1px solid ${GROUND.ink}; background: none; color: inherit; cursor: pointer; }
:focus-visible { outline: 3px solid #1E2C5C; outline-offset: 2px; }
details { margin: .4rem 0; }
summary { cursor: pointer; }
.readiness { list-style: none; padding: 0; }
.readiness li { margin: .15rem 0; }
.lists { columns: 20rem 2; column-gap: 2rem; font-size: .875rem; list-style: none; padding: 0; }
.lists li { break-inside: avoid; margin: .1rem 0; }
.running { font-size: .875rem; margin: .25rem 0; }
.running ul, .running li { display: inline; padding: 0; }
.running li:not(:last-child)::after { content: "; "; }
.methods p { margin: .4rem 0; }
`;

/**
 * On paper: white, small type, figures in one column or two, nothing wider than the page. What is folded away on the
 * screen stays away, and its file is named.
 */
const PRINT = `
@page { margin: 11mm 18mm 13mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; color: ${GROUND.inkSoft}; } }
@media print {
  body { background: none; padding: 0; max-width: ${COLUMN.two}; font-size: 8.5pt; line-height: 1.35; }
  h1 { font-size: 17pt; }
  h2 { font-size: 11.5pt; margin: 0 0 1.5mm; break-after: avoid; }
  h3 { font-size: 8.5pt; margin: 1.5mm 0 .5mm; break-after: avoid; }
  .say { font-size: 9.5pt; margin: .5mm 0 1.5mm; break-after: avoid; }
  .over, .n, .note, .cited, .soft, figcaption { font-size: 7.5pt; }
  .lists, .running { font-size: 7pt; line-height: 1.2; margin: .4mm 0; }
  .n, .cited { margin: 1mm 0; }
  ul, ol { padding-left: 3.5mm; margin: .5mm 0; }
  section { background: none; padding: 1.5mm 0 0; margin: 3.5mm 0 0; border-top: .5pt solid ${GROUND.ink}; }
  .mind { border-left-width: 1.5pt; padding: 0 0 0 2mm; margin: 1.5mm 0; }
  .told { line-height: 1.25; }
  figure { margin: 1mm 0; break-inside: avoid; }
  figcaption { margin-top: .5mm; line-height: 1.25; }
  .drawn { border: 0; }
  .beside { display: block; }
  .beside > figure { float: right; width: ${COLUMN.one}; margin: 0 0 1.5mm 5mm; }
  .whole { break-inside: avoid; }
  .cited { break-before: avoid; }
  .beside::after { content: ""; display: block; clear: both; }
  .further { grid-template-columns: ${COLUMN.one} ${COLUMN.one}; gap: 0 6mm; }
  .further > figure:not(.half) { grid-column: 1 / -1; }
  figure:not(.half) .drawn { max-width: ${COLUMN.two}; }
  .table { overflow: visible; margin: 1mm 0; }
  table { font-size: 7.5pt; line-height: 1.2; max-width: 100%; }
  caption { padding: 1mm 0 .5mm; break-after: avoid; }
  th, td { padding: .4mm 1.4mm; border-bottom-width: .25pt; }
  tr, .readiness li { break-inside: avoid; }
  thead { display: table-header-group; }
  .hash { font-size: 6.5pt; }
  .lists { columns: 3; column-gap: 5mm; line-height: 1.2; }
  .methods, #always ul, #minding ul { columns: 2; column-gap: 6mm; font-size: 7.5pt; line-height: 1.25; }
  .references { font-size: 7.5pt; columns: 2; column-gap: 6mm; }
  .methods p { margin: 0 0 1mm; }
  .aside { display: flex; flex-wrap: wrap; gap: 0 6mm; align-items: flex-start; }
  .aside > .table { max-width: ${COLUMN.one}; }
  a { color: inherit; text-decoration: none; }
  button, .settings, details:not([open]) { display: none; }
  summary { list-style: none; font-weight: bold; }
}
`;

export const REPORT_STYLE = `${SCREEN}${PRINT}`;

/** A title at the foot of every printed page, beside its number. */
export function runningFoot(title: string): string {
  const text = title.replace(/[\\"<>\n\r]/g, ' ');
  return `@page { @bottom-left { content: "${text}"; font: 8pt sans-serif; color: ${GROUND.inkSoft}; } }`;
}

/** The typeface of figures and text, carried in the page. */
export function fontFace(font: string): string {
  return `@font-face { font-family: 'Atkinson Hyperlegible Next'; font-weight: 200 800; src: url(data:font/woff2;base64,${font}) format('woff2'); }`;
}
