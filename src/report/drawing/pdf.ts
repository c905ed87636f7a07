import { strToU8, zlibSync } from 'fflate';
import {
  circlePath,
  type Drawing,
  type ImageMark,
  type Mark,
  type Pen,
  short,
  type TextMark,
} from './marks.ts';
import { boldPen, outlinePath } from './outlined.ts';

/** A drawing as a page of PDF (ISO 32000-1) of its own size: paths and outlined letters, no typeface, ASCII throughout. */
export interface PdfRequest {
  readonly title: string;
  /** Said in the document's description: the caption. */
  readonly subject: string;
}

/** Points of a CSS pixel. */
const POINT = 0.75;

export function pdfOf({ width, height, marks }: Drawing, { title, subject }: PdfRequest): string {
  const images: string[] = [];
  const opacities: number[] = [];
  const content = writeAll(marks, { images, opacities });
  const page = `${short(POINT)} 0 0 ${short(-POINT)} 0 ${short(height * POINT)} cm\n${content}`;
  const first = 6;
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${short(width * POINT)} ${short(height * POINT)}] /Contents 4 0 R /Resources << ` +
      `/ExtGState << ${opacities.map((opacity, i) => `/G${i} << /ca ${short(opacity)} /CA ${short(opacity)} >>`).join(' ')} >> ` +
      `/XObject << ${images.map((_, i) => `/I${i} ${first + i} 0 R`).join(' ')} >> >> >>`,
    stream('', page),
    `<< /Title ${textString(title)} /Subject ${textString(subject)} >>`,
    ...images,
  ];
  let text = '%PDF-1.4\n';
  const starts = objects.map((object, i) => {
    const start = text.length;
    text += `${i + 1} 0 obj\n${object}\nendobj\n`;
    return start;
  });
  const table = starts.map((start) => `${String(start).padStart(10, '0')} 00000 n \n`).join('');
  return (
    `${text}xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${table}` +
    `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R /Info 5 0 R >>\nstartxref\n${text.length}\n%%EOF\n`
  );
}

/** A stream packed and written in hexadecimal digits, so that the whole file is plain text. */
function stream(entries: string, content: string | Uint8Array): string {
  const bytes = zlibSync(typeof content === 'string' ? strToU8(content) : content, { level: 9 });
  const digits = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  const lines = `${digits}>`.replace(/.{120}/g, '$&\n');
  return `<< ${entries}/Filter [/ASCIIHexDecode /FlateDecode] /Length ${lines.length} >>\nstream\n${lines}\nendstream`;
}

/** Text of the document's description, in UTF-16 with its mark. */
function textString(text: string): string {
  const units = Array.from({ length: text.length }, (_, i) =>
    text.charCodeAt(i).toString(16).padStart(4, '0'),
  );
  return `<feff${units.join('')}>`;
}

interface Kept {
  readonly images: string[];
  readonly opacities: number[];
}

function writeAll(marks: readonly Mark[], kept: Kept): string {
  return marks.map((mark) => write(mark, kept)).join('');
}

function write(mark: Mark, kept: Kept): string {
  if ('clip' in mark) {
    const { x, y, width, height } = mark.clip;
    return `q ${[x, y, width, height].map(short).join(' ')} re W n\n${writeAll(mark.marks, kept)}Q\n`;
  }
  if ('text' in mark) return letters(mark, kept);
  if ('dots' in mark) return imageOf(mark, kept);
  const path = 'circle' in mark ? circlePath(...mark.circle) : mark.path;
  return path === '' ? '' : painted(commands(path), mark, kept);
}

function letters(mark: TextMark, kept: Kept): string {
  const path = commands(outlinePath(mark));
  if (path === '') return '';
  const pen = boldPen(mark);
  return (
    (mark.halo === undefined ? '' : painted(path, { stroke: mark.halo, width: 2.5 }, kept, '1 j ')) +
    painted(path, pen === 0 ? { fill: mark.fill } : { fill: mark.fill, stroke: mark.fill, width: pen }, kept)
  );
}

function painted(path: string, pen: Pen, { opacities }: Kept, before = ''): string {
  const { width = 1, dash, opacity } = pen;
  const [fill, stroke] = [pen.fill, pen.stroke].map((own) => (own === 'none' ? undefined : own));
  if (fill === undefined && stroke === undefined) return '';
  let state = before;
  if (opacity !== undefined && opacity < 1) {
    const known = opacities.indexOf(opacity);
    state += `/G${known < 0 ? opacities.push(opacity) - 1 : known} gs `;
  }
  if (fill !== undefined) state += `${colour(fill)} rg `;
  if (stroke !== undefined) state += `${colour(stroke)} RG ${short(width)} w `;
  if (dash !== undefined) state += `[${dash.map(short).join(' ')}] 0 d `;
  return `q ${state}${path} ${fill === undefined ? 'S' : stroke === undefined ? 'f' : 'B'} Q\n`;
}

/** "#rrggbb" as three shares. */
function colour(text: string): string {
  return [1, 3, 5].map((at) => short3(Number.parseInt(text.slice(at, at + 2), 16) / 255)).join(' ');
}

const short3 = (share: number) => String(Math.round(share * 1000) / 1000);

/** Paths of SVG with absolute M, L, C, Q and Z as operators of PDF. */
function commands(path: string): string {
  let [x, y] = [0, 0];
  return [...path.matchAll(/([MLCQZ])([^MLCQZ]*)/g)]
    .map(([, command, text]) => {
      const n = text.trim().split(/[ ,]+/).filter(Boolean).map(Number);
      if (command === 'Z') return 'h';
      const from = [x, y];
      [x, y] = n.slice(-2);
      if (command === 'M') return `${n.map(short).join(' ')} m`;
      if (command === 'L') return `${n.map(short).join(' ')} l`;
      if (command === 'C') return `${n.map(short).join(' ')} c`;
      // A quadratic curve is the cubic whose controls lie two thirds of the way to its own.
      const [cx, cy] = n;
      const third = (end: number, control: number) => end + (2 / 3) * (control - end);
      return `${[third(from[0], cx), third(from[1], cy), third(x, cx), third(y, cy), x, y].map(short).join(' ')} c`;
    })
    .join(' ');
}

/** Cells of no colour are white, as the ground is. */
function imageOf({ dots, x, y, width, height }: ImageMark, { images }: Kept): string {
  const [down, across] = [dots.length, dots[0]?.length ?? 0];
  const bytes = Uint8Array.from(
    dots.flat().flatMap((cell) => (cell === null ? [255, 255, 255] : cell.map(Math.round))),
  );
  images.push(
    stream(
      `/Type /XObject /Subtype /Image /Width ${across} /Height ${down} /ColorSpace /DeviceRGB /BitsPerComponent 8 /Interpolate false `,
      bytes,
    ),
  );
  return `q ${short(width)} 0 0 ${short(-height)} ${short(x)} ${short(y + height)} cm /I${images.length - 1} Do Q\n`;
}
