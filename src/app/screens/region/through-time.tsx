import { chronologyOptions } from '../../../analyses/chronology/options.ts';
import { groupingOptions, kindOptions } from '../../parts/asking/attribute-options.ts';
import { SettingsForm } from '../../parts/asking/settings-form.tsx';
import { Choice } from '../../parts/controls.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import type { AskProps, RegionPicture } from './picture.ts';

function Ask({ asked, attributes, set }: AskProps) {
  const groups = groupingOptions(attributes);
  return (
    <>
      <Choice
        label="Kinds"
        options={kindOptions(attributes)}
        value={String(asked.of)}
        onChange={(of) => set({ of }, 'other kinds')}
      />
      <Choice
        label="Places"
        options={groups}
        value={String(asked.places)}
        onChange={(places) => set({ places }, 'other places')}
      />
      <Choice
        label="Phases"
        options={groups}
        value={String(asked.phases)}
        onChange={(phases) => set({ phases }, 'other phases')}
      />
      <SettingsForm
        schema={chronologyOptions}
        names={['slice']}
        analysis={asked}
        attributes={attributes}
        onSet={set}
      />
    </>
  );
}

export const throughTime: RegionPicture = {
  id: 'time',
  label: 'Through time',
  kind: 'chronology',
  quick: { draws: 0, relabellings: 499 },
  figures: {
    kinds: 'Kinds through time',
    counts: 'All through time',
    spans: 'When, by place',
    kindSpans: 'When, by kind',
    places: 'One panel a place',
    phases: 'Phases in order',
  },
  tables: {
    kinds: 'slices',
    counts: 'slices',
    spans: 'spans',
    kindSpans: 'spans',
    places: 'slices',
    phases: 'phases',
  },
  first: (attributes) => {
    const dated = attributes.find(
      ({ definition, filled }) =>
        definition.id === chronologyOptions.shape.date.parse(undefined) && filled > 0,
    );
    if (dated === undefined)
      return 'No dates are recorded in these tables; map columns to “date” on Sources, or bring a table of places and phases with their years.';
    const kinds = kindOptions(attributes);
    const groups = groupingOptions(attributes);
    const first = (names: readonly string[], offered: readonly { readonly id: string }[]) =>
      names.map((name) => offered.find(({ id }) => id === name)).find((one) => one !== undefined)?.id;
    return {
      id: 'time',
      kind: 'chronology',
      of: first(['kind', 'structure'], kinds) ?? kinds[0]?.id ?? 'structure',
      places: first(['site'], groups) ?? 'assemblage',
      phases: first(['phase', 'period'], groups) ?? 'phase',
    } as StudyAnalysis;
  },
  Ask,
};
