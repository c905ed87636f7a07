import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Figure } from '../../../src/analyses/contract.ts';
import { SEQUENTIAL } from '../../../src/analyses/shared/figure/colours.ts';
import { kindBar, kindMarker, kindStyle } from '../../../src/analyses/shared/figure/kinds.ts';
import { axis, figureLayout } from '../../../src/analyses/shared/figure/style.ts';
import { figureDrawing, figurePdf, figureSvg } from '../../../src/report/files/figure-file.ts';
import { measuresOf } from '../../../src/report/files/measures.ts';

const folder = mkdtempSync(join(tmpdir(), 'thrum-figures-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A tool that reads the format by its published rules; `undefined` where it is not installed. */
function tool(name: string, args: readonly string[]): string | undefined {
  try {
    return execFileSync(name, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw fault;
  }
}

const figures: Readonly<Record<string, Figure>> = {
  points: {
    data: [
      {
        type: 'scatter',
        mode: 'markers+text',
        x: [1, 2, 3],
        y: [1, 4, 2],
        text: ['Ørsel & Åby <1>', 'a “b”', 'Θήρα'],
        marker: { ...kindMarker(kindStyle(1)), opacity: 0.5 },
      },
    ],
    layout: figureLayout({ x: axis('length (mm)'), y: axis('width (mm)') }),
    caption: 'Lengths & widths of 3 finds, “as drawn”.',
  },
  bars: {
    data: [{ type: 'bar', name: 'tabby', x: ['a', 'b'], y: [3, 5], marker: kindBar(kindStyle(2)) }],
    layout: figureLayout({ x: axis('site', { tickangle: -35 }), y: axis('n'), legend: 'kind' }),
    caption: 'Bars.',
  },
  matrix: {
    data: [
      {
        type: 'heatmap',
        z: Array.from({ length: 90 }, (_, i) => Array.from({ length: 90 }, (__, j) => Math.abs(i - j))),
        colorscale: SEQUENTIAL.map((stop) => [...stop]),
      },
    ],
    layout: figureLayout({ x: axis('record'), y: axis('record') }),
    caption: 'All against all.',
  },
};
const cases = Object.keys(figures).flatMap((name) =>
  measuresOf(figures[name]).map((measure) => ({ name, measure })),
);

describe('a figure as a file for print', () => {
  it.each(cases)('$name is an SVG that xmllint reads, $measure mm wide', ({ name, measure }) => {
    const svg = figureSvg(figures[name], measure, name) ?? '';
    const path = join(folder, `${name}-${measure}.svg`);
    writeFileSync(path, svg);
    tool('xmllint', ['--noout', path]);
    expect(svg).toMatch(new RegExp(`<svg[^>]* width="${measure}mm" height="[\\d.]+mm"`));
    expect(svg).not.toMatch(/href="(?!data:)|url\((?!#)|<script|<style/);
  });

  it.each(cases)('$name is a PDF of one page of $measure mm, with its caption', ({ name, measure }) => {
    const pdf = figurePdf(figures[name], measure, name) ?? '';
    expect(pdf).toMatch(/^%PDF-1\.4[\s\S]*%%EOF\n$/);
    expect(/^[\t\n\x20-\x7e]*$/.test(pdf)).toBe(true);
    const path = join(folder, `${name}-${measure}.pdf`);
    writeFileSync(path, pdf);
    const said = tool('pdfinfo', [path]);
    if (said === undefined) return;
    expect(said).toMatch(/Pages:\s+1\n/);
    const points = Number(said.match(/Page size:\s+([\d.]+) x/)?.[1]);
    expect(points).toBeCloseTo((measure / 25.4) * 72, 0);
    expect(said).toContain(figures[name].caption);
    expect(tool('pdffonts', [path])?.trim().split('\n') ?? []).toHaveLength(2);
    // A page that a reader of PDF cannot draw makes it complain on its second channel and fail.
    const drawn = tool('pdftoppm', ['-r', '50', '-gray', path]);
    expect(drawn === undefined || drawn.startsWith('P5')).toBe(true);
  });

  it('is white to its edges and holds no text but that of other scripts', () => {
    const [ground] = figureDrawing(figures.points, 174)?.marks ?? [];
    expect(ground).toMatchObject({ fill: '#FFFFFF' });
    const svg = figureSvg(figures.points, 174, 'points') ?? '';
    expect([...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text)).toEqual(['Θήρα']);
    expect(figureSvg(figures.bars, 174, 'bars')).not.toContain('<text');
  });

  it('leaves what is not drawn without a browser to the workbench', () => {
    const odd: Figure = { data: [{ type: 'surface', z: [[1]] }], layout: {}, caption: 'Odd.' };
    expect(figureSvg(odd, 174, 'odd')).toBeNull();
    expect(figurePdf(odd, 84, 'odd')).toBeNull();
  });
});
