import { useState } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Condition } from '../../../fragments/select-condition.ts';
import { ConditionForm } from '../../parts/asking/condition-form.tsx';
import { Button } from '../../parts/controls.tsx';
import { count } from '../../parts/numbers.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { AxesFormProps } from './over-the-map.tsx';

/** Finds that the axes of the map are not made from: a site, say, that is to be seen among the others. */
export function WithoutASay({ axes, onAxes }: AxesFormProps) {
  const { view } = useWorkbench();
  const asked = (axes.supplementaryRecords as readonly Condition[] | undefined) ?? [];
  const [draft, setDraft] = useState<Condition | null>(null);
  const usable = (view?.attributes ?? []).filter(
    ({ definition, filled }) => definition.scale !== 'text' && filled > 0,
  );
  const first = usable.find(({ definition }) => definition.id === 'site') ?? usable[0];
  if (first === undefined) return null;
  const blank: Condition = { attribute: first.definition.id, known: true };
  const shown = draft === null ? (asked.length === 0 ? [blank] : asked) : [...asked, draft];
  const set = (conditions: readonly Condition[], what: string) =>
    onAxes({ supplementaryRecords: conditions }, what);
  const change = (place: number, next: Condition) => {
    // Until it says what is asked for, a condition would take in every find.
    if (next.known !== undefined) {
      setDraft(next);
      if (place < asked.length) set(asked.toSpliced(place, 1), 'other finds without a say in the map');
      return;
    }
    setDraft(null);
    if (place < asked.length) set(asked.with(place, next), 'other finds without a say in the map');
    else set([...asked, next], 'place finds on the map without a say');
  };
  const remove = (place: number) => {
    if (place >= asked.length) setDraft(null);
    else set(asked.toSpliced(place, 1), 'fewer conditions for finds without a say in the map');
  };
  return (
    <Disclosure>
      <Heading level={3} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          {asked.length === 0
            ? 'Place some finds without a say in the map'
            : `Without a say in the map: ${count(asked.length, 'condition')}`}
        </AriaButton>
      </Heading>
      <DisclosurePanel>
        <div className="stack tight">
          <p className="small soft">
            Finds that meet these conditions are placed on the axes of the others, hollow. Groups are made
            from all finds all the same.
          </p>
          {shown.map((condition, place) => (
            <ConditionForm
              key={`${place} ${condition.attribute}`}
              condition={condition}
              name={`finds without a say, condition ${place + 1}`}
              attributes={usable}
              onChange={(next) => change(place, next)}
              onRemove={asked.length === 0 && draft === null ? null : () => remove(place)}
            />
          ))}
          {asked.length === 0 || draft !== null ? null : (
            <div>
              <Button
                look="plain small"
                label="Add a condition for finds without a say"
                onPress={() => setDraft(blank)}
              >
                and …
              </Button>
            </div>
          )}
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}
