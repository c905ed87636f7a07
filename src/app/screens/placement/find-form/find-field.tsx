import type { DescribedView } from '../../../engine/protocol.ts';
import { Picker } from '../../../parts/asking/picker.tsx';
import { Button, Choice, Entry } from '../../../parts/controls.tsx';
import type { Field } from './fields.ts';
import { useTyped } from './use-asked.ts';

interface FindFieldProps {
  readonly field: Field;
  readonly text: string;
  /** What the description of the structure says of it; what is entered here goes before that. */
  readonly told: DescribedView['facets'][number] | null;
  readonly onDraft: (text: string) => void;
  readonly onKeep: (text: string) => void;
}

/** One measurement, kind or grade of the find, with how it is read. */
export function FindField({ field, text, told, onDraft, onKeep }: FindFieldProps) {
  const { definition, groups } = field;
  const numeric = definition.scale === 'ratio' || definition.scale === 'interval';
  const reading = useTyped(definition.id, text);
  if (numeric)
    return (
      <Entry
        label={definition.label}
        suffix={definition.unit === undefined ? '' : definition.unit}
        value={text}
        onChange={onDraft}
        onDone={() => onKeep(text)}
        placeholder={told === null ? 'unknown' : `${told.said}, as described`}
        invalid={reading !== null && !reading.understood}
        {...(reading === null || reading.said === ''
          ? {}
          : {
              reading: `read as ${reading.said}${reading.warnings.length > 0 ? `; ${reading.warnings.join(' ')}` : ''}`,
            })}
      />
    );
  const options = groups.flatMap((group) => group.options);
  const named = (wanted: string | undefined) =>
    options.find(({ id, label }) => id === wanted || label.toLowerCase() === wanted?.toLowerCase())?.id;
  const own = named(text) ?? options.find(({ id }) => text !== '' && id === reading?.term)?.id;
  const described = text === '' ? told : null;
  const value = own ?? named(described?.value) ?? null;
  const odd = text !== '' && named(text) === undefined;
  return (
    <div className="with-clear">
      {options.length > 8 ? (
        <Picker
          label={definition.label}
          groups={groups}
          value={value}
          onChange={onKeep}
          placeholder="unknown"
        />
      ) : (
        <Choice
          label={definition.label}
          options={options}
          value={value}
          onChange={onKeep}
          placeholder="unknown"
        />
      )}
      {odd ? (
        <span className="small soft">
          “{text}” {reading === null || reading.said === '' ? '' : `read as ${reading.said}`}
        </span>
      ) : null}
      {described === null ? null : <span className="small soft">{described.said}, as described</span>}
      {text === '' && told === null ? null : (
        <Clear
          label={definition.label}
          told={told !== null}
          own={text !== ''}
          onPress={() => onKeep(text === '' ? '?' : '')}
        />
      )}
    </div>
  );
}

/** Takes an entry out; where the description says otherwise, it holds again, or is set aside for this one thing. */
function Clear(props: {
  readonly label: string;
  readonly told: boolean;
  readonly own: boolean;
  readonly onPress: () => void;
}) {
  const back = props.told && props.own;
  return (
    <Button
      look="plain small"
      label={`${props.label} ${back ? 'as described' : 'is unknown'}`}
      onPress={props.onPress}
    >
      {back ? 'as described' : 'unknown'}
    </Button>
  );
}
