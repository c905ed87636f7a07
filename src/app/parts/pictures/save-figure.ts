import type { Figure } from '../../../analyses/contract.ts';
import { chunk, joined } from '../../../report/drawing/png.ts';
import type { FigureWidth } from '../../../report/files/measures.ts';
import { download } from '../../files.ts';
import { loadPlotly } from './plotly.ts';

export const FIGURE_FORMATS = ['svg', 'pdf', 'png'] as const;
type FigureFormat = (typeof FIGURE_FORMATS)[number];

const TYPES: Readonly<Record<FigureFormat, string>> = {
  svg: 'image/svg+xml',
  pdf: 'application/pdf',
  png: 'image/png',
};
const DOTS_PER_INCH = 300;
const MM_PER_INCH = 25.4;

/** A figure as a file: drawn as in the report, letters as outlines; PNG at 300 dots an inch. */
export async function saveFigure(
  figure: Figure,
  name: string,
  format: FigureFormat,
  measure: FigureWidth,
): Promise<void> {
  // The outlines of the letters are fetched when a figure is first saved.
  const { figurePdf, figureSvg } = await import('../../../report/files/figure-file.ts');
  const stem = `${name}.${measure}mm`;
  const svg = figureSvg(figure, measure, 'figure') ?? (await plottedSvg(figure, measure));
  const bytes =
    format === 'svg'
      ? new TextEncoder().encode(svg)
      : format === 'pdf'
        ? new TextEncoder().encode(figurePdf(figure, measure, name) ?? '')
        : await rastered(svg, measure);
  download(`${stem}.${format}`, bytes, TYPES[format]);
}

/** What is not drawn without a browser is drawn by the plotting library. */
async function plottedSvg({ data, layout }: Figure, measure: FigureWidth): Promise<string> {
  const plotly = await loadPlotly();
  const width = (measure / MM_PER_INCH) * 96;
  const address = await plotly.toImage(
    { data, layout: { ...layout, paper_bgcolor: '#FFFFFF', plot_bgcolor: '#FFFFFF' } },
    { format: 'svg', width, height: Number(layout.height ?? 400), scale: 1 },
  );
  return decodeURIComponent(address.slice(address.indexOf(',') + 1));
}

async function rastered(svg: string, measure: FigureWidth): Promise<Uint8Array> {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([svg], { type: TYPES.svg }));
  await image.decode();
  URL.revokeObjectURL(image.src);
  const canvas = document.createElement('canvas');
  canvas.width = Math.round((measure / MM_PER_INCH) * DOTS_PER_INCH);
  canvas.height = Math.round((canvas.width * image.naturalHeight) / image.naturalWidth);
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('the browser gives no canvas');
  pen.fillStyle = '#FFFFFF';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, TYPES.png));
  if (blob === null) throw new Error('the browser gives no picture');
  return withDensity(new Uint8Array(await blob.arrayBuffer()));
}

/** Signature and head of a PNG: what says how large a dot is comes after them. */
const HEAD = 33;

function withDensity(png: Uint8Array): Uint8Array {
  const size = new Uint8Array(9);
  const view = new DataView(size.buffer);
  const perMetre = Math.round(DOTS_PER_INCH / (MM_PER_INCH / 1000));
  view.setUint32(0, perMetre);
  view.setUint32(4, perMetre);
  size[8] = 1;
  return joined([png.subarray(0, HEAD), chunk('pHYs', size), png.subarray(HEAD)]);
}
