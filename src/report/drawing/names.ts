import { widthOf } from './lettering.ts';
import type { Box, Mark, TextMark } from './marks.ts';

/** Names beside points: moved where another text stands, left out where no place around the point is free. */

export interface Settled {
  readonly marks: readonly Mark[];
  readonly leftOut: number;
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

/** Texts of axes, legend and headings stay; names of the data go round them and each other, in their order. */
export function settleNames(marks: readonly Mark[]): Settled {
  const texts = textsOf(marks);
  if (!texts.some(({ elsewhere }) => elsewhere !== undefined)) return { marks, leftOut: 0 };
  const taken = texts.flatMap((text) => (text.elsewhere === undefined ? (boxOf(text) ?? []) : []));
  let leftOut = 0;
  const place = (mark: TextMark): readonly TextMark[] => {
    const { elsewhere, ...own } = mark;
    if (elsewhere === undefined) return [mark];
    for (const [x, y] of [[own.x, own.y] as const, ...elsewhere]) {
      const moved = { ...own, x, y };
      const box = boxOf(moved);
      if (box === null) return [moved];
      if (taken.some((other) => covers(box, other))) continue;
      taken.push(box);
      return [moved];
    }
    leftOut++;
    return [];
  };
  const settle = (some: readonly Mark[]): Mark[] =>
    some.flatMap((mark): readonly Mark[] =>
      'clip' in mark ? [{ ...mark, marks: settle(mark.marks) }] : 'text' in mark ? place(mark) : [mark],
    );
  return { marks: settle(marks), leftOut };
}
