import { useMemo } from 'react';
import { Picker } from '../../parts/asking/picker.tsx';
import { useWorkbench } from '../../state/workbench.tsx';

const GROUPS = [
  ['structure', 'Structure'],
  ['spacing', 'Spacing and size of elements'],
  ['fibre', 'Fibre'],
  ['find', 'The piece'],
  ['context', 'Where from, when, who'],
] as const;

export interface AttributePickerProps {
  readonly label: string;
  readonly value: string | null;
  readonly onChange: (attribute: string) => void;
  readonly quiet?: boolean;
}

/** Everything that can be recorded, by block; typing narrows it. */
export function AttributePicker({ label, value, onChange, quiet }: AttributePickerProps) {
  const { view } = useWorkbench();
  const groups = useMemo(
    () =>
      GROUPS.map(([block, name]) => ({
        name,
        options: (view?.register ?? [])
          .filter((attribute) => attribute.block === block)
          .map(({ id, label: text, unit, definition }) => ({
            id,
            label: unit === undefined ? text : `${text} (${unit})`,
            ...(definition === undefined ? {} : { note: definition }),
          })),
      })).filter((group) => group.options.length > 0),
    [view?.register],
  );
  return (
    <Picker
      label={label}
      groups={groups}
      value={value}
      onChange={onChange}
      {...(quiet === undefined ? {} : { quiet })}
    />
  );
}
