import { unitDimension } from '../../../cells/units.ts';
import type { SourceProfile } from '../../../sources/profile/profile.ts';
import type { ColumnReading } from '../../../sources/source-reading.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { Examples } from './examples.tsx';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

/** Questions about how the numbers of a column are to be taken. */

interface MeasureProps {
  readonly source: SourceView;
  readonly column: ColumnReading;
  readonly onTarget: (target: Target) => void;
}

const UNITS: Readonly<Record<string, readonly string[]>> = {
  length: ['mm', 'cm', 'm', 'inch'],
  area: ['mm2', 'cm2', 'dm2'],
  mass: ['mg', 'g', 'kg'],
  count: ['per cm', 'per 5 cm', 'per 10 cm', 'per inch'],
};

/** Nothing states the unit of a column's numbers. */
export function UnitQuestion({ source, column, unit, onTarget }: MeasureProps & { readonly unit: string }) {
  const { column: setRule, profile } = useProfile(source.name);
  const { header } = column;
  const split = profile.columns.find((rule) => rule.header === header)?.split ?? column.suggestion?.split;
  const units = UNITS[unitDimension(unit) ?? ''] ?? [unit];
  const say = (chosen: string) =>
    setRule(
      header,
      column.attributes.length > 1 && split !== undefined
        ? {
            split: {
              ...split,
              into: split.into.map((target) => ({ ...target, unit: target.unit ?? chosen })),
            },
          }
        : { attribute: column.attributes[0] ?? null, unit: chosen },
      `“${header}” is in ${chosen}`,
    );
  return (
    <div className="stack tight">
      <p>
        <ColumnLink column={column} onTarget={onTarget} /> states no unit. Its numbers are taken as {unit}. In
        which unit are they?
      </p>
      <p className="small soft">
        <Examples of={source.examples[column.index]} />
      </p>
      <div className="line">
        {units.map((one) => (
          <Button key={one} look="small" label={`“${header}” is in ${one}`} onPress={() => say(one)}>
            {one}
          </Button>
        ))}
      </div>
    </div>
  );
}

const PIECES: readonly {
  readonly id: NonNullable<SourceProfile['pieces']>;
  readonly label: string;
  readonly done: string;
}[] = [
  { id: 'largest', label: 'The largest', done: 'the largest piece is read' },
  { id: 'first', label: 'The first', done: 'the first piece is read' },
  { id: 'unread', label: 'None of them', done: 'sizes of several pieces stay unread' },
];

/** A row is one fragment, and a cell lists the sizes of several pieces. */
export function PiecesQuestion({
  source,
  column,
  count,
  onTarget,
}: MeasureProps & { readonly count: number }) {
  const { edit } = useProfile(source.name);
  return (
    <div className="stack tight">
      <p>
        {count} {count === 1 ? 'cell' : 'cells'} of <ColumnLink column={column} onTarget={onTarget} />{' '}
        {count === 1 ? 'lists' : 'list'} the sizes of several pieces, and a row is one fragment. Which piece
        stands for it?
      </p>
      <p className="small soft">
        <Examples of={source.examples[column.index]} />
      </p>
      <p className="small soft">Until you answer, the largest is read; the others stand in the ledger.</p>
      <div className="line">
        {PIECES.map(({ id, label, done }) => (
          <Button
            key={id}
            look="small"
            label={`Several pieces: ${label.toLowerCase()}`}
            onPress={() => edit((profile) => ({ ...profile, pieces: id }), done)}
          >
            {label}
          </Button>
        ))}
      </div>
    </div>
  );
}

function ColumnLink({ column, onTarget }: Pick<MeasureProps, 'column' | 'onTarget'>) {
  return (
    <button type="button" className="to-column" onClick={() => onTarget({ row: 0, column: column.index })}>
      “{column.header}”
    </button>
  );
}
