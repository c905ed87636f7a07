import type { ResultTable, TableCell } from '../contract.ts';
import { apartTable, confusionTable, disagreementsTable, freeTable } from './apart-tables.ts';
import { meaningTable, rivalsTable } from './beside-tables.ts';
import { conditionsTable, withinTable } from './condition-tables.ts';
import { type JudgedTypology, NO_TYPE, type TypologyFound } from './found.ts';
import { movedTable, partsTable, powerTable, splitTable } from './split-tables.ts';
import { column, typeName } from './table-parts.ts';
import { mapTable, stabilityTable } from './type-tables.ts';

export function typologyTables(found: TypologyFound): Readonly<Record<string, ResultTable>> {
  return {
    coverage: coverageTable(found),
    ...(found.assignment.blame.some((id) => id !== null) ? { blame: blameTable(found) } : {}),
    ...(found.splits.length > 0
      ? {
          splits: splitTable(found),
          parts: partsTable(found),
          moved: movedTable(found),
          power: powerTable(found),
        }
      : {}),
    apart: apartTable(found),
    ...('why' in found.apart || 'why' in found.apart.prediction ? {} : { confusion: confusionTable(found) }),
    ...('why' in found.apart || 'why' in found.apart.freeGroups ? {} : { freeGroups: freeTable(found) }),
    ...('why' in found.apart || found.apart.within.length === 0 ? {} : { within: withinTable(found) }),
    ...('why' in found.apart || found.apart.conditions.length === 0
      ? {}
      : { conditions: conditionsTable(found.apart.conditions) }),
    ...('why' in found.apart
      ? {}
      : { stability: stabilityTable(found), disagreements: disagreementsTable(found) }),
    ...('why' in found.apart || 'why' in found.apart.map ? {} : { map: mapTable(found, found.apart.map) }),
    ...(found.meaning.length > 0 ? { meaning: meaningTable(found) } : {}),
    ...(found.rivals.length > 0 ? { rivals: rivalsTable(found) } : {}),
    records: recordsTable(found),
  };
}

function countOf({ assignment }: JudgedTypology, type: number): number {
  return assignment.type.filter((own) => own === type).length;
}

function coverageTable(found: TypologyFound): ResultTable {
  const total = found.assignment.rows.length;
  const line = (type: number, rule: string): TableCell[] => {
    const n = countOf(found, type);
    return [typeName(found, type), rule, n, total, n / total];
  };
  return {
    title: 'Who fits',
    columns: [
      column('type', 'Type'),
      column('rule', 'Rule'),
      column('n', found.unit === 'item' ? 'items' : 'fragments'),
      column('of', 'of'),
      column('share', 'share'),
    ],
    rows: [
      ...found.typology.types.map((_, place) => line(place, found.rules[place])),
      line(NO_TYPE.none, ''),
      ...(countOf(found, NO_TYPE.several) > 0 ? [line(NO_TYPE.several, '')] : []),
      line(NO_TYPE.undecided, ''),
    ],
    note: 'Ranges that straddle a limit and readings that are missing leave a record undecided; it is counted in no type.',
  };
}

function blameTable(found: TypologyFound): ResultTable {
  const tally = new Map<string, number>();
  for (const id of found.assignment.blame) if (id !== null) tally.set(id, (tally.get(id) ?? 0) + 1);
  return {
    title: 'Why it cannot be said',
    columns: [column('attribute', 'Attribute'), column('n', 'undecided')],
    rows: [...tally].sort((a, b) => b[1] - a[1]).map(([id, n]) => [found.labelOf.get(id) ?? id, n]),
  };
}

function recordsTable(found: TypologyFound): ResultTable {
  return {
    title: 'Each record and its type',
    columns: [
      column('id', found.unit === 'item' ? 'item' : 'fragment'),
      column('type', 'Type'),
      column('blame', 'undecided for want of'),
    ],
    rows: found.ids.map((id, place) => {
      const blame = found.assignment.blame[place];
      return [
        id,
        typeName(found, found.assignment.type[place]),
        blame === null ? '' : (found.labelOf.get(blame) ?? blame),
      ];
    }),
  };
}
