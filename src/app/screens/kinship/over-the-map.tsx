import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { AttributeCount } from '../../parts/asking/attribute-count.tsx';
import { Check } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

/** The ordination behind the map, and a change of it. */
export interface AxesFormProps {
  readonly axes: StudyAnalysis;
  readonly onAxes: (options: Readonly<Record<string, unknown>>, what: string) => void;
}

/** Attributes that are laid over the map but do not shape it. */
export function OverTheMap({
  axes,
  onAxes,
  compared,
}: AxesFormProps & { readonly compared: readonly string[] }) {
  const { view } = useWorkbench();
  const asked = (axes.supplementaryAttributes as readonly string[] | undefined) ?? [];
  const free = (view?.attributes ?? []).filter(
    ({ definition, filled }) =>
      filled > 0 && definition.scale !== 'text' && !compared.includes(definition.id),
  );
  if (free.length === 0) return null;
  return (
    <Disclosure>
      <Heading level={3} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          {asked.length === 0 ? 'Lay other attributes over the map' : `${asked.length} laid over the map`}
        </AriaButton>
      </Heading>
      <DisclosurePanel>
        <fieldset className="stack tight kinds attribute-choice">
          <legend>Shown, without a say in the map</legend>
          {free.map(({ definition, filled, records }) => (
            <Check
              key={definition.id}
              value={asked.includes(definition.id)}
              onChange={(on) =>
                onAxes(
                  {
                    supplementaryAttributes: on
                      ? [...asked, definition.id]
                      : asked.filter((id) => id !== definition.id),
                  },
                  `${on ? 'lay' : 'take'} ${definition.label.toLowerCase()} ${on ? 'over' : 'off'} the map`,
                )
              }
            >
              <AttributeCount label={definition.label} filled={filled} records={records} />
            </Check>
          ))}
        </fieldset>
      </DisclosurePanel>
    </Disclosure>
  );
}
