import { FIGURE_FONT, GROUND } from '../analyses/figure-style.ts';

/** The report's look, from the same values as figures and workbench (docs/look.md). */
export const REPORT_STYLE = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 2rem 1rem 4rem; max-width: 62rem; background: ${GROUND.paper}; color: ${GROUND.ink};
  font: 1rem/1.5 ${FIGURE_FONT.family.replaceAll('"', "'")}; }
h1 { font-size: 1.9rem; line-height: 1.2; margin: 0 0 .5rem; }
h2 { font-size: 1.35rem; margin: 0 0 .5rem; }
h3 { font-size: 1rem; margin: 1rem 0 .25rem; }
.over, .n, .note { color: ${GROUND.inkSoft}; font-size: .875rem; }
.over { margin: 0; }
.say { font-size: 1.125rem; max-width: 46rem; }
section { background: ${GROUND.sheet}; border-top: 2px solid ${GROUND.ink}; padding: 1.25rem; margin: 2rem 0; }
.mind { border-left: 4px solid #8C2418; padding: .1rem 1rem; margin: 1rem 0; }
figure { margin: 1.25rem 0; }
figcaption { font-size: .875rem; max-width: 46rem; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; font-size: .875rem; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: bold; padding: .5rem 0; }
th, td { padding: .2rem .6rem; border-bottom: 1px solid ${GROUND.line}; text-align: left; vertical-align: top; }
td.number, th.number { text-align: right; }
td.number, td.short { white-space: nowrap; }
thead th { border-bottom: 1px solid ${GROUND.ink}; vertical-align: bottom; }
code, pre { font-size: .8125rem; overflow-wrap: anywhere; white-space: pre-wrap; }
a { color: #1E2C5C; }
:focus-visible { outline: 3px solid #1E2C5C; outline-offset: 2px; }
details { margin: .75rem 0; }
summary { cursor: pointer; }
@media print { body { background: none; } section { break-inside: auto; } figure, tr { break-inside: avoid; } }
`;
