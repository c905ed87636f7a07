import { useState } from 'react';
import { threadcountOptions } from '../../../analyses/threadcount/options.ts';
import { groupingOptions, numberOptions } from '../../parts/asking/attribute-options.ts';
import { SettingsForm } from '../../parts/asking/settings-form.tsx';
import { Choice, Entry } from '../../parts/controls.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import type { AskProps, RegionPicture } from './picture.ts';

const USUAL = ['density1', 'density2'];

function Ask({ asked, attributes, set }: AskProps) {
  const numbers = numberOptions(attributes);
  const find = (asked.find ?? {}) as Readonly<Record<string, string>>;
  const labelOf = (id: unknown) => numbers.find((one) => one.id === id)?.label ?? String(id);
  const sides = [
    ['x', 'Across', 'another measurement across'],
    ['y', 'Up', 'another measurement up'],
  ] as const;
  return (
    <>
      {sides.map(([side, label, what]) => (
        <Choice
          key={side}
          label={label}
          options={numbers}
          value={String(asked[side])}
          onChange={(id) => set({ [side]: id, find: {} }, what)}
        />
      ))}
      <Choice
        label="Symbols by"
        options={groupingOptions(attributes)}
        value={String(asked.by)}
        onChange={(by) => set({ by }, 'other symbols')}
      />
      <SettingsForm
        schema={threadcountOptions}
        names={['scale']}
        analysis={asked}
        attributes={attributes}
        onSet={set}
      />
      {sides.map(([side]) => {
        const id = String(asked[side]);
        return (
          <FindEntry
            key={`${side} ${id} ${find[id] ?? ''}`}
            label={`The find: ${labelOf(id)}`}
            text={find[id] ?? ''}
            onDone={(text) => set({ find: withText(find, id, text) }, 'the find')}
          />
        );
      })}
    </>
  );
}

function withText(find: Readonly<Record<string, string>>, id: string, text: string) {
  const { [id]: _, ...others } = find;
  return text.trim() === '' ? others : { ...others, [id]: text.trim() };
}

interface FindEntryProps {
  readonly label: string;
  readonly text: string;
  readonly onDone: (text: string) => void;
}

function FindEntry({ label, text, onDone }: FindEntryProps) {
  const [draft, setDraft] = useState(text);
  return (
    <Entry
      label={label}
      value={draft}
      onChange={setDraft}
      placeholder="none marked"
      onDone={() => {
        if (draft.trim() !== text) onDone(draft);
      }}
    />
  );
}

export const threadCounts: RegionPicture = {
  id: 'counts',
  label: 'Thread counts against each other',
  heading: ({ x, y }, attributes) => {
    const [across, up] = [x, y].map(
      (id) => attributes.find(({ definition }) => definition.id === id)?.definition.label,
    );
    return across === undefined || up === undefined
      ? 'Two measurements against each other'
      : `${across} against ${up.toLowerCase()}`;
  },
  kind: 'threadcount',
  quick: { draws: 0 },
  figures: { counts: 'All together', panels: 'One panel each', ratio: 'Their ratio' },
  tables: { counts: 'points', panels: 'relation', ratio: 'relation' },
  first: (attributes) => {
    const numbers = numberOptions(attributes).map(({ id }) => id);
    const usual = USUAL.every((id) => numbers.includes(id)) ? USUAL : numbers.slice(0, 2);
    const [x, y] = usual;
    if (x === undefined || y === undefined)
      return 'Fewer than two measurements are recorded in these tables, so there is nothing to set against each other.';
    const groups = groupingOptions(attributes);
    const by = ['kind', 'structure']
      .map((id) => groups.find((one) => one.id === id))
      .find((one) => one !== undefined);
    return {
      id: 'threads',
      kind: 'threadcount',
      x,
      y,
      by: by?.id ?? groups[0]?.id ?? 'site',
    } as StudyAnalysis;
  },
  Ask,
};
