import { useState } from 'react';
import type { CellState } from '../../../cells/reading.ts';
import type { OpenTerm, SourceView } from '../../engine/views/sources.ts';
import { Button, Choice } from '../../parts/controls.tsx';
import { Crossing } from '../../parts/fringe.tsx';
import { Picker } from '../../parts/picker.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { AsIsQuestion } from './as-is-question.tsx';
import { AttributePicker } from './attribute-picker.tsx';
import { BlanksQuestion, RepeatedAllQuestion, RepeatedQuestion, SheetQuestion } from './decisions.tsx';
import { DuplicateAllQuestion, DuplicateQuestion } from './duplicate-questions.tsx';
import { Examples } from './examples.tsx';
import { PiecesQuestion, UnitQuestion } from './measure-questions.tsx';
import { type ColumnQuestionKind, type Question, questionKey, questionsOf } from './question-list.ts';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

const SHOWN = 8;
/** A page of more questions than this is answered by nobody; the next ones come as these are answered. */
const MOST = 40;

export interface QuestionsProps {
  readonly source: SourceView;
  readonly onTarget: (target: Target) => void;
}

export function Questions({ source, onTarget }: QuestionsProps) {
  const { view } = useWorkbench();
  const { edit } = useProfile(source.name);
  const [all, setAll] = useState(false);
  const questions = questionsOf(source, view?.duplicates ?? []);
  const suggested = source.columns.filter(
    (column) => column.suggestion?.sure === true && column.status === 'suggested',
  );
  const shown = questions.slice(0, all ? MOST : SHOWN);
  const acceptAll = () =>
    edit(
      (profile) => ({
        ...profile,
        columns: [
          ...profile.columns,
          ...suggested.map(({ header, suggestion }) =>
            suggestion?.split === undefined
              ? { header, attribute: suggestion?.attribute ?? null }
              : { header, split: suggestion.split },
          ),
        ],
      }),
      `take ${suggested.length} suggested columns`,
    );
  return (
    <div className="stack">
      <div className="line apart">
        <h3>
          {questions.length} {questions.length === 1 ? 'question' : 'questions'}
        </h3>
        {suggested.length < 2 ? null : (
          <Button look="small" onPress={acceptAll}>
            Take the {suggested.length} suggestions beyond doubt
          </Button>
        )}
      </div>
      <ol className="questions">
        {shown.map((question) => (
          <li key={questionKey(question)}>
            <Crossing />
            <OneQuestion source={source} question={question} onTarget={onTarget} />
          </li>
        ))}
      </ol>
      {questions.length <= SHOWN ? null : (
        <div>
          <Button look="plain small" onPress={() => setAll(!all)}>
            {all
              ? 'Show the first only'
              : questions.length > MOST
                ? `Show the first ${MOST} of ${questions.length}`
                : `Show all ${questions.length}`}
          </Button>
        </div>
      )}
    </div>
  );
}

function OneQuestion({ source, question, onTarget }: QuestionsProps & { readonly question: Question }) {
  switch (question.kind) {
    case 'term':
      return <TermQuestion source={source} term={question.term} />;
    case 'sheet':
      return <SheetQuestion source={source} />;
    case 'as-is':
      return <AsIsQuestion name={source.name} proposals={question.proposals} />;
    case 'repeated':
      return <RepeatedQuestion source={source} repeated={question.repeated} onTarget={onTarget} />;
    case 'repeated-all':
      return <RepeatedAllQuestion source={source} count={question.count} />;
    case 'blanks':
      return <BlanksQuestion source={source} column={question.column} onTarget={onTarget} />;
    case 'unit':
      return (
        <UnitQuestion source={source} column={question.column} unit={question.unit} onTarget={onTarget} />
      );
    case 'pieces':
      return (
        <PiecesQuestion source={source} column={question.column} count={question.count} onTarget={onTarget} />
      );
    case 'duplicate-all':
      return <DuplicateAllQuestion pairs={question.pairs} />;
    case 'duplicate':
      return <DuplicateQuestion pair={question.pair} onTarget={onTarget} />;
    default:
      return <ColumnQuestion source={source} question={question} onTarget={onTarget} />;
  }
}

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

function ColumnQuestion({ source, question, onTarget }: ColumnQuestionProps) {
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

const NOTHING: readonly { readonly id: CellState; readonly label: string; readonly note: string }[] = [
  { id: 'not-observed', label: 'not observed', note: 'hidden, lost, illegible or not recorded' },
  { id: 'absent', label: 'absent', note: 'looked for where it could be seen, and not there' },
  { id: 'not-applicable', label: 'does not apply', note: 'makes no sense for this structure' },
];

function TermQuestion({ source, term }: { source: SourceView; term: OpenTerm }) {
  const { view } = useWorkbench();
  const { column } = useProfile(source.name);
  const { profile } = useProfile(source.name);
  const attribute = view?.register.find(({ id }) => id === term.attribute);
  const vocabulary = view?.vocabularies.find(({ id }) => id === attribute?.vocabulary);
  const rule = profile.columns.find((one) => one.header === term.header);
  const options =
    vocabulary?.terms ?? (attribute?.levels ?? []).map((level) => ({ id: level, label: level }));
  const mean = (id: string) => {
    const nothing = NOTHING.find((state) => state.id === id);
    if (nothing !== undefined)
      return column(
        term.header,
        { missing: { ...rule?.missing, [term.text]: nothing.id } },
        `“${term.text}” means ${nothing.label}`,
      );
    const label = options.find((option) => option.id === id)?.label ?? id;
    column(term.header, { terms: { ...rule?.terms, [term.text]: id } }, `“${term.text}” means ${label}`);
  };
  const suggestion = term.suggestion;
  const suggested = options.find(({ id }) => id === suggestion?.term);
  return (
    <div className="stack tight">
      <p>
        <span className="quoted">{term.text}</span> in “{term.header}” ({term.count}×): what does it mean?
      </p>
      {suggestion === undefined || suggested === undefined ? null : (
        <div className="line">
          <Button
            look="small"
            label={`It means ${suggested.label}: “${term.text}”`}
            onPress={() => mean(suggested.id)}
          >
            It means {suggested.label}
          </Button>
          <span className="small soft">{suggestion.reason}</span>
        </div>
      )}
      {options.length === 0 ? (
        <Choice
          label={`“${term.text}” means`}
          quiet
          placeholder="stays as not understood"
          value={null}
          options={NOTHING}
          onChange={mean}
        />
      ) : (
        <Picker
          label={`“${term.text}” means`}
          quiet
          placeholder="stays as not understood; type to find a term"
          value={null}
          onChange={mean}
          groups={[
            { name: 'Nothing of the kind', options: NOTHING },
            {
              name: attribute?.label ?? 'Terms',
              options: options.map((option) => ({
                id: option.id,
                label: option.label,
                ...('definition' in option && option.definition !== undefined
                  ? { note: option.definition }
                  : {}),
              })),
            },
          ]}
        />
      )}
    </div>
  );
}
