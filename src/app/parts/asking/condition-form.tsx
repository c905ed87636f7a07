import { useState } from 'react';
import type { Condition } from '../../../fragments/select-condition.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import { Button, Choice, Entry } from '../controls.tsx';
import { changed } from './changed-condition.ts';

export interface ConditionFormProps {
  readonly condition: Condition;
  /** Names the condition to those who cannot see where it stands. */
  readonly name: string;
  readonly attributes: readonly AttributeView[];
  readonly onChange: (condition: Condition) => void;
  readonly onRemove: (() => void) | null;
}

/** One condition as a sentence: an attribute, then its limits or its terms. */
export function ConditionForm({ condition, name, attributes, onChange, onRemove }: ConditionFormProps) {
  const view = attributes.find(({ definition }) => definition.id === condition.attribute);
  const numeric = view !== undefined && ['ratio', 'interval'].includes(view.definition.scale);
  const options = attributes
    .filter(({ definition }) => definition.scale !== 'text')
    .map(({ definition, filled, records }) => ({
      id: definition.id,
      label: definition.label,
      note: `${filled} of ${records} have it`,
    }));
  return (
    <fieldset className="find-block stack tight">
      <legend className="hidden-text">{name}</legend>
      <Choice
        label={`${name}: attribute`}
        quiet
        options={options}
        value={condition.attribute}
        onChange={(attribute) => onChange({ attribute, known: true })}
      />
      {numeric ? (
        <div className="limits">
          {(['atLeast', 'below', 'atMost'] as const)
            .filter((limit) => limit !== 'atMost' || condition.atMost !== undefined)
            .map((limit) => (
              <Limit
                key={`${condition.attribute} ${limit} ${condition[limit]}`}
                label={{ atLeast: 'at least', below: 'below', atMost: 'at most' }[limit]}
                unit={view.definition.unit ?? ''}
                value={condition[limit]}
                onChange={(value) => onChange(changed(condition, { [limit]: value }))}
              />
            ))}
        </div>
      ) : (
        <Terms condition={condition} name={name} levels={view?.levels ?? []} onChange={onChange} />
      )}
      {condition.known === undefined ? null : (
        <p className="small soft">{condition.known ? 'is recorded' : 'is not recorded'}</p>
      )}
      {onRemove === null ? null : (
        <Button look="plain small" label={`Remove this condition: ${name}`} onPress={onRemove}>
          Remove this condition
        </Button>
      )}
    </fieldset>
  );
}

interface LimitProps {
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
}

function Limit({ label, unit, value, onChange }: LimitProps) {
  const [text, setText] = useState(value === undefined ? '' : String(value));
  const number = text.trim() === '' ? undefined : Number(text.trim().replace(',', '.'));
  const wrong = number !== undefined && !Number.isFinite(number);
  return (
    <Entry
      label={label}
      suffix={unit}
      value={text}
      invalid={wrong}
      placeholder="any"
      onChange={setText}
      onDone={() => !wrong && number !== value && onChange(number)}
    />
  );
}

interface TermsProps {
  readonly condition: Condition;
  readonly name: string;
  readonly levels: AttributeView['levels'];
  readonly onChange: (condition: Condition) => void;
}

function Terms({ condition, name, levels, onChange }: TermsProps) {
  const chosen = condition.in ?? [];
  const label = (id: string) => levels.find((level) => level.id === id)?.label ?? id;
  return (
    <div className="stack tight">
      {chosen.length === 0 ? null : (
        <ul className="kept-finds" aria-label={`${name}: terms`}>
          {chosen.map((term) => (
            <li key={term} className="line">
              <span>{label(term)}</span>
              <Button
                look="plain small"
                label={`Remove ${label(term)} from ${name}`}
                onPress={() => onChange(changed(condition, { in: chosen.filter((other) => other !== term) }))}
              >
                remove
              </Button>
            </li>
          ))}
        </ul>
      )}
      {condition.notIn === undefined ? null : (
        <p className="small soft">but not {condition.notIn.map(label).join(' or ')}</p>
      )}
      <Choice
        label={`${name}: add a term`}
        quiet
        placeholder={chosen.length === 0 ? 'is …' : 'or …'}
        value={null}
        options={levels
          .filter(({ id }) => !chosen.includes(id))
          .map(({ id, label: text, count }) => ({ id, label: text, note: String(count) }))}
        onChange={(term) => onChange(changed(condition, { in: [...chosen, term] }))}
      />
    </div>
  );
}
