import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import type { Drawing, Piece } from '../../src/attributes/drawing/drawing.ts';
import type { Facets } from '../../src/attributes/drawing/facets.ts';
import { type Interlacing, satin, tabby, twill } from '../../src/attributes/drawing/interlacing.ts';
import { structureDrawing } from '../../src/attributes/drawing/structure-drawing.ts';
import { drawingSvg, TONES } from '../../src/attributes/drawing/svg.ts';
import { ROW_HEIGHT } from '../../src/attributes/drawing/twined.ts';
import { defaultRegister, extendRegister } from '../../src/attributes/register.ts';

const register = defaultRegister();

function drawn(structure: string, facets: Facets = {}): Drawing {
  const drawing = structureDrawing(register, structure, facets);
  if (drawing === null) throw new Error(`${structure} is not drawn`);
  return drawing;
}

const words = (over: Interlacing) => over.map((row) => row.map((one) => (one ? '#' : '.')).join(''));

// Definitions of the weaves: Emery 1966, The Primary Structures of Fabrics (from memory).
describe('which element passes over which', () => {
  it('alternates in tabby, and in twos in basket', () => {
    expect(words(tabby(4))).toEqual(['#.#.', '.#.#', '#.#.', '.#.#']);
    expect(words(tabby(4, 2, 2))).toEqual(['##..', '##..', '..##', '..##']);
    expect(words(tabby(4, 2, 1))).toEqual(['#.#.', '#.#.', '.#.#', '.#.#']);
  });

  it.each([
    [2, 2],
    [2, 1],
    [3, 1],
    [3, 3],
    [4, 1],
  ])('goes over %i and under %i in a twill, one on from row to row', (over, under) => {
    const rows = words(twill(over, under));
    const repeat = '#'.repeat(over) + '.'.repeat(under);
    expect(rows[0]!.slice(0, over + under)).toBe(repeat);
    rows.slice(1).forEach((row, index) => {
      expect(row.slice(1)).toBe(rows[index]!.slice(0, -1));
      expect(row).not.toBe(rows[index]);
    });
  });

  it('turns the diagonals back: mirrored where pointed, opposed on the line where offset', () => {
    for (const row of words(twill(2, 2, 'pointed'))) expect([...row].reverse().join('')).toBe(row);
    const diamond = words(twill(2, 2, 'pointLozenge'));
    expect([...diamond].reverse()).toEqual(diamond);
    expect(diamond.map((row) => [...row].reverse().join(''))).toEqual(diamond);
    for (const row of words(twill(2, 2, 'herringbone'))) {
      expect(row).toHaveLength(16);
      expect(row[7]).not.toBe(row[8]);
    }
  });

  it.each([
    [5, 2],
    [8, 3],
  ])(
    'binds each end of a %i-end satin once in the repeat, no two bindings beside each other',
    (repeat, step) => {
      const cell = satin(repeat, step)
        .slice(0, repeat)
        .map((row) => row.slice(0, repeat));
      for (const row of cell) expect(row.filter(Boolean)).toHaveLength(1);
      const bound = cell.map((row) => row.indexOf(true));
      expect(new Set(bound).size).toBe(repeat);
      bound.slice(1).forEach((column, index) => {
        const apart = Math.abs(column - bound[index]!);
        expect(Math.min(apart, repeat - apart)).toBeGreaterThan(1);
      });
    },
  );
});

/** The tone seen at a point: that of the last straight or level piece painted over it. */
function seenAt(drawing: Drawing, x: number, y: number): string | undefined {
  return drawing.pieces.findLast(({ points, width }) => {
    const [[x0, y0], [x1, y1]] = [points[0]!, points.at(-1)!];
    const inside = (at: number, a: number, b: number) =>
      at >= Math.min(a, b) - width / 2 && at <= Math.max(a, b) + width / 2;
    const upright = x0 === x1;
    return upright
      ? Math.abs(x - x0) <= width / 2 && y >= Math.min(y0, y1) && y <= Math.max(y0, y1)
      : inside(x, x0, x1) && Math.abs(y - (y0 + y1) / 2) <= width / 2;
  })?.tone;
}

