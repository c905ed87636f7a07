import { sineAndCosine } from '../../numerics/foundation/angles.ts';
import { widthOf } from './lettering.ts';
import { short, type TextMark } from './marks.ts';
import { textElement } from './svg.ts';
import { lookup } from './type/lookup.ts';
import { OUTLINES } from './type/outlines.ts';

/** Letters as outlines, so that a figure looks alike wherever it is opened and no typeface need be at hand. */

const outlines = new Map(OUTLINES);

/** Weight that is laid round the letters of bold words, as a share of the size: outlines are of one weight. */
const BOLDER = 0.035;

/** Stands for a letter that the typeface lacks: a hollow box. */
const LACKING = 'M80 0L620 0L620 660L80 660ZM140 60L140 600L560 600L560 60Z';

/** Whether the typeface has an outline of every letter of a text. */
function isWhole(text: string): boolean {
  return [...text.normalize('NFC')].every((letter) => letter.trim() === '' || outlines.has(letter));
}

/**
 * The outlines of a text as one path of M, L, Q and Z where it stands, turned as it is. A letter that the typeface lacks
 * is a hollow box.
 */
export function outlinePath({ text, x, y, size, anchor, bold, turn = 0 }: TextMark): string {
  const scale = size / 1000;
  const wide = widthOf(text, size, bold);
  let at = x - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0);
  const [sine, cosine] = sineAndCosine((turn * Math.PI) / 180);
  const place = (right: number, up: number) => {
    const [across, down] = [at + right * scale - x, -up * scale];
    return `${short(x + across * cosine - down * sine)} ${short(y + across * sine + down * cosine)}`;
  };
  let path = '';
  for (const letter of text.normalize('NFC')) {
    path += (outlines.get(letter) ?? (letter.trim() === '' ? '' : LACKING)).replace(
      /([MLQ])([-\d ]+)/g,
      (_, command: string, numbers: string) => {
        const list = numbers.trim().split(' ').map(Number);
        const pairs = list.flatMap((number, i) => (i % 2 === 0 ? [place(number, list[i + 1])] : []));
        return `${command}${pairs.join(' ')}`;
      },
    );
    at += ((lookup(letter) ?? FALLBACK) / 1000) * size;
  }
  return path;
}

/** As `widthOf` counts a letter that is not there. */
const FALLBACK = 700;

/** Width of the pen that makes outlined letters bold; 0 for plain ones. */
export function boldPen({ bold, size }: TextMark): number {
  return bold === true ? BOLDER * size : 0;
}

/** Outlined letters as an element of SVG; a text of another script as text, for a program that has its letters. */
export function outlinedElement(mark: TextMark): string {
  if (!isWhole(mark.text)) return textElement(mark);
  const path = outlinePath(mark);
  if (path === '') return '';
  const pen = boldPen(mark);
  const edge =
    mark.halo === undefined
      ? ''
      : `<path d="${path}" fill="none" stroke="${mark.halo}" stroke-width="2.5" stroke-linejoin="round"/>`;
  const bold = pen === 0 ? '' : ` stroke="${mark.fill}" stroke-width="${short(pen)}"`;
  return `${edge}<path d="${path}" fill="${mark.fill}"${bold}/>`;
}
