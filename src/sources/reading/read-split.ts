import type { Register } from '../../attributes/definition.ts';
import type { Column } from '../../fragments/table.ts';
import { knownAttribute } from '../columns/column-rules.ts';
import { isBlank } from '../layout/cell-shapes.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import type { SplitRule } from '../profile/profile.ts';
import { textColumnAttribute } from './assemble.ts';
import type { ContextFor } from './column-context.ts';
import { type ColumnTexts, readColumn, readTextColumn } from './read-column.ts';
import { splitText } from './split-column.ts';
import type { SplitParts } from './split-parts.ts';
import { isSize, type PieceHabit } from './split-sizes.ts';

/**
 * Takes the cells of one column apart and reads each part for its attribute. Every cell that was parted
 * is entered in the ledger; a column searched for phrases is kept whole as text besides.
 * @param habit what the source's profile says of cells that list the sizes of several pieces.
 */
export function readSplit(
  column: ColumnTexts,
  rule: SplitRule,
  context: ContextFor,
  register: Register,
  ledger: Ledger,
  habit: PieceHabit,
): (readonly [id: string, column: Column])[] {
  const general = context(null, undefined);
  const attributes = rule.into.map(({ attribute }) =>
    attribute === null ? null : knownAttribute(attribute, column.header, register, ledger.source),
  );
  const numeric = attributes.map((attribute) =>
    attribute === null ? null : attribute.scale === 'ratio' || attribute.scale === 'interval',
  );
  const sizes = attributes.some((attribute) => attribute !== null && isSize(attribute)) ? habit : null;
  const cache = new Map<string, SplitParts>();
  const parts: string[][] = rule.into.map(() => []);
  for (const [row, text] of column.texts.entries()) {
    let found = cache.get(text);
    if (found === undefined) {
      found = splitText(text, rule, numeric, general, sizes);
      cache.set(text, found);
    }
    for (const [i, part] of found.parts.entries()) parts[i]!.push(part);
    if (isBlank(text)) continue;
    enter(ledger, {
      row: column.origins[row]!,
      column: column.header,
      raw: text,
      readAs: found.parts.map((part) => (part === '' ? '–' : part)).join(' | '),
      level: found.level,
      rule: found.pieces === true ? 'several-pieces' : 'split',
      why: found.why,
    });
  }
  const read = rule.into.map((target, i): readonly [string, Column] => {
    const texts: ColumnTexts = { ...column, texts: parts[i]! };
    if (target.attribute === null)
      return kept(target.name ?? `${column.header} (part ${i + 1})`, texts.texts);
    const attribute = attributes[i]!;
    return [attribute.id, readColumn(texts, attribute, context(attribute, target.unit), ledger)];
  });
  return rule.by === 'phrases' ? [...read, kept(column.header, column.texts)] : read;
}

function kept(header: string, texts: readonly string[]): readonly [string, Column] {
  const column = readTextColumn(texts, textColumnAttribute(header));
  return [column.attribute.id, column];
}
