import { useState } from 'react';
import type { Condition } from '../../../fragments/select-condition.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import type { TypesView } from '../../engine/views/types.ts';
import { ConditionForm } from '../../parts/asking/condition-form.tsx';
import { Button, Check } from '../../parts/controls.tsx';
import { LongEntry } from '../../parts/long-entry.tsx';
import { GroupForm } from './group-form.tsx';
import { freeId, groupOf, type RuleFile, ruleFrom, type TypeDraft } from './rule-file.ts';

export interface RulesFormProps {
  readonly file: RuleFile;
  readonly counts: TypesView | null;
  readonly attributes: readonly AttributeView[];
  readonly onChange: (file: RuleFile, what: string) => void;
}

/** The rules as sentences that can be edited, each with how many records it answers for. */
export function RulesForm({ file, counts, attributes, onChange }: RulesFormProps) {
  const first = firstAttribute(attributes);
  const among = file.among ?? [];
  const setType = (place: number, type: TypeDraft) =>
    onChange({ ...file, types: file.types.with(place, type) }, `the type ${type.label}`);
  return (
    <div className="stack">
      <Line
        key={file.title}
        label="The claim"
        value={file.title}
        onDone={(title) => onChange({ ...file, title }, 'the claim')}
      />
      <Conditions
        name="Speaks of"
        conditions={among}
        attributes={attributes}
        least={0}
        first={first}
        onChange={(next) => onChange({ ...file, among: next }, 'what it speaks of')}
      />
      {file.types.map((type, place) => (
        <TypeForm
          key={type.id}
          type={type}
          place={place}
          count={counts?.types[place]}
          attributes={attributes}
          first={first}
          onChange={(next) => setType(place, next)}
          onRemove={
            file.types.length < 2
              ? null
              : () => onChange({ ...file, types: file.types.toSpliced(place, 1) }, `remove ${type.label}`)
          }
        />
      ))}
      <Button
        look="small"
        onPress={() =>
          onChange(
            {
              ...file,
              types: [
                ...file.types,
                {
                  id: freeId(file.types),
                  label: `Type ${file.types.length + 1}`,
                  when: { attribute: first, known: true },
                },
              ],
            },
            'a new type',
          )
        }
      >
        Add a type
      </Button>
      <Check
        value={file.several === 'undecided'}
        onChange={(strict) =>
          onChange({ ...file, several: strict ? 'undecided' : 'first' }, 'what fits several')
        }
      >
        What fits several types stays undecided
      </Check>
    </div>
  );
}

interface TypeFormProps {
  readonly type: TypeDraft;
  readonly place: number;
  readonly count: TypesView['types'][number] | undefined;
  readonly attributes: readonly AttributeView[];
  readonly first: string;
  readonly onChange: (type: TypeDraft) => void;
  readonly onRemove: (() => void) | null;
}

function TypeForm({ type, place, count, attributes, first, onChange, onRemove }: TypeFormProps) {
  const group = groupOf(type.when);
  return (
    <section className="stack tight" aria-label={`Type ${place + 1}: ${type.label}`}>
      <Line
        key={type.label}
        label={`Type ${place + 1}`}
        value={type.label}
        onDone={(label) => onChange({ ...type, label })}
      />
      {group === null ? (
        <p className="small">{count?.rule ?? 'This rule cannot be read; see what is said beside it.'}</p>
      ) : (
        <GroupForm
          name={type.label}
          group={group}
          attributes={attributes}
          first={first}
          onChange={(next) => onChange({ ...type, when: ruleFrom(next) })}
          onRemove={null}
        />
      )}
      {count === undefined ? null : (
        <p className="small" role="status">
          {count.fits} in, {count.out} out, {count.cannotSay} cannot say
          {count.taken === count.fits ? '' : `; ${count.taken} after the types before it`}
        </p>
      )}
      {onRemove === null ? null : (
        <Button look="plain small" label={`Remove this type: ${type.label}`} onPress={onRemove}>
          Remove this type
        </Button>
      )}
    </section>
  );
}

interface ConditionsProps {
  readonly name: string;
  readonly conditions: readonly Condition[];
  readonly attributes: readonly AttributeView[];
  /** Fewest conditions that must stay. */
  readonly least: number;
  readonly first: string;
  readonly onChange: (conditions: readonly Condition[]) => void;
}

function Conditions({ name, conditions, attributes, least, first, onChange }: ConditionsProps) {
  return (
    <div className="stack tight">
      {least > 0 ? null : (
        <span className="label small">
          {name}
          {conditions.length === 0 ? ' everything' : ''}
        </span>
      )}
      {conditions.map((condition, place) => (
        <ConditionForm
          key={`${place} ${condition.attribute}`}
          condition={condition}
          name={`${name}, condition ${place + 1}`}
          attributes={attributes}
          onChange={(next) => onChange(conditions.with(place, next))}
          onRemove={conditions.length <= least ? null : () => onChange(conditions.toSpliced(place, 1))}
        />
      ))}
      <Button
        look="plain small"
        label={`${conditions.length === 0 ? 'Only where …' : 'and …'} (a condition of ${name})`}
        onPress={() => onChange([...conditions, { attribute: first, known: true }])}
      >
        {conditions.length === 0 ? 'Only where …' : 'and …'}
      </Button>
    </div>
  );
}

/** Text that is taken when the reader is done with it, so that half a word is no change. */
function Line({ label, value, onDone }: { label: string; value: string; onDone: (text: string) => void }) {
  const [text, setText] = useState(value);
  return (
    <LongEntry
      label={label}
      value={text}
      onChange={setText}
      onDone={() => text.trim() !== '' && text !== value && onDone(text)}
    />
  );
}

/** Where a new condition starts: the spacing of the rows, or the number that most records have. */
export function firstAttribute(attributes: readonly AttributeView[]): string {
  const numbers = attributes.filter(({ definition }) => ['ratio', 'interval'].includes(definition.scale));
  const best = numbers.reduce<AttributeView | undefined>(
    (most, one) => (one.definition.unit !== 'year' && one.filled > (most?.filled ?? 0) ? one : most),
    undefined,
  );
  const spacing = numbers.find(({ definition }) => definition.id === 'rowSpacing');
  return (spacing ?? best ?? attributes[0])?.definition.id ?? 'structure';
}
