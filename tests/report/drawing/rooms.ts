import { widthOf } from '../../../src/report/drawing/lettering.ts';
import type { Drawing, Mark, TextMark } from '../../../src/report/drawing/marks.ts';

/** The rooms that the texts of a drawing take. */
export interface Room {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function textsOf(marks: readonly Mark[]): readonly TextMark[] {
  return marks.flatMap((mark) => ('clip' in mark ? textsOf(mark.marks) : 'text' in mark ? [mark] : []));
}

/** Room of the capitals of level texts and of those turned by a quarter. */
export function roomsIn({ marks }: Drawing): Room[] {
  return textsOf(marks).flatMap(({ text, x, y, size, anchor, bold, turn = 0 }): Room[] => {
    if (text.trim() === '' || turn % 90 !== 0) return [];
    const [wide, tall] = [widthOf(text, size, bold), 0.7 * size];
    const back = anchor === 'start' ? 0 : anchor === 'middle' ? wide / 2 : wide;
    if (turn === -90) return [{ text, left: x - tall, right: x, top: y + back - wide, bottom: y + back }];
    if (turn === 90) return [{ text, left: x, right: x + tall, top: y - back, bottom: y - back + wide }];
    return [{ text, left: x - back, right: x - back + wide, top: y - tall, bottom: y }];
  });
}

/** Pixels by which two texts may come near each other. */
export const SLACK = 0.5;
export const touch = (a: Room, b: Room) =>
  a.left < b.right - SLACK &&
  b.left < a.right - SLACK &&
  a.top < b.bottom - SLACK &&
  b.top < a.bottom - SLACK;
