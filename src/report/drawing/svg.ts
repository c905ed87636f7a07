import type { Drawing, Mark, Pen, TextMark } from './marks.ts';
import { point, short } from './marks.ts';
import { dataAddress, pngOf } from './png.ts';

export interface SvgRequest {
  /** Starts every id in the drawing, so that several stand on one page. */
  readonly id: string;
  /** What the figure shows, for those who do not see it. */
  readonly label: string;
  /** Writes a text as letters; as elements of SVG text where left out. */
  readonly letters?: (mark: TextMark) => string;
  /** Places in tenths of a pixel, 0.03 mm, as a page of many figures has them; in hundredths where left out. */
  readonly tenths?: boolean;
}

/** A drawing as one svg element that names its own size and needs nothing from outside. */
export function svgOf(
  { width, height, marks }: Drawing,
  { id, label, letters = textElement, tenths = false }: SvgRequest,
): string {
  const clips: string[] = [];
  const write = (mark: Mark): string => {
    if ('clip' in mark) {
      const name = `${id}-c${clips.length}`;
      const { x, y, width: w, height: h } = mark.clip;
      clips.push(
        `<clipPath id="${name}"><rect x="${short(x)}" y="${short(y)}" width="${short(w)}" height="${short(h)}"/></clipPath>`,
      );
      return `<g clip-path="url(#${name})">${writeAll(mark.marks)}</g>`;
    }
    if ('text' in mark) return mark.text === '' ? '' : letters(mark);
    if ('dots' in mark) {
      const box = `x="${short(mark.x)}" y="${short(mark.y)}" width="${short(mark.width)}" height="${short(mark.height)}"`;
      return `<image ${box} preserveAspectRatio="none" style="image-rendering:pixelated" href="${dataAddress(pngOf(mark.dots))}"/>`;
    }
    return penned(mark, style(mark));
  };
  const writeAll = (some: readonly Mark[]) =>
    byPen(some)
      .map(({ pen, marks: run }) =>
        pen === null || run.length === 1
          ? run.map(write).join('')
          : (dotted(run) ?? `<g${pen}>${run.map((mark) => penned(mark, '')).join('')}</g>`),
      )
      .join('');
  const body = tenths ? inTenths(writeAll(marks)) : writeAll(marks);
  const defs = clips.length === 0 ? '' : `<defs>${clips.join('')}</defs>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${short(width)} ${short(height)}" width="${short(width)}" height="${short(height)}" role="img" aria-label="${escaped(label)}" font-family="${FAMILY}">` +
    `${defs}${body}</svg>`
  );
}

/** Attributes that hold places, never the texts: a quotation mark in those is written otherwise. */
const PLACES = / (?:d|x|y|cx|cy)="[^"]*"/g;

function inTenths(body: string): string {
  return body.replace(PLACES, (places) =>
    places.replace(/\d+\.\d\d/g, (value) => String(Math.round(Number(value) * 10) / 10)),
  );
}

export const FAMILY =
  "'Atkinson Hyperlegible Next', 'Atkinson Hyperlegible Next Variable', 'Helvetica Neue', Arial, sans-serif";

/** Neighbours that are drawn with one pen, so that it is written down once. */
function byPen(
  marks: readonly Mark[],
): readonly { readonly pen: string | null; readonly marks: readonly Mark[] }[] {
  const runs: { pen: string | null; marks: Mark[] }[] = [];
  for (const mark of marks) {
    const pen = 'path' in mark || 'circle' in mark ? style(mark) : null;
    const last = runs.at(-1);
    if (last !== undefined && pen !== null && last.pen === pen) last.marks.push(mark);
    else runs.push({ pen, marks: [mark] });
  }
  return runs;
}

/** Points of one size and colour without an edge as one path of round ends, a third as long; nothing for any others. */
function dotted(run: readonly Mark[]): string | null {
  const [first] = run;
  if (!('circle' in first) || first.stroke !== undefined || first.opacity !== undefined) return null;
  const r = first.circle[2];
  let path = '';
  for (const mark of run) {
    if (!('circle' in mark) || mark.circle[2] !== r) return null;
    path += `M${point(mark.circle[0], mark.circle[1])}h0`;
  }
  return `<path d="${path}" fill="none" stroke="${first.fill}" stroke-width="${short(2 * r)}" stroke-linecap="round"/>`;
}

function penned(mark: Mark, pen: string): string {
  if ('circle' in mark) {
    const [x, y, r] = mark.circle;
    return `<circle cx="${short(x)}" cy="${short(y)}" r="${short(r)}"${pen}/>`;
  }
  return 'path' in mark && mark.path !== '' ? `<path d="${mark.path}"${pen}/>` : '';
}

function style(mark: Pen): string {
  const parts = [` fill="${mark.fill ?? 'none'}"`];
  if (mark.stroke !== undefined)
    parts.push(` stroke="${mark.stroke}"`, ` stroke-width="${short(mark.width ?? 1)}"`);
  if (mark.dash !== undefined) parts.push(` stroke-dasharray="${mark.dash.map(short).join(' ')}"`);
  if (mark.opacity !== undefined) {
    if (mark.fill !== undefined) parts.push(` fill-opacity="${short(mark.opacity)}"`);
    if (mark.stroke !== undefined) parts.push(` stroke-opacity="${short(mark.opacity)}"`);
  }
  return parts.join('');
}

export function textElement({ text, x, y, size, anchor, fill, bold, halo, turn }: TextMark): string {
  const attributes = [
    ` x="${short(x)}" y="${short(y)}" font-size="${short(size)}" fill="${fill}"`,
    anchor === 'start' ? '' : ` text-anchor="${anchor}"`,
    bold === true ? ' font-weight="700"' : '',
    halo === undefined
      ? ''
      : ` stroke="${halo}" stroke-width="2.5" stroke-linejoin="round" paint-order="stroke"`,
    turn === undefined ? '' : ` transform="rotate(${short(turn)} ${point(x, y)})"`,
  ];
  return `<text${attributes.join('')}>${escaped(text)}</text>`;
}

/** Text for XML; what XML cannot hold at all is left out. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
