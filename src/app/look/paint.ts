import { BLOCK_COLOURS, GROUND, KIND_COLOURS } from '../../analyses/shared/figure/colours.ts';

/** Hands the palette of the figures to the style sheets, so that it is written once. */
export function paint(style: CSSStyleDeclaration): void {
  const [woad, copper, moss, sky, madder, weld, heather] = KIND_COLOURS;
  const colours: Record<string, string> = {
    paper: GROUND.paper,
    'paper-deep': '#EBE2D0',
    sheet: GROUND.sheet,
    ink: GROUND.ink,
    'ink-soft': GROUND.inkSoft,
    line: GROUND.line,
    neutral: GROUND.neutral,
    // Edges of controls: 3:1 and better on both grounds (WCAG 2.2, 1.4.11).
    edge: '#85796B',
    picked: '#F6E3A1',
    'madder-deep': '#6E1A10',
    woad,
    copper,
    moss,
    sky,
    madder,
    weld,
    heather,
    structure: BLOCK_COLOURS.structure,
    spacing: BLOCK_COLOURS.spacing,
    fibre: BLOCK_COLOURS.fibre,
  };
  for (const [name, value] of Object.entries(colours)) style.setProperty(`--${name}`, value);
}
