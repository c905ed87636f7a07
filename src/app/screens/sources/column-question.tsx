import { useState } from 'react';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { AttributePicker } from './attribute-picker.tsx';
import { Examples } from './examples.tsx';
import type { ColumnQuestionKind } from './question-list.ts';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

/** What the cells say for and against a suggestion. */
function spoken(suggestion: ColumnQuestionKind['column']['suggestion']): string {
  if (suggestion === undefined) return '';
  const others = suggestion.speaksFor.filter((text) => text !== suggestion.reason);
  const parts = [
    ...(others.length > 0 ? [`For it: ${others.join(', ')}.`] : []),
    ...(suggestion.speaksAgainst.length > 0 ? [`Against it: ${suggestion.speaksAgainst.join(', ')}.`] : []),
  ];
  return parts.length === 0 ? '' : `${parts.join(' ')} `;
}

interface ColumnQuestionProps {
  readonly source: SourceView;
  readonly question: ColumnQuestionKind;
  readonly onTarget: (target: Target) => void;
}

/** What one column holds: yes to what is suggested, another attribute, or text. */
export function ColumnQuestion({ source, question, onTarget }: ColumnQuestionProps) {
  const { view } = useWorkbench();
  const { column: setRule } = useProfile(source.name);
  const [other, setOther] = useState(question.kind === 'unknown');
  const { column } = question;
  const labelOf = (id: string) => view?.register.find((attribute) => attribute.id === id)?.label ?? id;
  const take = (attribute: string) =>
    setRule(
      column.header,
      { attribute, split: undefined, ignore: undefined },
      `“${column.header}” is ${labelOf(attribute).toLowerCase()}`,
    );
  const split = column.suggestion?.split;
  const parts = (split?.into ?? []).map(({ attribute }) =>
    attribute === null ? 'text' : labelOf(attribute),
  );
  const part = () =>
    setRule(
      column.header,
      { split, attribute: undefined, ignore: undefined },
      `“${column.header}” is parted into ${parts.join(' and ').toLowerCase()}`,
    );
  const asText = () =>
    setRule(column.header, { attribute: null, ignore: undefined }, `“${column.header}” stays text`);
  const suggestion = column.suggestion;
  return (
    <div className="stack tight">
      <p>
        <button
          type="button"
          className="to-column"
          onClick={() => onTarget({ row: 0, column: column.index })}
        >
          “{column.header}”
        </button>{' '}
        {question.kind === 'suggested' && split !== undefined ? (
          <>
            seems to hold {parts.length === 2 ? 'two' : 'up to three'} values a cell:{' '}
            <strong>{parts.join(' and ')}</strong>. Part them?
          </>
        ) : question.kind === 'suggested' && suggestion !== undefined ? (
          <>
            looks like <strong>{labelOf(suggestion.attribute)}</strong>. Is it?
          </>
        ) : question.kind === 'doubt' ? (
          <>
            is taken as <strong>{column.attributes.map(labelOf).join(' and ')}</strong>. Right?
          </>
        ) : (
          <>is not known. What does it hold?</>
        )}
      </p>
      <p className="small soft">
        {question.kind === 'suggested' && suggestion !== undefined ? `${suggestion.reason}. ` : ''}
        {question.kind === 'suggested' ? spoken(suggestion) : ''}
        {question.kind === 'doubt' ? `${question.doubt} ` : ''}
        <Examples of={source.examples[column.index]} />
      </p>
      <div className="line">
        {split !== undefined && question.kind === 'suggested' ? (
          <Button look="small" label={`Part them: “${column.header}”`} onPress={part}>
            Part them
          </Button>
        ) : question.kind === 'suggested' && suggestion !== undefined ? (
          <Button
            look="small"
            label={`Yes, “${column.header}” is ${labelOf(suggestion.attribute)}`}
            onPress={() => take(suggestion.attribute)}
          >
            Yes
          </Button>
        ) : null}
        {question.kind === 'doubt' ? (
          <Button
            look="small"
            label={`Yes, “${column.header}” is right`}
            onPress={() => {
              const [first] = column.attributes;
              if (first !== undefined) take(first);
            }}
          >
            Yes
          </Button>
        ) : null}
        {other ? null : (
          <Button look="small" label={`“${column.header}” is something else`} onPress={() => setOther(true)}>
            Something else
          </Button>
        )}
        <Button
          look={question.kind === 'unknown' ? 'small' : 'plain small'}
          label={`Keep it as text: “${column.header}”`}
          onPress={asText}
        >
          Keep it as text
        </Button>
      </div>
      {other ? <AttributePicker label={`“${column.header}” holds`} value={null} onChange={take} /> : null}
    </div>
  );
}
