import { mapOptions } from '../../../analyses/map/options.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import { COEFFICIENTS, groupingOptions, kindOptions } from '../../parts/asking/attribute-options.ts';
import { Choice } from '../../parts/controls.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import type { AskProps, RegionPicture } from './picture.ts';

const USUAL = 'latitude and longitude';

/** Attributes of the context that are numbers in a unit of length or angle, as pairs of neighbours. */
function coordinatePairs(attributes: readonly AttributeView[]) {
  const sides = attributes.filter(
    ({ definition, filled }) =>
      filled > 0 && definition.block === 'context' && ['km', 'm', 'degree'].includes(definition.unit ?? ''),
  );
  const has = (id: string) => sides.some(({ definition }) => definition.id === id);
  const grid = sides.filter(({ definition }) => !['latitude', 'longitude'].includes(definition.id));
  const pairs = grid.flatMap(({ definition: first }) =>
    grid.flatMap(({ definition: second }) =>
      first.id !== second.id && first.unit === second.unit
        ? [
            {
              id: `${first.id} ${second.id}`,
              label: `${first.label} (across) and ${second.label.toLowerCase()} (up)`,
            },
          ]
        : [],
    ),
  );
  return [...(has('latitude') && has('longitude') ? [{ id: USUAL, label: USUAL }] : []), ...pairs];
}

function Ask({ asked, attributes, set }: AskProps) {
  const own = (id: unknown) => attributes.find(({ definition }) => definition.id === id);
  const places = (own(asked.assemblages)?.levels ?? []).map(({ label }) => ({ id: label, label }));
  const kinds = kindOptions(attributes).filter(({ id }) => id !== asked.assemblages);
  const terms = (own(asked.of)?.levels ?? []).map(({ label, count }) => ({
    id: label,
    label,
    note: String(count),
  }));
  const pairs = coordinatePairs(attributes);
  const named = (asked.places as readonly string[] | undefined)?.join(' ') ?? USUAL;
  return (
    <>
      <Choice
        label="Places"
        options={groupingOptions(attributes)}
        value={String(asked.assemblages)}
        onChange={(assemblages) => set({ assemblages, to: undefined }, 'other places')}
      />
      <Choice
        label="in their"
        options={kinds}
        value={String(asked.of)}
        onChange={(of) => set({ of, share: undefined }, 'other kinds')}
      />
      {pairs.length === 0 ? (
        <p className="small soft">No coordinates are recorded; the network is drawn without them.</p>
      ) : (
        <Choice
          label="Coordinates"
          options={pairs}
          value={named}
          onChange={(id) => set({ places: id === USUAL ? undefined : id.split(' ') }, 'other coordinates')}
        />
      )}
      <Choice
        label="Likeness to"
        options={places}
        value={asked.to === undefined ? null : String(asked.to)}
        placeholder="the largest"
        onChange={(to) => set({ to }, 'another place asked')}
      />
      <Choice
        label="Share of"
        options={terms}
        value={asked.share === undefined ? null : String(asked.share)}
        placeholder="what differs most"
        onChange={(share) => set({ share }, 'another kind')}
      />
      <Choice
        label="Groups by"
        options={groupingOptions(attributes)}
        value={String(asked.group ?? mapOptions.shape.group.parse(undefined))}
        onChange={(group) => set({ group }, 'other groups')}
      />
      <Choice
        label="Likeness by"
        options={COEFFICIENTS}
        value={mapOptions.shape.coefficient.parse(asked.coefficient)}
        onChange={(coefficient) => set({ coefficient }, 'another coefficient')}
      />
    </>
  );
}

export const placesMap: RegionPicture = {
  id: 'map',
  label: 'Map and network of places',
  kind: 'map',
  quick: { deals: 499 },
  figures: {
    likeness: 'Likeness to one place',
    share: 'Share of a kind',
    groups: 'By groups',
    network: 'Network',
  },
  tables: { likeness: 'places', share: 'places', groups: 'places', network: 'lines' },
  first: (attributes) => {
    const places = groupingOptions(attributes).find(({ id }) => id === 'site');
    const offered = kindOptions(attributes);
    const kinds =
      ['kind', 'structure']
        .map((id) => offered.find((one) => one.id === id))
        .find((one) => one !== undefined) ?? offered[0];
    if (places === undefined || kinds === undefined)
      return 'Places and kinds of at least two sorts are needed; map columns to “site” and “structure” on Sources.';
    const [pair] = coordinatePairs(attributes);
    return {
      id: 'map',
      kind: 'map',
      assemblages: places.id,
      of: kinds.id,
      ...(pair === undefined || pair.id === USUAL ? {} : { places: pair.id.split(' ') }),
    } as StudyAnalysis;
  },
  Ask,
};