describe('the picture of a weave', () => {
  it('shows at each crossing the system that passes over', () => {
    for (const [structure, over] of [
      ['tabby', tabby(8)],
      ['twill22', twill(2, 2)],
      ['satin5', satin(5, 2)],
    ] as const)
      over.forEach((row, r) => {
        row.forEach((weftOver, c) => {
          expect(seenAt(drawn(structure), 20 * c, 20 * r), `${structure} ${r} ${c}`).toBe(
            weftOver ? 'active' : 'passive',
          );
        });
      });
  });

  it('leaves nothing of the hidden system in a faced weave, and leaves more ground where open', () => {
    const middle = (drawing: Drawing, tone: string) => {
      const { x, y, width, height } = drawing.box;
      const seen = new Set<string | undefined>();
      for (let i = 40; i <= 60; i += 1)
        for (let j = 40; j <= 60; j += 1)
          seen.add(seenAt(drawing, x + (width * i) / 100, y + (height * j) / 100));
      return seen.has(tone);
    };
    expect(middle(drawn('tabby', { face: 'weftFaced' }), 'passive')).toBe(false);
    expect(middle(drawn('tabby'), 'passive')).toBe(true);
    const [open, close] = ['open', 'close'].map(
      (spacingClass) => drawn('tabby', { spacingClass }).pieces[0]!.width,
    );
    expect(open!).toBeLessThan(close!);
    // Which system hides the other changes which tone sticks out at the edges: the first pieces painted are hidden.
    expect(drawn('tabby', { face: 'warpFaced' }).pieces[0]!.tone).toBe('active');
    expect(drawn('tabby', { face: 'weftFaced' }).pieces[0]!.tone).toBe('passive');
  });
});

/** Pieces that pass before the passives of twining, and the passives. */
function twinedParts(facets: Facets) {
  const { pieces } = drawn('twined', facets);
  const last = pieces.findLastIndex(({ tone }) => tone === 'passive');
  return {
    passives: pieces.filter(({ tone }) => tone === 'passive'),
    before: pieces.slice(last + 1).filter(({ tone }) => tone !== 'extra'),
    tufts: pieces.filter(({ tone }) => tone === 'extra'),
    pieces,
  };
}

/** Sign of the lean on the page: -1 as the stroke of S (\), 1 as that of Z (/). */
function lean({ points }: Piece): number {
  const [[x0, y0], [x1, y1]] = [points[0]!, points.at(-1)!];
  return -Math.sign((y1 - y0) / (x1 - x0));
}
const quarterTurned = (piece: Piece): Piece => ({ ...piece, points: piece.points.map(([x, y]) => [-y, x]) });

