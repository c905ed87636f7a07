import { useState } from 'react';
import type { z } from 'zod';
import type { AttributeView } from '../../engine/views/study.ts';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { Check, Choice, Entry } from '../controls.tsx';
import {
  allowedNumber,
  boundsInWords,
  leavesOut,
  type Setting,
  type SettingValue,
  settingsOf,
} from './settings.ts';

export interface SettingsFormProps {
  /** Options of the analysis; titles, texts, bounds and defaults are taken from it. */
  readonly schema: z.ZodObject;
  readonly names: readonly string[];
  readonly analysis: StudyAnalysis;
  readonly attributes: readonly AttributeView[];
  /** Values that this screen does not offer, such as `method.ca`. */
  readonly without?: readonly string[];
  readonly onSet: (options: Readonly<Record<string, unknown>>, what: string) => void;
}

/** The named options of an analysis, each as its schema describes it. */
export function SettingsForm({ schema, names, analysis, attributes, without, onSet }: SettingsFormProps) {
  return (
    <div className="stack tight settings">
      {settingsOf(schema, names).map((setting) => (
        <div key={setting.name} className="stack tight">
          <SettingField
            key={String(analysis[setting.name])}
            setting={setting}
            value={analysis[setting.name]}
            attributes={attributes}
            without={without ?? []}
            onChange={(value, said) => onSet({ [setting.name]: value }, said)}
          />
          {setting.description === '' ? null : <p className="small soft">{setting.description}</p>}
        </div>
      ))}
    </div>
  );
}

interface SettingFieldProps {
  readonly setting: Setting;
  readonly value: unknown;
  readonly attributes: readonly AttributeView[];
  readonly without: readonly string[];
  readonly onChange: (value: unknown, said: string) => void;
}

const NONE = '';

/** A value by the words of its description rather than by its name in a study; what follows them stands below. */
function wordsOf({ id, note }: SettingValue) {
  const [label, ...more] = note.split('; ');
  return {
    id,
    label: label === '' ? id.replace('-', ' ') : label,
    ...(more.length === 0 ? {} : { note: more.join('; ') }),
  };
}

function SettingField({ setting, value, attributes, without, onChange }: SettingFieldProps) {
  const { title } = setting;
  const said = title.toLowerCase();
  switch (setting.kind) {
    case 'choice':
      return (
        <Choice
          label={title}
          value={String(value ?? setting.usual)}
          options={setting.values.filter(({ id }) => !without.includes(`${setting.name}.${id}`)).map(wordsOf)}
          onChange={(id) => onChange(id, `${said}: ${id}`)}
        />
      );
    case 'yes-no':
      return (
        <Check
          value={value === undefined ? setting.usual : value === true}
          onChange={(on) => onChange(on, `${said}: ${on ? 'yes' : 'no'}`)}
        >
          {title}
        </Check>
      );
    case 'number':
      return <NumberField setting={setting} value={value} onChange={onChange} />;
    case 'attribute':
      return (
        <Choice
          label={title}
          value={String(value ?? NONE)}
          options={[
            { id: NONE, label: 'nothing' },
            ...attributes
              .filter(({ levels }) => levels.length >= 2)
              .map(({ definition, levels }) => ({
                id: definition.id,
                label: definition.label,
                note: `${levels.length} kinds`,
              })),
          ]}
          onChange={(id) =>
            onChange(id === NONE ? undefined : id, `${said}: ${id === NONE ? 'nothing' : id}`)
          }
        />
      );
  }
}

export interface NumberFieldProps extends Pick<SettingFieldProps, 'value' | 'onChange'> {
  readonly setting: Extract<Setting, { kind: 'number' }>;
}

/** A number that is taken when the field is left, if the setting allows it. */
export function NumberField({ setting, value, onChange }: NumberFieldProps) {
  const current = value === undefined ? setting.usual : Number(value);
  const [text, setText] = useState(current === null ? '' : String(current));
  const number = allowedNumber(setting, text);
  const none = leavesOut(setting, text);
  const faulty = number === null && !none;
  return (
    <Entry
      label={setting.title}
      value={text}
      onChange={setText}
      invalid={faulty}
      {...(setting.usual === null ? { placeholder: 'as the finds give it' } : {})}
      {...(faulty ? { reading: `Must be ${boundsInWords(setting)}.` } : {})}
      onDone={() => {
        if (none && current !== null) onChange(undefined, `${setting.title.toLowerCase()}: not given`);
        if (number !== null && number !== current)
          onChange(number, `${setting.title.toLowerCase()}: ${number}`);
      }}
    />
  );
}
