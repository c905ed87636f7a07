import { type PlacementOptions, placementOptions } from '../../../analyses/placement/options.ts';
import { Choice } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';

const { findIs, findFrom } = placementOptions.shape;

/** What the find is and where it may come from: what it is set among follows from that. */
export function FindNature({ placement }: { readonly placement: StudyAnalysis }) {
  const { change } = useWorkbench();
  const put = (more: Partial<PlacementOptions>, what: string) =>
    change((now) => withAnalysis(now, { ...placement, ...more }), what);
  return (
    <div className="stack">
      <Choice
        label="The find is"
        value={findIs.parse(placement.findIs)}
        options={[
          { id: 'fragment', label: 'a fragment', note: 'set among one fragment of each item' },
          { id: 'item', label: 'an item as a whole', note: 'set among whole items' },
        ]}
        onChange={(id) => put({ findIs: findIs.parse(id) }, 'what the find is')}
      />
      <Choice
        label="It may come from"
        value={findFrom.parse(placement.findFrom)}
        options={[
          {
            id: 'another site',
            label: 'another site',
            note: 'regions, periods and the like are judged by whole sites',
          },
          { id: 'a site of the study', label: 'a site of the study', note: 'they are judged by records' },
        ]}
        onChange={(id) => put({ findFrom: findFrom.parse(id) }, 'where the find may come from')}
      />
    </div>
  );
}