// S and Z after the strokes of the letters, the row held upright (the definition of the attribute rowSlant).
describe('the picture of twining', () => {
  it('leans like the stroke of the letter once the row is upright', () => {
    for (const [rowSlant, sign] of [
      ['S', -1],
      ['Z', 1],
    ] as const) {
      const { before } = twinedParts({ rowSlant, spacingClass: 'open' });
      expect(before.length).toBeGreaterThan(10);
      for (const piece of before) {
        expect(lean(quarterTurned(piece))).toBe(sign);
        expect(lean(piece)).toBe(-sign);
      }
      for (const piece of twinedParts({ rowSlant, spacingClass: 'open', activeSystem: 'warpActive' }).before)
        expect(lean(piece)).toBe(sign);
    }
    const signs = twinedParts({ rowSlant: 'countered' }).before.map(lean);
    expect(new Set(signs)).toEqual(new Set([-1, 1]));
  });

  it('lets rows touch where close and not where open, and turns enclose one passive or two', () => {
    const rows = (spacingClass: string) => {
      const middles = twinedParts({ spacingClass }).before.map(
        ({ points }) => (points[0]![1] + points.at(-1)![1]) / 2,
      );
      const [first, second] = [...new Set(middles)].sort((a, b) => a - b);
      return second! - first! - ROW_HEIGHT;
    };
    expect(rows('close')).toBeLessThanOrEqual(0);
    expect(rows('semi-open')).toBeGreaterThan(0);
    expect(rows('open')).toBeGreaterThan(rows('semi-open'));

    const enclosed = (engagement: string) => {
      const { before, passives } = twinedParts({ engagement, spacingClass: 'open' });
      return before.map(({ points }) => {
        const [from, to] = [points[0]![0], points.at(-1)![0]];
        return passives.filter(({ points: [[x]] }) => x > from && x < to).map(({ points: [[x]] }) => x);
      });
    };
    expect(new Set(enclosed('simple').map((one) => one.length))).toEqual(new Set([1]));
    const pairs = enclosed('diagonal')
      .filter((one) => one.length === 2)
      .map(String);
    // The rows divide each other's pairs: 8 passives give 7 neighbours, each a pair in some row.
    expect(new Set(pairs).size).toBe(7);
  });

  it('lets the strands change places: as many pieces behind the passives as before them, tones by turns', () => {
    const { pieces, before } = twinedParts({ spacingClass: 'open', rowSlant: 'S' });
    const first = pieces.findIndex(({ tone }) => tone === 'passive');
    expect(first).toBe(before.length);
    before.slice(0, 8).forEach((piece, turn) => {
      expect(piece.tone).toBe(turn % 2 === 0 ? 'active' : 'second');
      expect(pieces[turn]!.tone).not.toBe(piece.tone);
      const next = before[turn + 1];
      // What ends before a passive goes on behind the next one, from the same place.
      if (turn < 7) expect(pieces[turn + 1]!.points[0]).toEqual(piece.points.at(-1));
      if (turn < 7) expect(next!.points[0]![0]).toBe(piece.points.at(-1)![0]);
    });
  });

  it('lets pile stand out of the rows, and only where it is told', () => {
    const { tufts } = twinedParts({ pile: 'present', spacingClass: 'open' });
    expect(tufts.length).toBeGreaterThan(5);
    for (const { points } of tufts) expect(points.at(-1)![1] - points[0]![1]).toBeGreaterThan(ROW_HEIGHT / 2);
    for (const pile of ['absent', undefined]) expect(twinedParts({ pile }).tufts).toEqual([]);
  });
});

describe('the picture of a tablet weave', () => {
  it('twists the warp of neighbouring tablets S and Z by turns, the first S', () => {
    const twists = drawn('tabletWoven').pieces.filter(({ tone }) => tone !== 'passive');
    const cords = new Map<number, Piece[]>();
    for (const twist of twists) {
      const x = (twist.points[0]![0] + twist.points.at(-1)![0]) / 2;
      cords.set(x, [...(cords.get(x) ?? []), twist]);
    }
    const leans = [...cords.values()].map((pieces) => new Set(pieces.map(lean)));
    expect(leans).toEqual([-1, 1, -1, 1, -1, 1].map((sign) => new Set([sign])));
  });
});

describe('what a record does not tell', () => {
  it('is said where the drawing has to choose, and not where it need not', () => {
    expect(drawn('woven').notes.join()).toContain('drawn as tabby');
    expect(drawn('twined').notes.join()).toMatch(/drawn open.*drawn as S/);
    expect(drawn('twined', { spacingClass: 'open', rowSlant: 'Z' }).notes.join()).not.toContain('not told');
    expect(drawn('twined', { rowSlant: 'sUnread' }).notes.join()).toContain('slant is not told');
    expect(drawn('tabby').notes).toEqual([]);
    expect(drawn('tabby', { elementGrouping: 'pairedOne' }).notes).toHaveLength(1);
  });

  it('says what is told and not drawn, so that the title promises nothing', () => {
    const facets = { pile: 'present', spacingClass: 'open' };
    for (const structure of ['simpleLooping', 'checkerPlaiting', 'coiled', 'knotlessNetting'])
      expect(drawn(structure, facets).notes.join(), structure).toMatch(
        /close the work is.*pile is not drawn/,
      );
    expect(drawn('tabby', { ...facets, face: 'weftFaced' }).notes).toHaveLength(2);
    for (const structure of ['tabby', 'twined'])
      expect(drawn(structure, { ...facets, rowSlant: 'Z' }).notes.join(), structure).not.toContain(
        'not drawn',
      );
  });

  it('is not drawn where a broader term would show another structure', () => {
    for (const id of [
      'damask',
      'doubleCloth',
      'gauze',
      'knitted',
      'sprang',
      'felt',
      'basketry',
      'hexagonalPlaiting',
      'no such term',
    ])
      expect(structureDrawing(register, id, {}), id).toBeNull();
    expect(structureDrawing(register, 'twined', { wrapping: 'wrappedCrossings' })).toBeNull();
    expect(structureDrawing(register, 'twill22', { twillPattern: 'broken' })).toBeNull();
  });

  it('falls back on the broader term for a term that a study adds', () => {
    const own = extendRegister(register, {
      terms: [
        { id: 'fineTwill', label: 'fine twill', parent: 'twill22', vocabulary: 'structure', source: 'test' },
      ],
    });
    const drawing = structureDrawing(own, 'fineTwill', {});
    expect(drawing?.pieces).toEqual(drawn('twill22').pieces);
    expect(drawing?.notes.join()).toContain('broader term');
  });
});

