import type { Register } from '../../attributes/definition.ts';
import { unitKind } from '../../attributes/header.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import type { LaidOut } from '../layout/layout.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';

const SIZES_IN =
  /(?:measurements?|dimensions?|sizes?|maße|masse|abmessungen|mesures|misure|dimensioni|medidas|dimensiones|mål)\b[^.;]{0,40}?\b(?:in|en|i)\s+(mm|cm|m|inches|millimet(?:er|re)s?|centimet(?:er|re)s?|millimètres|centimètres|milímetros|centímetros)\b/iu;

const SHORT: readonly (readonly [pattern: RegExp, unit: string])[] = [
  [/^c(?:m|en)/i, 'cm'],
  [/^mm|^mil/i, 'mm'],
  [/^i/i, 'inch'],
  [/^m$/i, 'm'],
];

/**
 * A title or note such as "all measurements in cm" gives the unit of those sizes of finds whose own header
 * names none. It says nothing of threads, which are measured in mm as a rule.
 */
export function applyNoteUnit(
  plans: readonly ColumnPlan[],
  { grid, setAside }: Pick<LaidOut, 'grid' | 'setAside'>,
  register: Register,
  ledger: Ledger,
): readonly ColumnPlan[] {
  for (const { row, reason } of setAside) {
    if (reason !== 'above the header' && reason !== 'note') continue;
    const text = (grid[row - 1] ?? []).filter((cell) => cell.trim() !== '').join(' ');
    const word = SIZES_IN.exec(text)?.[1];
    const unit = SHORT.find(([pattern]) => word !== undefined && pattern.test(word))?.[1];
    if (unit === undefined) continue;
    const named: string[] = [];
    const isSize = (id: string | null): boolean => {
      const attribute = register.attributes.get(id ?? '');
      return attribute?.block === 'find' && unitKind(attribute.unit ?? '') === 'length';
    };
    const read = plans.map((plan): ColumnPlan => {
      if (plan.via === 'profile') return plan;
      const split = plan.split ?? plan.suggestion?.split;
      if (split !== undefined) {
        if (!split.into.some((target) => target.unit === undefined && isSize(target.attribute))) return plan;
        named.push(plan.header);
        const into = split.into.map((target) => (isSize(target.attribute) ? { unit, ...target } : target));
        const parted = { ...split, into };
        if (plan.split !== undefined) return { ...plan, split: parted };
        return { ...plan, suggestion: { ...plan.suggestion!, split: parted } };
      }
      if (plan.unit !== undefined || !isSize(plan.attribute?.id ?? null)) return plan;
      named.push(plan.header);
      return { ...plan, unit };
    });
    if (named.length > 0) {
      enter(ledger, {
        row,
        column: '',
        raw: text,
        readAs: unit,
        level: 'flagged',
        rule: 'unit-in-note',
        why: `The text says in which unit the finds were measured; ${named.map((header) => `"${header}"`).join(', ')} was read so.`,
      });
    }
    return read;
  }
  return plans;
}
