import { inSentence } from '../../../analyses/phrasing.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { Further } from '../further.tsx';
import { NumberField } from './settings-form.tsx';

export interface AttributeWeightsProps {
  readonly analysis: StudyAnalysis;
  readonly onSet: (
    more: { readonly attributeWeights: Readonly<Record<string, unknown>> },
    what: string,
  ) => void;
  /** Ids of the attributes that are compared. */
  readonly compared: readonly string[];
}

/** How much single attributes, the facets of a structure among them, count within their part; 1 where nothing is said. */
export function AttributeWeights({ analysis, onSet, compared }: AttributeWeightsProps) {
  const { view } = useWorkbench();
  const given = (analysis.attributeWeights as Readonly<Record<string, number>> | undefined) ?? {};
  const shown = (view?.attributes ?? []).filter(({ definition }) => compared.includes(definition.id));
  return (
    <Further title="How much single attributes count">
      <div className="stack tight settings">
        {shown.map(({ definition: { id, label } }) => (
          <NumberField
            key={`${id} ${given[id]}`}
            setting={{ ...WEIGHT, name: id, title: `Weight of ${inSentence(label)}` }}
            value={given[id]}
            onChange={(weight) =>
              onSet(
                { attributeWeights: { ...given, [id]: weight } },
                `${label.toLowerCase()} counts ${weight}`,
              )
            }
          />
        ))}
        <p className="small soft">
          Within structure, spacing or fibre; 1 is the usual weight, 0 leaves it out.
        </p>
      </div>
    </Further>
  );
}

const WEIGHT = {
  kind: 'number',
  description: '',
  usual: 1,
  whole: false,
  least: 0,
  most: Number.POSITIVE_INFINITY,
  above: false,
} as const;
