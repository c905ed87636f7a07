import { useState } from 'react';
import { Button as AriaButton, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import { printBehind } from '../analyses/phrasing.ts';
import type { AttributeView } from './engine/views/study.ts';
import { Button, Check, Choice, Entry } from './parts/controls.tsx';
import { count } from './parts/numbers.ts';
import { useWorkbench } from './state/workbench.tsx';
import { type SelectionCondition, withStudy } from './state/workspace.ts';

/** The selection, in words, with a way to narrow it and to lift each condition. */
export function SelectionBar() {
  const { workspace, view, change } = useWorkbench();
  const conditions = workspace.study.select ?? [];
  if (view === null) return null;
  const attributeOf = (id: string) => view.attributes.find(({ definition }) => definition.id === id);
  return (
    <div className="line selection">
      <span>
        {conditions.length === 0
          ? `All ${printBehind(view, view.witness)}`
          : `${count(view.selected, 'fragment')} of ${view.fragments}, only where`}
      </span>
      {conditions.map((condition, i) => {
        const said = conditionWords(condition, attributeOf(condition.attribute));
        return (
          <span className="chip" key={said}>
            {said}
            <AriaButton
              className="lift"
              aria-label={`Lift the condition: ${said}`}
              onPress={() =>
                change(
                  (now) => withStudy(now, { select: (now.study.select ?? []).filter((_, at) => at !== i) }),
                  `lift “${said}”`,
                )
              }
            >
              <span aria-hidden="true">×</span>
            </AriaButton>
          </span>
        );
      })}
      <DialogTrigger>
        <AriaButton className="button small plain">Narrow</AriaButton>
        <Popover className="popover narrow" placement="bottom start">
          <Dialog className="stack">{({ close }) => <NarrowForm onDone={close} />}</Dialog>
        </Popover>
      </DialogTrigger>
    </div>
  );
}

const CERTAINTY = {
  certain: 'is certain',
  probable: 'is at least probable',
  possible: 'is at least possible',
} as const;

function conditionWords(condition: SelectionCondition, attribute: AttributeView | undefined): string {
  const label = attribute?.definition.label ?? condition.attribute;
  const unit = attribute?.definition.unit === undefined ? '' : ` ${attribute.definition.unit}`;
  const parts: string[] = [];
  if (condition.in !== undefined) {
    const labels = condition.in.map((id) => attribute?.levels.find((level) => level.id === id)?.label ?? id);
    parts.push(`is ${labels.join(' or ')}`);
  }
  if (condition.atLeast !== undefined) parts.push(`is at least ${condition.atLeast}${unit}`);
  if (condition.atMost !== undefined) parts.push(`is at most ${condition.atMost}${unit}`);
  if (condition.certainty !== undefined) parts.push(CERTAINTY[condition.certainty]);
  return `${label} ${parts.join(' and ')}`;
}

function NarrowForm({ onDone }: { onDone: () => void }) {
  const { view, change } = useWorkbench();
  const [attribute, setAttribute] = useState<string | null>(null);
  const [kinds, setKinds] = useState<readonly string[]>([]);
  const [least, setLeast] = useState('');
  const [most, setMost] = useState('');
  const [certain, setCertain] = useState(false);
  const usable = (view?.attributes ?? []).filter(({ definition }) => definition.scale !== 'text');
  const chosen = usable.find(({ definition }) => definition.id === attribute);
  const numeric = chosen?.definition.scale === 'ratio' || chosen?.definition.scale === 'interval';
  const bound = (text: string) => (text.trim() === '' ? undefined : Number(text.replace(',', '.')));
  const [low, high] = [bound(least), bound(most)];
  const broken = [low, high].some((value) => value !== undefined && !Number.isFinite(value));
  const ready =
    chosen !== undefined &&
    !broken &&
    (numeric ? low !== undefined || high !== undefined : kinds.length > 0 || certain);
  const apply = () => {
    if (chosen === undefined) return;
    const condition: SelectionCondition = numeric
      ? {
          attribute: chosen.definition.id,
          ...(low === undefined ? {} : { atLeast: low }),
          ...(high === undefined ? {} : { atMost: high }),
        }
      : {
          attribute: chosen.definition.id,
          ...(kinds.length === 0 ? {} : { in: kinds }),
          ...(certain ? { certainty: 'certain' as const } : {}),
        };
    change(
      (now) => withStudy(now, { select: [...(now.study.select ?? []), condition] }),
      `only where ${conditionWords(condition, chosen)}`,
    );
    onDone();
  };
  return (
    <>
      <Heading slot="title" className="hidden-text">
        Narrow the selection
      </Heading>
      <Choice
        label="Only fragments whose"
        value={attribute}
        options={usable.map(({ definition }) => ({ id: definition.id, label: definition.label }))}
        onChange={(id) => {
          setAttribute(id);
          setKinds([]);
          setCertain(false);
        }}
      />
      {chosen === undefined ? null : numeric ? (
        <div className="pair">
          <Entry
            label="is at least"
            value={least}
            onChange={setLeast}
            suffix={chosen.definition.unit ?? ''}
          />
          <Entry label="and at most" value={most} onChange={setMost} suffix={chosen.definition.unit ?? ''} />
        </div>
      ) : (
        <fieldset className="stack tight kinds">
          <legend className="small">is one of</legend>
          {chosen.levels.map((level) => (
            <Check
              key={level.id}
              value={kinds.includes(level.id)}
              onChange={(on) => setKinds(on ? [...kinds, level.id] : kinds.filter((id) => id !== level.id))}
            >
              {level.label} <span className="soft">({level.count})</span>
            </Check>
          ))}
          <Check value={certain} onChange={setCertain}>
            and only where that is certain, without “?” or “cf.”
          </Check>
        </fieldset>
      )}
      {broken ? <p className="small">Type a plain number, such as 2.5.</p> : null}
      <div>
        <Button look="main" disabled={!ready} onPress={apply}>
          Keep only these
        </Button>
      </div>
    </>
  );
}
