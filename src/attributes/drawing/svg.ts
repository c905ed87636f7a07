import type { Drawing, Piece, Tone } from './drawing.ts';

/** Told apart by lightness, so that a grey print reads the same: light passives, dark actives. */
export const TONES: Readonly<Record<Tone, string>> = {
  passive: '#E6DAC3',
  active: '#1E2C5C',
  second: '#6C86B4',
  extra: '#DB8436',
};
const GROUND = '#FFFFFF';
/** The darkest tone is parted from its neighbours by the ground: an ink line would drown in it. */
const OUTLINES: Readonly<Record<Tone, string>> = {
  passive: '#2A2420',
  active: GROUND,
  second: '#2A2420',
  extra: '#2A2420',
};

/** The drawing as one self-standing SVG: no scripts, no styles, no ids, nothing from outside. */
export function drawingSvg(drawing: Drawing): string {
  const { x, y, width, height } = drawing.box;
  const said = [drawing.says, ...drawing.notes].join(' ');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${[x, y, width, height].map(short).join(' ')}" role="img" aria-label="${escaped(drawing.title)}">`,
    `<title>${escaped(drawing.title)}</title>`,
    `<desc>${escaped(said)}</desc>`,
    `<rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}" fill="${GROUND}"/>`,
    '<g fill="none">',
    ...drawing.pieces.map(pieceSvg),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** Outline first and tone on it: the outline shows at the sides, which is what tells over from under. */
function pieceSvg({ points, tone, width, round }: Piece): string {
  const d = points
    .map(([px, py], index) => `${commandAt(index, points.length)}${short(px)} ${short(py)}`)
    .join('');
  const cap = round ? ' stroke-linecap="round"' : '';
  return (
    `<path d="${d}" stroke="${OUTLINES[tone]}" stroke-width="${short(width + 1.6)}"${cap}/>` +
    `<path d="${d}" stroke="${TONES[tone]}" stroke-width="${short(width)}"${cap}/>`
  );
}

function commandAt(index: number, points: number): string {
  if (index === 0) return 'M';
  if (points === 2) return 'L';
  return index % 3 === 1 ? 'C' : ' ';
}

const short = (value: number): string => String(Math.round(value * 10) / 10 || 0);

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
