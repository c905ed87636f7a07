import type { AttributeView } from '../../engine/views/study.ts';
import { ConditionForm } from '../../parts/asking/condition-form.tsx';
import { Button, Choice } from '../../parts/controls.tsx';
import { isGroup, type Join, type RuleGroup } from './rule-file.ts';

const JOINS: readonly { readonly id: Join; readonly label: string; readonly note: string }[] = [
  { id: 'all', label: 'all of these hold', note: 'one that fails is enough to be out' },
  { id: 'any', label: 'any of these holds', note: 'one that holds is enough to be in' },
  { id: 'none', label: 'none of these holds', note: 'one that holds is enough to be out' },
  { id: 'notAll', label: 'not all of these hold', note: 'one that fails is enough to be in' },
];

export interface GroupFormProps {
  readonly name: string;
  readonly group: RuleGroup;
  readonly attributes: readonly AttributeView[];
  /** Attribute that a new condition starts with. */
  readonly first: string;
  readonly onChange: (group: RuleGroup) => void;
  /** null for the outermost group, which must stay. */
  readonly onRemove: (() => void) | null;
}

/** Conditions and groups of conditions as an indented sentence: "all of these hold: …". */
export function GroupForm({ name, group, attributes, first, onChange, onRemove }: GroupFormProps) {
  const { join, parts } = group;
  const outermost = onRemove === null;
  const alone = outermost && parts.length === 1 && join === 'all';
  const joint = alone || join === 'all' || join === 'notAll' ? 'and …' : 'or …';
  const set = (next: RuleGroup['parts']) => onChange({ ...group, parts: next });
  const removeAt = (place: number) => {
    if (parts.length > 1) return () => set(parts.toSpliced(place, 1));
    return outermost ? null : onRemove;
  };
  return (
    <fieldset className={`rule-group stack tight ${outermost ? '' : 'inner'}`}>
      <legend className="hidden-text">{name}</legend>
      {alone ? null : (
        <Choice
          label={`${name}: how its parts are joined`}
          quiet
          options={JOINS}
          value={join}
          onChange={(id) => onChange({ ...group, join: id as Join })}
        />
      )}
      {parts.map((part, place) => {
        const own = `${name}, ${isGroup(part) ? 'group' : 'condition'} ${place + 1}`;
        const change = (next: typeof part) => set(parts.with(place, next));
        return isGroup(part) ? (
          <GroupForm
            key={`${place} group`}
            name={own}
            group={part}
            attributes={attributes}
            first={first}
            onChange={change}
            onRemove={removeAt(place)}
          />
        ) : (
          <ConditionForm
            key={`${place} ${part.attribute}`}
            condition={part}
            name={own}
            attributes={attributes}
            onChange={change}
            onRemove={removeAt(place)}
          />
        );
      })}
      <div className="line">
        <Button
          look="plain small"
          label={`${joint} (a condition of ${name})`}
          onPress={() => set([...parts, { attribute: first, known: true }])}
        >
          {joint}
        </Button>
        <Button
          look="plain small"
          label={`a group … (of ${name})`}
          onPress={() => set([...parts, { join: 'any', parts: [{ attribute: first, known: true }] }])}
        >
          a group …
        </Button>
        {onRemove === null ? null : (
          <Button look="plain small" label={`Remove this group: ${name}`} onPress={onRemove}>
            Remove this group
          </Button>
        )}
      </div>
    </fieldset>
  );
}
