import { groupingOptions } from '../../../analyses/grouping/options.ts';
import { ordinationOptions } from '../../../analyses/ordination/options.ts';
import { SettingsForm } from '../../parts/asking/settings-form.tsx';
import { Further } from '../../parts/further.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import type { AxesFormProps } from './over-the-map.tsx';

type OnSet = AxesFormProps['onAxes'];

const TRUST = ['compareWith', 'resamples', 'permutations', 'variants', 'fuzziness'];
const MAP = ['method', 'axes', 'resamples'];
/** Settings that matter to some methods alone. */
const OF_METHOD: Readonly<Record<string, readonly string[]>> = {
  density: ['smallestGroup', 'neighbours'],
  kmeans: ['starts'],
  pcoa: ['correction'],
  pca: ['scale', 'gaps'],
  mca: ['gaps'],
  mixed: ['gaps'],
};

interface GroupsFormProps {
  readonly analysis: StudyAnalysis;
  readonly onSet: OnSet;
}

export function GroupSettings({ analysis, onSet }: GroupsFormProps) {
  const own = OF_METHOD[String(analysis.method ?? 'medoids')] ?? [];
  const most = (analysis.k ?? 'choose') === 'choose' ? ['mostGroups'] : [];
  return (
    <Further title="More about the groups">
      <Settings
        schema={groupingOptions}
        names={[...own, ...most, ...TRUST]}
        analysis={analysis}
        onSet={onSet}
      />
    </Further>
  );
}

export function MapSettings({ axes, onAxes }: AxesFormProps) {
  const method = String(axes.method ?? 'pcoa');
  return (
    <Further title="How the map is made">
      {method === 'pca' || method === 'mca' ? (
        <p className="small soft">
          Of what is compared, it takes the {method === 'pca' ? 'numbers' : 'kinds'} alone.
        </p>
      ) : null}
      <Settings
        schema={ordinationOptions}
        names={[...MAP, ...(OF_METHOD[method] ?? [])]}
        analysis={axes}
        onSet={onAxes}
        without={['method.ca']}
      />
    </Further>
  );
}

function Settings(props: Omit<Parameters<typeof SettingsForm>[0], 'attributes'>) {
  const { view } = useWorkbench();
  return <SettingsForm {...props} attributes={view?.attributes ?? []} />;
}
