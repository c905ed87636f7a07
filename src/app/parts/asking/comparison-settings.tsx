import { useWorkbench } from '../../state/workbench.tsx';
import { Further } from '../further.tsx';
import { SettingsForm } from './settings-form.tsx';

/** How two finds are compared: in kinds that are named more broadly, in ranges, in grades, in what is missing. */
const COMPARISON = ['mode', 'intervals', 'broad', 'ordinal', 'scaling', 'skewed', 'minimumOverlap'];

/** The same settings on every screen that compares find with find. */
export function ComparisonSettings(
  props: Pick<Parameters<typeof SettingsForm>[0], 'schema' | 'analysis' | 'onSet'>,
) {
  const { view } = useWorkbench();
  return (
    <Further title="How two finds are compared">
      <SettingsForm {...props} names={COMPARISON} attributes={view?.attributes ?? []} />
    </Further>
  );
}
