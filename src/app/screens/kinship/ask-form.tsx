import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { groupingOptions, METHODS } from '../../../analyses/grouping/options.ts';
import { AttributeCount } from '../../parts/asking/attribute-count.tsx';
import { isComparable } from '../../parts/asking/attribute-options.ts';
import { AttributeWeights } from '../../parts/asking/attribute-weights.tsx';
import { ComparisonSettings } from '../../parts/asking/comparison-settings.tsx';
import { Button, Check, Choice } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { GroupSettings, MapSettings } from './further-settings.tsx';
import { type AxesFormProps, OverTheMap } from './over-the-map.tsx';
import { type BlockWeights, Weights } from './weights.tsx';
import { WithoutASay } from './without-a-say.tsx';

export interface AskFormProps extends AxesFormProps {
  readonly analysis: StudyAnalysis;
  readonly weights: BlockWeights;
  readonly onDrag: (weights: BlockWeights) => void;
  readonly onWeights: (weights: BlockWeights) => void;
  readonly onSet: (options: Readonly<Record<string, unknown>>, what: string) => void;
}

const NAMES: Readonly<Record<string, string>> = {
  medoids: 'around the most typical find of each',
  kmeans: 'around the mean of each',
  density: 'where finds lie densely',
  average: 'tree, by mean',
  complete: 'tree, by the furthest pair',
  single: 'tree, by the nearest pair',
  mcquitty: 'tree, by the mean of two branches',
  ward: 'tree, by least growth of spread',
  'ward-squared': 'tree, by least growth, for squares',
  centroid: 'tree, by centres',
  median: 'tree, by midpoints',
};

export function AskForm(props: AskFormProps) {
  const { analysis, weights, onDrag, onWeights, onSet } = props;
  const { view } = useWorkbench();
  const k = analysis.k ?? 'choose';
  const counts = Array.from({ length: 11 }, (_, i) => String(i + 2));
  const comparable = (view?.attributes ?? []).filter(isComparable);
  const of = (analysis.of as readonly string[] | undefined) ?? [];
  const chosen = of.length > 0 ? of : comparable.map(({ definition }) => definition.id);
  return (
    <div className="stack wide">
      <div className="stack tight">
        <h3>How much does each part count?</h3>
        <Weights value={weights} onChange={onDrag} onDone={onWeights} />
      </div>
      <div className="stack">
        <h3>How are groups made?</h3>
        <Choice
          label="Method"
          value={String(analysis.method ?? 'medoids')}
          options={Object.entries(METHODS).map(([id, note]) => ({
            id,
            label: NAMES[id] ?? id,
            note,
          }))}
          onChange={(method) => onSet({ method }, `group ${NAMES[method] ?? method}`)}
        />
        <Choice
          label="How many groups"
          value={String(k)}
          options={[
            { id: 'choose', label: 'as many as stand apart best' },
            ...counts.map((id) => ({ id, label: id })),
          ]}
          onChange={(id) =>
            onSet(
              { k: id === 'choose' ? id : Number(id) },
              id === 'choose' ? 'let the number of groups be found' : `${id} groups`,
            )
          }
        />
      </div>
      <Disclosure>
        <Heading level={3} className="plain-head">
          <AriaButton slot="trigger" className="button plain small">
            {of.length === 0
              ? `All ${chosen.length} recorded attributes are compared`
              : `${of.length} attributes are compared`}
          </AriaButton>
        </Heading>
        <DisclosurePanel>
          <div className="stack attribute-choice">
            {(['structure', 'spacing', 'fibre'] as const).map((block) => (
              <fieldset key={block} className="stack tight kinds">
                <legend>
                  <span className="swatch" style={{ background: `var(--${block})` }} />
                  {block}
                </legend>
                {comparable
                  .filter(({ definition }) => definition.block === block)
                  .map(({ definition, filled, records }) => (
                    <Check
                      key={definition.id}
                      value={chosen.includes(definition.id)}
                      onChange={(on) => {
                        const next = on
                          ? [...chosen, definition.id]
                          : chosen.filter((id) => id !== definition.id);
                        if (next.length > 0)
                          onSet(
                            { of: next },
                            `${on ? 'compare' : 'do not compare'} ${definition.label.toLowerCase()}`,
                          );
                      }}
                    >
                      <AttributeCount label={definition.label} filled={filled} records={records} />
                    </Check>
                  ))}
              </fieldset>
            ))}
            {of.length === 0 ? null : (
              <div>
                <Button look="small" onPress={() => onSet({ of: [] }, 'compare all recorded attributes')}>
                  All that are recorded
                </Button>
              </div>
            )}
          </div>
        </DisclosurePanel>
      </Disclosure>
      <ComparisonSettings schema={groupingOptions} analysis={analysis} onSet={onSet} />
      <AttributeWeights analysis={analysis} onSet={onSet} compared={chosen} />
      <GroupSettings analysis={analysis} onSet={onSet} />
      <MapSettings axes={props.axes} onAxes={props.onAxes} />
      <OverTheMap axes={props.axes} onAxes={props.onAxes} compared={chosen} />
      <WithoutASay axes={props.axes} onAxes={props.onAxes} />
    </div>
  );
}
