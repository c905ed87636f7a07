import { standingOptions } from '../../../analyses/standing/options.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import { COEFFICIENTS, groupingOptions, kindOptions } from '../../parts/asking/attribute-options.ts';
import { Check, Choice } from '../../parts/controls.tsx';
import { useLabels } from '../../parts/use-labels.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

export interface SiteFormProps {
  readonly asked: StudyAnalysis;
  readonly sites: readonly string[];
  readonly onSet: (options: Readonly<Record<string, unknown>>, what: string) => void;
}

/** The question without what the study says about it. */
function optionsOf({ id: _id, kind: _kind, title: _title, ...options }: StudyAnalysis) {
  return options;
}

/** What may bound a region, in space or in time. */
const BOUNDS = ['region', 'period', 'phase'];
const NOTHING = '';
const ASSEMBLAGE = ['assemblage'];

/** Which site, among which others, in what. */
export function SiteForm({ asked, sites, onSet }: SiteFormProps) {
  const { view } = useWorkbench();
  const attributes = view?.attributes ?? [];
  const among = String(asked.among);
  const assemblages = useLabels(ASSEMBLAGE)?.labels.assemblage ?? [];
  const firstOf = (id: string) =>
    id === 'assemblage'
      ? assemblages.find((label) => label !== '')
      : attributes.find(({ definition }) => definition.id === id)?.levels[0]?.label;
  const { confineTo, sameWithin, coefficient } = standingOptions.parse(optionsOf(asked));
  const [like] = sameWithin;
  const kinds = kindOptions(attributes);
  const bounds = attributes.filter(
    ({ definition, levels }) =>
      BOUNDS.includes(definition.id) && definition.id !== among && levels.length > 1,
  );
  return (
    <div className="stack">
      <Choice
        label="The site"
        options={sites.map((label) => ({ id: label, label }))}
        value={String(asked.site)}
        onChange={(site) => onSet({ site }, `place ${site}`)}
      />
      <Choice
        label="as one of the groups by"
        options={groupingOptions(attributes)}
        value={among}
        onChange={(id) =>
          onSet({ among: id, site: firstOf(id), confineTo: [] }, 'place another kind of group')
        }
      />
      {bounds.length === 0 ? null : (
        <fieldset className="stack tight kinds">
          <legend className="label">set against</legend>
          {bounds.map(({ definition: { id, label } }) => (
            <Check
              key={id}
              value={confineTo.includes(id)}
              onChange={(on) =>
                onSet(
                  { confineTo: on ? [...confineTo, id] : confineTo.filter((one) => one !== id) },
                  on ? `only its own ${label.toLowerCase()}` : `every ${label.toLowerCase()}`,
                )
              }
            >
              only its own {label.toLowerCase()}
            </Check>
          ))}
          <p className="small soft">
            {confineTo.length === 0
              ? 'All others in these tables.'
              : 'Only what shares the commonest value of the site.'}
          </p>
        </fieldset>
      )}
      <Choice
        label="in the counts of"
        options={kinds.filter(({ id }) => id !== among)}
        value={String(asked.of)}
        onChange={(of) => onSet({ of }, 'place it by other kinds')}
      />
      <Choice
        label="Likeness by"
        options={COEFFICIENTS}
        value={coefficient}
        onChange={(id) => onSet({ coefficient: id }, 'another coefficient')}
      />
      <Choice
        label="Once more within the same"
        options={[
          { id: NOTHING, label: 'nothing' },
          ...kinds.filter(({ id }) => id !== among && id !== asked.of),
        ]}
        value={kinds.some(({ id }) => id === like) ? (like as string) : NOTHING}
        onChange={(id) => onSet({ sameWithin: id === NOTHING ? [] : [id] }, 'like with like')}
      />
      <p className="small soft">
        What differs may differ by what was preserved or how it was dug: likeness is told once more among
        items alike in this.
      </p>
      <Places asked={asked} attributes={attributes} onSet={onSet} />
    </div>
  );
}

/** Where the sites lie, where no latitude and longitude are recorded. */
function Places({
  asked,
  attributes,
  onSet,
}: Pick<SiteFormProps, 'asked' | 'onSet'> & { attributes: readonly AttributeView[] }) {
  const numbers = attributes.filter(
    ({ definition, filled }) =>
      filled > 0 &&
      definition.block === 'context' &&
      ['ratio', 'interval'].includes(definition.scale) &&
      definition.unit !== 'year',
  );
  if (numbers.length < 2 || numbers.some(({ definition }) => definition.id === 'latitude')) return null;
  const [east, north] = (asked.places as readonly string[] | undefined) ?? [];
  const options = numbers.map(({ definition: { id, label } }) => ({ id, label: label.toLowerCase() }));
  const set = (pair: readonly (string | undefined)[]) => {
    const [a, b] = [pair[0] ?? options[0]?.id, pair[1] ?? options.find(({ id }) => id !== pair[0])?.id];
    onSet({ places: [a, b] }, 'where the sites lie');
  };
  return (
    <div className="pair">
      <Choice
        label="It lies, east"
        options={options}
        value={east ?? null}
        onChange={(id) => set([id, north])}
      />
      <Choice label="and north" options={options} value={north ?? null} onChange={(id) => set([east, id])} />
    </div>
  );
}