describe('the SVG', () => {
  const terms = register.vocabularies.get('structure')!.terms.map(({ id }) => id);
  const all = terms.flatMap((id) => {
    const drawing = structureDrawing(register, id, { pile: 'present', spacingClass: 'open', rowSlant: 'S' });
    return drawing === null ? [] : [[id, drawingSvg(drawing)] as const];
  });

  it('is well-formed, self-standing and says what it shows, for every term that is drawn', () => {
    expect(all.length).toBeGreaterThan(25);
    for (const [id, svg] of all) {
      expect(unbalanced(svg), id).toEqual([]);
      expect(svg).not.toMatch(/NaN|undefined|Infinity|href|url\(|<style|<script| id=/);
      expect(svg).toMatch(
        /^<svg [^>]*viewBox="-?[\d.]+ -?[\d.]+ [\d.]+ [\d.]+" role="img" aria-label="[^"]+">\n<title>[^<]+<\/title>\n<desc>[^<]+<\/desc>/,
      );
    }
  });

  it('passes a validating parser where there is one', () => {
    const parser = spawnSync('xmllint', ['--noout', '-'], { input: all[0]![1] });
    if (parser.error !== undefined) return;
    for (const [id, svg] of all)
      expect(spawnSync('xmllint', ['--noout', '-'], { input: svg }).status, id).toBe(0);
  });

  it('keeps words that have a meaning in XML as words', () => {
    const svg = drawingSvg({ ...drawn('tabby'), title: 'a <b> & "c"' });
    expect(svg).toContain('<title>a &lt;b&gt; &amp; &quot;c&quot;</title>');
    expect(unbalanced(svg)).toEqual([]);
  });

  it('tells passive from active by lightness alone', () => {
    // Relative luminance of WCAG 2.2; 3:1 is its least contrast of graphical objects.
    const channel = (hex: string) => {
      const value = Number.parseInt(hex, 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    };
    const luminance = (colour: string) =>
      0.2126 * channel(colour.slice(1, 3)) +
      0.7152 * channel(colour.slice(3, 5)) +
      0.0722 * channel(colour.slice(5, 7));
    const contrast = (a: string, b: string) => {
      const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
      return (high! + 0.05) / (low! + 0.05);
    };
    expect(contrast(TONES.passive, TONES.active)).toBeGreaterThan(3);
    expect(contrast(TONES.second, TONES.active)).toBeGreaterThan(3);
    expect(contrast(TONES.extra, TONES.active)).toBeGreaterThan(3);
    expect(contrast(TONES.passive, TONES.second)).toBeGreaterThan(2);
  });
});

/** Tags that do not close in order; our SVG has no comments, sections or entities but the five of XML. */
function unbalanced(svg: string): readonly string[] {
  const open: string[] = [];
  const wrong: string[] = [];
  for (const [tag, close, name, , self] of svg.matchAll(
    /<(\/?)([A-Za-z]+)((?:\s[\w:-]+="[^"<]*")*)(\/?)>/g,
  )) {
    if (close === '/' ? open.pop() !== name : self === '/' ? false : open.push(name!) < 1) wrong.push(tag);
  }
  const rest = svg
    .replace(/<\/?[A-Za-z]+(?:\s[\w:-]+="[^"<]*")*\/?>/g, '')
    .replace(/&(?:amp|lt|gt|quot);/g, '');
  return [...wrong, ...open, ...(rest.match(/[<>&]/g) ?? [])];
}
