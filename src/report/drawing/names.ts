import { widthOf } from './lettering.ts';
import type { Box, Drawing, Elsewhere, Mark, TextMark } from './marks.ts';

/** Names beside points: moved where another text stands, left out where no place around the point is free. */

export interface Settled {
  readonly marks: readonly Mark[];
  readonly leftOut: number;
  readonly places: NonNullable<Drawing['namePlaces']>;
}

/** From the base line up to the top of a capital, as a share of the size. */
const CAPITAL = 0.72;
const DESCENT = 0.2;

/** The room that a text takes; of those turned otherwise than by a quarter nothing is kept free. */
function boxOf({ text, x, y, size, anchor, bold, turn = 0 }: TextMark): Box | null {
  if (text === '') return null;
  const width = widthOf(text, size, bold);
  const back = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
  if (turn === -90) return { x: x - CAPITAL * size, y: y + back - width, width: size, height: width };
  if (turn === 90) return { x: x - DESCENT * size, y: y - back, width: size, height: width };
  if (turn !== 0) return null;
  const left = x - back;
  return { x: left, y: y - CAPITAL * size, width, height: (CAPITAL + DESCENT) * size };
}

const covers = (a: Box, b: Box) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

function textsOf(marks: readonly Mark[]): readonly TextMark[] {
  return marks.flatMap((mark) => ('clip' in mark ? textsOf(mark.marks) : 'text' in mark ? [mark] : []));
}

/**
 * Texts of axes, legend and headings stay; names of the data go round them, round each other, round the marks of all
 * named points and what else is to be kept free, in their order. One that finds no room makes way for itself where a single other name can still move.
 */
export function settleNames(marks: readonly Mark[], keptFree: readonly Box[] = []): Settled {
  const texts = textsOf(marks);
  const named = texts.filter(isNamed);
  if (named.length === 0) return { marks, leftOut: 0, places: [] };
  const fixed = [
    ...texts.flatMap((text) => (isNamed(text) ? [] : (boxOf(text) ?? []))),
    ...named.map(({ beside }) => beside.mark),
    ...keptFree,
  ];
  const standing = new Map<NameMark, Standing>();
  const inTheWay = (box: Box, but: NameMark) =>
    [...standing].flatMap(([other, { box: own }]) => (other !== but && covers(box, own) ? [other] : []));
  const waysOf = (name: NameMark) =>
    name.beside.elsewhere.flatMap((way): Standing[] => {
      const box = boxOf({ ...name, x: way.x, y: way.y });
      return box === null || fixed.some((one) => covers(box, one)) ? [] : [{ way, box }];
    });
  const free = (name: NameMark) => waysOf(name).find(({ box }) => inTheWay(box, name).length === 0);
  for (const name of named) {
    const found = free(name);
    if (found !== undefined) standing.set(name, found);
  }
  for (const name of named.filter((one) => !standing.has(one)))
    for (const way of waysOf(name)) {
      const [other, ...more] = inTheWay(way.box, name);
      if (other === undefined || more.length > 0) continue;
      const before = standing.get(other);
      standing.set(name, way);
      const moved = free(other);
      if (moved !== undefined) {
        standing.set(other, moved);
        break;
      }
      standing.delete(name);
      if (before !== undefined) standing.set(other, before);
    }
  const settle = (some: readonly Mark[]): Mark[] =>
    some.flatMap((mark): readonly Mark[] => {
      if ('clip' in mark) return [{ ...mark, marks: settle(mark.marks) }];
      if (!('text' in mark) || !isNamed(mark)) return [mark];
      const { beside, ...own } = mark;
      const stands = standing.get(mark);
      return stands === undefined ? [] : [{ ...own, x: stands.way.x, y: stands.way.y }];
    });
  return {
    marks: settle(marks),
    leftOut: named.length - standing.size,
    places: named.map(({ beside: { trace, point } }, at) => ({
      trace,
      point,
      textposition: standing.get(named[at])?.way.textposition ?? null,
    })),
  };
}

type NameMark = TextMark & { readonly beside: NonNullable<TextMark['beside']> };

interface Standing {
  readonly way: Elsewhere;
  readonly box: Box;
}

function isNamed(text: TextMark): text is NameMark {
  return text.beside !== undefined;
}
