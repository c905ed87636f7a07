import type { ReactNode } from 'react';
import {
  Button as AriaButton,
  Checkbox as AriaCheckbox,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  Slider,
  SliderOutput,
  SliderThumb,
  SliderTrack,
  Text,
  TextField,
  ToggleButton,
  ToggleButtonGroup,
} from 'react-aria-components';

/** The controls of the workbench: react-aria behaviour in our own dress. */

export interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress: () => void;
  readonly look?: 'main' | 'plain' | 'plain small' | 'small';
  readonly disabled?: boolean;
  /** Said instead of the text where the text alone would be unclear out of its place. */
  readonly label?: string;
}

export function Button({ children, onPress, look, disabled, label }: ButtonProps) {
  return (
    <AriaButton
      className={`button ${look ?? ''}`}
      onPress={onPress}
      isDisabled={disabled ?? false}
      {...(label === undefined ? {} : { 'aria-label': label })}
    >
      {children}
    </AriaButton>
  );
}

export interface ChoiceOption {
  readonly id: string;
  readonly label: string;
  /** Second line of the option. */
  readonly note?: string;
}

export interface ChoiceProps {
  readonly label: string;
  readonly options: readonly ChoiceOption[];
  readonly value: string | null;
  readonly onChange: (id: string) => void;
  /** Keeps the label for screen readers only. */
  readonly quiet?: boolean;
  readonly placeholder?: string;
}

/** One of a short closed list. */
export function Choice({ label, options, value, onChange, quiet, placeholder }: ChoiceProps) {
  return (
    <Select
      className="field choice"
      value={value}
      onChange={(key) => key !== null && onChange(String(key))}
      placeholder={placeholder ?? 'choose'}
    >
      <Label className={quiet ? 'hidden-text' : 'label'}>{label}</Label>
      <AriaButton className="button">
        <SelectValue>{({ selectedText, defaultChildren }) => selectedText || defaultChildren}</SelectValue>
        <span aria-hidden="true" className="mark">
          ▾
        </span>
      </AriaButton>
      <Popover className="popover">
        <ListBox className="options" items={options}>
          {(option) => (
            <ListBoxItem id={option.id} className="option" textValue={option.label}>
              <Text slot="label">{option.label}</Text>
              {option.note === undefined ? null : (
                <Text slot="description" className="small soft" style={{ display: 'block' }}>
                  {option.note}
                </Text>
              )}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}

export interface TogglesProps {
  readonly label: string;
  readonly options: readonly ChoiceOption[];
  readonly value: string;
  readonly onChange: (id: string) => void;
}

/** One of two to four, all in sight. */
export function Toggles({ label, options, value, onChange }: TogglesProps) {
  return (
    <ToggleButtonGroup
      className="toggles"
      aria-label={label}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[value]}
      onSelectionChange={(keys) => {
        const [first] = keys;
        if (first !== undefined && first !== value) onChange(String(first));
      }}
    >
      {options.map((option) => (
        <ToggleButton key={option.id} id={option.id} className="button">
          {option.label}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

export interface CheckProps {
  readonly children: ReactNode;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
  readonly label?: string;
}

export function Check({ children, value, onChange, label }: CheckProps) {
  return (
    <AriaCheckbox
      className="check"
      isSelected={value}
      onChange={onChange}
      {...(label === undefined ? {} : { 'aria-label': label })}
    >
      <span className="box" aria-hidden="true">
        <svg viewBox="0 0 12 12" aria-hidden="true">
          <path d="M2 6.5 5 9.5 10 3" />
        </svg>
      </span>
      <span>{children}</span>
    </AriaCheckbox>
  );
}

export interface AmountProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly onChangeEnd?: (value: number) => void;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly format?: (value: number) => string;
  /** Colour of the filled part, as a CSS value. */
  readonly thread?: string;
}

/** A number by dragging or with the arrow keys. */
export function Amount(props: AmountProps) {
  const { label, value, onChange, onChangeEnd, least, most, step, format, thread } = props;
  return (
    <Slider
      className="slider"
      value={value}
      onChange={onChange}
      {...(onChangeEnd === undefined ? {} : { onChangeEnd })}
      minValue={least}
      maxValue={most}
      step={step}
      style={thread === undefined ? {} : ({ '--thread': thread } as React.CSSProperties)}
    >
      <Label>{label}</Label>
      <SliderOutput>{format === undefined ? String(value) : format(value)}</SliderOutput>
      <SliderTrack className="track">
        {({ state }) => (
          <>
            <div className="fill" style={{ width: `${state.getThumbPercent(0) * 100}%` }} />
            <SliderThumb className="thumb" />
          </>
        )}
      </SliderTrack>
    </Slider>
  );
}

export interface EntryProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onDone?: () => void;
  readonly placeholder?: string;
  readonly quiet?: boolean;
  /** Stands under the field: how the text is read. */
  readonly reading?: ReactNode;
  readonly invalid?: boolean;
  readonly suffix?: string;
  /** Texts that are offered while typing; any other may be typed as well. */
  readonly proposals?: {
    readonly id: string;
    readonly options: readonly { readonly id: string; readonly label: string }[];
  };
}

/** A line of text. */
export function Entry(props: EntryProps) {
  const { label, value, onChange, onDone, placeholder, quiet, reading, invalid, suffix, proposals } = props;
  return (
    <TextField className="field" value={value} onChange={onChange} isInvalid={invalid ?? false}>
      <Label className={quiet ? 'hidden-text' : 'label'}>
        {label}
        {suffix === undefined ? null : <span className="soft"> {suffix}</span>}
      </Label>
      <Input
        className="input"
        {...(placeholder === undefined ? {} : { placeholder })}
        {...(proposals === undefined ? {} : { list: proposals.id })}
        onBlur={() => onDone?.()}
        onKeyDown={(event) => event.key === 'Enter' && onDone?.()}
      />
      {proposals === undefined ? null : (
        <datalist id={proposals.id}>
          {proposals.options.map(({ id, label: said }) => (
            <option key={id} value={id}>
              {said}
            </option>
          ))}
        </datalist>
      )}
      {reading === undefined ? null : (
        <Text slot="description" className="small soft reading">
          {reading}
        </Text>
      )}
    </TextField>
  );
}
