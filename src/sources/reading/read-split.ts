import type { Register } from '../../attributes/definition.ts';
import type { Column } from '../../fragments/table.ts';
import { knownAttribute } from '../columns/column-rules.ts';
import { isBlank } from '../layout/cell-shapes.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import type { SplitRule } from '../profile/profile.ts';
import { textColumnAttribute } from './assemble.ts';
import type { ContextFor } from './column-context.ts';
import { type ColumnTexts, readColumn, readTextColumn } from './read-column.ts';
import { readDescribed } from './read-described.ts';
import { splitText } from './split-column.ts';
import type { SplitParts } from './split-parts.ts';
import { isSize, type PieceHabit } from './split-sizes.ts';

export interface SplitRead {
  readonly columns: readonly (readonly [id: string, column: Column])[];
  /** What parts that describe several attributes say beside their own, to fill the gaps of those. */
  readonly told: readonly { readonly texts: ColumnTexts; readonly columns: ReadonlyMap<string, Column> }[];
}

/**
 * Takes the cells of one column apart and reads each part for its attribute. Every cell that was parted
 * is entered in the ledger; a column searched for phrases is kept whole as text besides.
 *
 * @param habit what the source's profile says of cells that list the sizes of several pieces.
 * @param oneFacet the profile says that the parts hold one attribute alone.
 */
export function readSplit(
  column: ColumnTexts,
  rule: SplitRule,
  context: ContextFor,
  register: Register,
  ledger: Ledger,
  habit: PieceHabit,
  oneFacet: boolean,
): SplitRead {
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
  const told: SplitRead['told'][number][] = [];
  const columns = rule.into.map((target, i): readonly [string, Column] => {
    const texts: ColumnTexts = { ...column, texts: parts[i]! };
    const attribute = attributes[i]!;
    if (attribute === null) return kept(target.name ?? `${column.header} (part ${i + 1})`, texts.texts);
    const cells = context(attribute, target.unit);
    const described = readDescribed(texts, attribute, cells, register, ledger, oneFacet);
    if (described !== null) told.push({ texts, columns: described.facets });
    return [attribute.id, described?.main ?? readColumn(texts, attribute, cells, ledger)];
  });
  return {
    columns: rule.by === 'phrases' ? [...columns, kept(column.header, column.texts)] : columns,
    told,
  };
}

function kept(header: string, texts: readonly string[]): readonly [string, Column] {
  const column = readTextColumn(texts, textColumnAttribute(header));
  return [column.attribute.id, column];
}
