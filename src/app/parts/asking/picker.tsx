import {
  Button as AriaButton,
  ComboBox,
  Header,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  Popover,
  Text,
} from 'react-aria-components';

export interface PickerOption {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
}

export interface PickerGroup {
  readonly name: string;
  readonly options: readonly PickerOption[];
}

export interface PickerProps {
  readonly label: string;
  readonly groups: readonly PickerGroup[];
  readonly value: string | null;
  readonly onChange: (id: string) => void;
  readonly quiet?: boolean;
  readonly placeholder?: string;
}

/** One of a long list: typing narrows it, arrow keys walk it. */
export function Picker({ label, groups, value, onChange, quiet, placeholder }: PickerProps) {
  return (
    <ComboBox
      className="field choice"
      defaultItems={groups}
      selectedKey={value}
      onSelectionChange={(key) => key !== null && key !== value && onChange(String(key))}
      menuTrigger="focus"
    >
      <Label className={quiet ? 'hidden-text' : 'label'}>{label}</Label>
      <div className="picker-box">
        <Input className="input" placeholder={placeholder ?? 'type to find'} />
        <AriaButton className="button plain" aria-label="Show all">
          <span aria-hidden="true">▾</span>
        </AriaButton>
      </div>
      <Popover className="popover">
        <ListBox
          className="options"
          renderEmptyState={() => <p className="option soft">Nothing by that name.</p>}
        >
          {groups.map((group) => (
            <ListBoxSection key={group.name} id={`group:${group.name}`}>
              <Header className="group-head">{group.name}</Header>
              {group.options.map((option) => (
                <ListBoxItem key={option.id} id={option.id} className="option" textValue={option.label}>
                  <Text slot="label">{option.label}</Text>
                  {option.note === undefined ? null : (
                    <Text slot="description" className="small soft" style={{ display: 'block' }}>
                      {option.note}
                    </Text>
                  )}
                </ListBoxItem>
              ))}
            </ListBoxSection>
          ))}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
