import type { ReactNode } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';

interface LongEntryProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onDone: () => void;
  readonly placeholder?: string;
  /** Stands under the field: how the text is read. */
  readonly reading?: ReactNode;
}

/** One line of text that a narrow column would cut: the field grows by as many lines as it takes; Enter ends it as in any other. */
export function LongEntry({ label, value, onChange, onDone, placeholder, reading }: LongEntryProps) {
  return (
    <TextField className="field" value={value} onChange={(text) => onChange(text.replace(/[\r\n]+/g, ' '))}>
      <Label className="label">{label}</Label>
      <TextArea
        className="input grows"
        rows={1}
        {...(placeholder === undefined ? {} : { placeholder })}
        onBlur={onDone}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          onDone();
        }}
      />
      {reading === undefined ? null : (
        <Text slot="description" className="small soft reading">
          {reading}
        </Text>
      )}
    </TextField>
  );
}
