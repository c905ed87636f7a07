import type { Register } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';
import { termAt } from '../accessors.ts';
import type { Column, FragmentTable, TermColumn } from '../table.ts';

/**
 * Directions as they are on the object, the row held upright.
 *
 * Handedness is the same from either face and either end, but a quarter turn of what is drawn turns the
 * stroke of S into that of Z: a slant read with the row lying across is the other letter held upright. An
 * impression is a mirror image, in which S and Z, left and right change places; a cast of it mirrors back.
 * Geometry, no source.
 *
 * What the geometry cannot settle is kept apart under a term of its own and never counted as either:
 * a slant whose reading is not stated, beside others that state theirs; and what is preserved as an impression
 * when nothing says whether it, a cast or the object was read.
 */
export function settleTurns(table: FragmentTable, register: Register): FragmentTable {
  const at = termsOf(table);
  const readings = table.columns.get('slantReading');
  const anyStated = readings?.kind === 'term' && readings.codes.some((code) => code >= 0);
  const mirrored = (row: number) => at('observedOn', row) === 'impression';
  const side = (row: number) => at('observedOn', row) === null && isImpression(table, register, row);
  const columns = new Map(table.columns);
  for (const [id, column] of table.columns) {
    if (column.kind !== 'term') continue;
    const kind = column.attribute.vocabulary ?? (/^ply\d?$/u.test(id) ? 'ply' : undefined);
    if (kind === 'slant') {
      const turned = retermed(column, table.rows, (term, row) => {
        if (!isLetter(term)) return null;
        const reading = at('slantReading', row);
        if (side(row) || (anyStated && reading === null))
          return unread(term, id, 'slantReading', 'observedOn');
        const lying = reading === 'across';
        if (lying === mirrored(row)) return null;
        return { term: other(term), from: [id, lying ? 'slantReading' : 'observedOn'] };
      });
      if (turned !== null) columns.set(id, turned);
    }
    if (kind === 'twist' || kind === 'ply' || kind === 'workDirection') {
      const turned = retermed(column, table.rows, (term, row) => {
        if (side(row)) return apart(term, kind, id);
        return mirrored(row) ? mirrorImage(term, kind, id) : null;
      });
      if (turned !== null) columns.set(id, turned);
    }
  }
  return { ...table, columns };
}

/** Terms that say a letter whose convention is open; see vocabularies/small.ts. */
export const UNREAD = { S: 'sUnread', Z: 'zUnread' } as const;

interface Settled {
  readonly term: string;
  readonly from: readonly string[];
}

type Letter = 'S' | 'Z';

function isLetter(term: string): term is Letter {
  return term === 'S' || term === 'Z';
}

function other(term: Letter): Letter {
  return term === 'S' ? 'Z' : 'S';
}

function unread(term: Letter, ...from: readonly string[]): Settled {
  return { term: UNREAD[term], from };
}

function mirrorImage(term: string, kind: 'twist' | 'ply' | 'workDirection', id: string): Settled | null {
  const mirrored =
    kind === 'workDirection'
      ? ({ leftToRight: 'rightToLeft', rightToLeft: 'leftToRight' }[term] ?? term)
      : kind === 'ply'
        ? term.replace(/[SZsz]/gu, (letter) => MIRROR[letter as keyof typeof MIRROR])
        : isLetter(term)
          ? other(term)
          : term;
  return mirrored === term ? null : { term: mirrored, from: [id, 'observedOn'] };
}

const MIRROR = { S: 'Z', Z: 'S', s: 'z', z: 's' } as const;

/** Kept apart where a mirror image would be another term. */
function apart(term: string, kind: 'twist' | 'ply' | 'workDirection', id: string): Settled | null {
  if (mirrorImage(term, kind, id) === null) return null;
  if (kind === 'twist' && isLetter(term)) return unread(term, id, 'preservation');
  if (kind === 'ply')
    return { term: `${term} (object or impression not stated)`, from: [id, 'preservation'] };
  return null;
}

function isImpression(table: FragmentTable, register: Register, row: number): boolean {
  const column = table.columns.get('preservation');
  const vocabulary = register.vocabularies.get('preservation');
  const term = column?.kind === 'term' ? termAt(column, row) : null;
  return term !== null && vocabulary !== undefined && isWithin(vocabulary, term, 'impression');
}

function termsOf(table: FragmentTable): (id: string, row: number) => string | null {
  return (id, row) => {
    const column: Column | undefined = table.columns.get(id);
    return column?.kind === 'term' ? termAt(column, row) : null;
  };
}

/** The column with some rows given another term; null where none is. */
function retermed(
  column: TermColumn,
  rows: number,
  settle: (term: string, row: number) => Settled | null,
): TermColumn | null {
  const levels = [...column.levels];
  const codes = column.codes.slice();
  const derivedFrom = new Map(column.derivedFrom);
  for (let row = 0; row < rows; row++) {
    const term = column.levels[column.codes[row]];
    const settled = term === undefined ? null : settle(term, row);
    if (settled === null) continue;
    if (!levels.includes(settled.term)) levels.push(settled.term);
    codes[row] = levels.indexOf(settled.term);
    derivedFrom.set(row, settled.from);
  }
  return derivedFrom.size === (column.derivedFrom?.size ?? 0)
    ? null
    : { ...column, levels, codes, derivedFrom };
}
