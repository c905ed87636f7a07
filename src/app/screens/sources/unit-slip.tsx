import type { ColumnSlip } from '../../../sources/quality/bounds.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { useProfile } from './use-profile.ts';

/** "written in cm, read as mm?" names the unit that the column may really be in. */
export function SlipLine({ source, slip, label }: { source: SourceView; slip: ColumnSlip; label: string }) {
  const { column: setRule } = useProfile(source.name);
  const column = source.columns.find(
    ({ attributes }) => attributes.length === 1 && attributes[0] === slip.attribute,
  );
  const unit = /^(?:written in|counted) ([^,]+),/.exec(slip.likely)?.[1]?.replace('inches', 'inch');
  return (
    <li>
      {label}: {slip.outside} of {slip.readings} readings are unusual; {slip.likely}{' '}
      {column === undefined || unit === undefined ? null : (
        <Button
          look="small"
          label={`“${column.header}” is in ${unit}`}
          onPress={() =>
            setRule(column.header, { attribute: slip.attribute, unit }, `“${column.header}” is in ${unit}`)
          }
        >
          It is in {unit.replace(/^per/, 'counts per')}
        </Button>
      )}
    </li>
  );
}
