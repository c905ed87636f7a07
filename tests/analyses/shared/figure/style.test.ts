import { describe, expect, it } from 'vitest';
import {
  BLOCK_COLOURS,
  GROUND,
  KIND_COLOURS,
  SEQUENTIAL,
} from '../../../../src/analyses/shared/figure/colours.ts';
import {
  assignStyles,
  kindMarker,
  kindStyle,
  MOST_KINDS,
} from '../../../../src/analyses/shared/figure/kinds.ts';
import { escapeText } from '../../../../src/analyses/shared/figure/style.ts';
import { lab, linear, type Triple, times, XYZ } from '../../colours.ts';

/** Machado, Oliveira & Fernandes 2009, IEEE TVCG 15:1291, severity 1.0, as tabulated by the authors. */
const SIGHT: Record<string, Triple[]> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Contrast ratio of WCAG 2.2. */
function contrast(a: string, b: string): number {
  const [dark, light] = [a, b].map((hex) => times(XYZ, linear(hex))[1]).sort((p, q) => p - q) as [
    number,
    number,
  ];
  return (light + 0.05) / (dark + 0.05);
}

/** How far two kinds are apart in L*a*b* as seen. */
function apart(one: number, other: number, sight: string): number {
  const [a, b] = [one, other].map((place) => {
    const seen = times(SIGHT[sight]!, linear(kindStyle(place).colour));
    return lab(seen.map((value) => Math.min(1, Math.max(0, value))) as Triple);
  }) as [Triple, Triple];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Whether a grey print has nothing but lightness to tell two kinds by, as marks or as bars. */
function sameForm(one: number, other: number): boolean {
  const [a, b] = [kindStyle(one), kindStyle(other)];
  return a.symbol === b.symbol || a.pattern === b.pattern;
}

const pairsOf = (many: number) =>
  Array.from({ length: many }, (_, a) => Array.from({ length: a }, (_, b) => [a, b] as const)).flat();

describe('the figure style', () => {
  it.each(Object.keys(SIGHT))('keeps every pair of kinds at least 18 apart in L*a*b* for %s', (sight) => {
    const seen = KIND_COLOURS.map((hex) =>
      lab(times(SIGHT[sight]!, linear(hex)).map((value) => Math.min(1, Math.max(0, value))) as Triple),
    );
    for (let i = 0; i < seen.length; i++)
      for (let j = 0; j < i; j++) {
        const [a, b] = [seen[i]!, seen[j]!];
        expect(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])).toBeGreaterThan(18);
      }
  });

  it('keeps the kinds at least 8 steps of lightness apart in a grey print', () => {
    const lightness = KIND_COLOURS.map((hex) => lab(linear(hex))[0]).sort((a, b) => a - b);
    for (let i = 1; i < lightness.length; i++) expect(lightness[i]! - lightness[i - 1]!).toBeGreaterThan(8);
  });

  it('lets the sequential scale darken at every step', () => {
    const lightness = SEQUENTIAL.map(([, hex]) => lab(linear(hex))[0]);
    for (let i = 1; i < lightness.length; i++) expect(lightness[i]!).toBeLessThan(lightness[i - 1]! - 8);
  });

  it('sets text at 4.5:1 or better on both grounds (WCAG 2.2, 1.4.3)', () => {
    for (const ground of [GROUND.paper, GROUND.sheet])
      for (const text of [GROUND.ink, GROUND.inkSoft]) expect(contrast(ground, text)).toBeGreaterThan(4.5);
  });

  it('gives each kind a look of its own, and shares the neutral look only beyond', () => {
    const looks = Array.from({ length: MOST_KINDS }, (_, place) => kindStyle(place));
    expect(MOST_KINDS).toBeGreaterThanOrEqual(40);
    expect(new Set(looks.map(({ colour, symbol }) => `${colour} ${symbol}`)).size).toBe(MOST_KINDS);
    expect(new Set(looks.map(({ colour, pattern }) => `${colour} ${pattern}`)).size).toBe(MOST_KINDS);
    expect(kindStyle(MOST_KINDS)).toEqual(kindStyle(MOST_KINDS + 5));
    expect(KIND_COLOURS).not.toContain(kindStyle(MOST_KINDS).colour);
    expect(looks.map(({ symbol }) => symbol)).not.toContain(kindStyle(MOST_KINDS).symbol);
    expect(new Set(Object.values(BLOCK_COLOURS)).size).toBe(3);
  });

  it.each(Object.keys(SIGHT))('keeps kinds of one shape or one hatching apart by colour for %s', (sight) => {
    const alike = pairsOf(MOST_KINDS).filter(([a, b]) => sameForm(a, b) && apart(a, b, sight) < 18);
    expect(alike).toEqual([]);
  });

  it('keeps kinds of one shape or one hatching at least 8 steps of lightness apart in a grey print', () => {
    const grey = (place: number) => lab(linear(kindStyle(place).colour))[0];
    const alike = pairsOf(MOST_KINDS).filter(([a, b]) => sameForm(a, b) && Math.abs(grey(a) - grey(b)) < 8);
    expect(alike).toEqual([]);
    expect(pairsOf(MOST_KINDS).filter(([a, b]) => sameForm(a, b)).length).toBeGreaterThan(200);
  });

  it('outlines every mark at 3:1 or better on sheet and white (WCAG 2.2, 1.4.11), and fills none that a verdict could', () => {
    for (let place = 0; place < MOST_KINDS; place++) {
      const { line, symbol } = kindMarker(kindStyle(place)) as { line: { color: string }; symbol: string };
      expect(contrast(line.color, GROUND.sheet)).toBeGreaterThan(3);
      expect(symbol).not.toMatch(/-open|-dot/);
    }
  });

  it('keeps "not recorded" neutral and lets the others keep their order', () => {
    const styles = assignStyles(['', 'a', 'b', 'a']);
    expect(styles.get('')).toEqual(kindStyle(MOST_KINDS));
    expect(styles.get('a')).toEqual(kindStyle(0));
    expect(styles.get('b')).toEqual(kindStyle(1));
  });

  it('shows markup in a source as text', () => {
    expect(escapeText('<a href="x">R&D</a>')).toBe('&lt;a href="x"&gt;R&amp;D&lt;/a&gt;');
  });
});
