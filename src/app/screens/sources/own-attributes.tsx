import { useState } from 'react';
import { Label, TextArea, TextField } from 'react-aria-components';
import type { AttributeDefinition, Block, Scale } from '../../../attributes/definition.ts';
import { Button, Check, Choice, Entry } from '../../parts/controls.tsx';
import { FaultNote, Part } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { draftOf, NEW_DRAFT, type OwnDraft, takesUnit, withOwn, withoutOwn } from './own-attribute.ts';

const SCALES: readonly { readonly id: Scale; readonly label: string }[] = [
  { id: 'ratio', label: 'a measurement or count' },
  { id: 'interval', label: 'a number that may be below nought' },
  { id: 'ordinal', label: 'grades in an order' },
  { id: 'nominal', label: 'kinds' },
  { id: 'binary', label: 'yes or no, where two noes agree' },
  { id: 'presence', label: 'yes or no, where two noes say nothing' },
  { id: 'text', label: 'text, kept and not compared' },
];
const BLOCKS: readonly { readonly id: Block; readonly label: string }[] = [
  { id: 'structure', label: 'how it is made' },
  { id: 'spacing', label: 'how densely and how finely' },
  { id: 'fibre', label: 'of what' },
  { id: 'find', label: 'the piece itself' },
  { id: 'context', label: 'where from, when, who' },
];

/** The attributes that the study adds to those that are known: made, changed and taken away. */
export function OwnAttributes() {
  const { workspace, view, change } = useWorkbench();
  const [draft, setDraft] = useState<OwnDraft | null>(null);
  const own = workspace.study.attributes ?? [];
  const used = new Set(
    (view?.sources ?? []).flatMap(({ columns }) => columns.flatMap((one) => one.attributes)),
  );
  const remove = ({ id, label }: AttributeDefinition) =>
    change((now) => ({ ...now, study: withoutOwn(now.study, id) }), `take away the attribute “${label}”`);
  return (
    <Part name="more" title="Attributes of your own">
      <div className="stack tight">
        {own.length > 0 ? null : (
          <p className="small soft">None yet. Whatever a table records can be made one.</p>
        )}
        <ul className="stack tight">
          {own.map((attribute) => (
            <li key={attribute.id} className="line">
              <strong>{attribute.label}</strong>
              <span className="small soft">
                {SCALES.find(({ id }) => id === attribute.scale)?.label}
                {attribute.unit === undefined ? '' : `, in ${attribute.unit}`}
              </span>
              <Button
                look="plain small"
                label={`Change “${attribute.label}”`}
                onPress={() => setDraft(draftOf(workspace.study, attribute))}
              >
                Change
              </Button>
              {used.has(attribute.id) ? null : (
                <Button
                  look="plain small"
                  label={`Take away “${attribute.label}”`}
                  onPress={() => remove(attribute)}
                >
                  Take away
                </Button>
              )}
            </li>
          ))}
        </ul>
        {draft === null ? (
          <div>
            <Button look="small" onPress={() => setDraft(NEW_DRAFT)}>
              Add an attribute
            </Button>
          </div>
        ) : (
          <OwnForm key={draft.id ?? 'new'} start={draft} onClose={() => setDraft(null)} />
        )}
      </div>
    </Part>
  );
}

function OwnForm({ start, onClose }: { start: OwnDraft; onClose: () => void }) {
  const { workspace, change } = useWorkbench();
  const [draft, setDraft] = useState(start);
  const [fault, setFault] = useState<string | null>(null);
  const set = (part: Partial<OwnDraft>) => setDraft((before) => ({ ...before, ...part }));
  const keep = () => {
    const next = withOwn(workspace.study, draft);
    if ('fault' in next) return setFault(next.fault);
    change((now) => ({ ...now, study: next }), `keep the attribute “${draft.label.trim()}”`);
    onClose();
  };
  return (
    <fieldset className="stack tight">
      <legend>{start.id === null ? 'A new attribute' : `The attribute “${start.label}”`}</legend>
      <Entry label="Its name" value={draft.label} onChange={(label) => set({ label })} />
      <Choice
        label="It holds"
        value={draft.scale}
        options={SCALES}
        onChange={(scale) => set({ scale: scale as Scale })}
      />
      <Choice
        label="It is about"
        value={draft.block}
        options={BLOCKS}
        onChange={(block) => set({ block: block as Block })}
      />
      {takesUnit(draft.scale) ? (
        <Entry
          label="Unit"
          suffix="such as mm, g, per cm"
          value={draft.unit}
          onChange={(unit) => set({ unit })}
        />
      ) : null}
      {draft.scale === 'ratio' ? (
        <Check value={draft.log} onChange={(log) => set({ log })}>
          Ratios matter: 2 to 4 is as far as 20 to 40
        </Check>
      ) : null}
      {draft.scale === 'ordinal' ? (
        <Lines
          label="Its grades, the lowest first, one a line"
          value={draft.levels}
          onChange={(levels) => set({ levels })}
        />
      ) : null}
      {draft.scale === 'nominal' ? (
        <Lines
          label="Its kinds, one a line; a narrower one below its broader one, further in. None: every wording is a kind"
          value={draft.terms}
          onChange={(terms) => set({ terms })}
        />
      ) : null}
      {fault === null ? null : <FaultNote text={fault} />}
      <div className="line">
        <Button look="small" onPress={keep}>
          Keep it
        </Button>
        <Button look="plain small" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </fieldset>
  );
}

function Lines({
  label,
  value,
  onChange,
}: {
  label: string;
  value: string;
  onChange: (text: string) => void;
}) {
  return (
    <TextField className="field" value={value} onChange={onChange}>
      <Label className="label">{label}</Label>
      <TextArea className="input" rows={6} />
    </TextField>
  );
}
