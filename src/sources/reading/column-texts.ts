import type { CellContext } from '../../cells/context.ts';
import { profileCode } from '../../cells/nothing.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { isBlank } from '../layout/cell-shapes.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import { copyDown } from './copy-down.ts';
import type { Sheet } from './gather-fragments.ts';
import type { ColumnTexts } from './read-column.ts';

/**
 * The texts of a column, with what "as above" stands for copied down and entered.
 *
 * @param missing the profile's codes for nothing, which go before.
 */
export function textsOf(
  sheet: Sheet,
  plan: ColumnPlan,
  missing: CellContext['missing'],
  ledger: Ledger,
): ColumnTexts {
  const { index, header } = plan;
  const texts = sheet.body.map((row) => row[index] ?? '');
  const base = { header, origins: sheet.origins, gathered: sheet.gathered.has(index) };
  if (plan.status === 'ignored' || plan.status === 'empty') return { ...base, texts };
  const joined = sheet.merged?.get(index);
  const down = copyDown(
    texts,
    plan.rule.copyDown === true,
    (row) => joined?.has(sheet.origins[row]!) === true,
    holdsNames(plan),
    (text) => profileCode(text, missing) !== undefined,
  );
  for (const row of down.added) {
    enter(ledger, {
      row: sheet.origins[row]!,
      column: header,
      raw: texts[row]!,
      readAs: down.texts[row]!,
      level: 'flagged',
      rule: 'copied-down-in-part',
      why: 'The cell means "as above" and says something anew; what stands above was completed with it.',
    });
  }
  for (const row of down.copied) {
    enter(ledger, {
      row: sheet.origins[row]!,
      column: header,
      raw: texts[row]!,
      readAs: down.texts[row]!.trim(),
      level: 'read',
      rule: 'copied-down',
      why:
        joined?.has(sheet.origins[row]!) === true && isBlank(texts[row])
          ? 'The cell is merged with the one above; its text was taken.'
          : 'The cell means "as above"; the text above it was taken.',
    });
  }
  return { ...base, texts: down.texts };
}

/** Names and references may be given as "ebd., Grab 5"; a measurement or a term of a vocabulary is not. */
function holdsNames({ attribute, split }: ColumnPlan): boolean {
  if (split !== undefined) return false;
  if (attribute === undefined || attribute.scale === 'text') return true;
  return attribute.scale === 'nominal' && attribute.vocabulary === undefined;
}
