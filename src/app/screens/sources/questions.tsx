import { useState } from 'react';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { Crossing } from '../../parts/fringe.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { AsIsQuestion } from './as-is-question.tsx';
import { ColumnQuestion } from './column-question.tsx';
import { CountsQuestion } from './counts-question.tsx';
import { BlanksQuestion, RepeatedAllQuestion, RepeatedQuestion, SheetQuestion } from './decisions.tsx';
import { DuplicateAllQuestion, DuplicateQuestion } from './duplicate-questions.tsx';
import { PiecesQuestion, UnitQuestion } from './measure-questions.tsx';
import { OverflowQuestion } from './overflow-question.tsx';
import { MOST, onOnePage, questionKey, questionsOf, SHOWN, type SourceQuestion } from './question-list.ts';
import type { Target } from './target.ts';
import { TermQuestion } from './term-question.tsx';
import { TermsQuestion } from './terms-question.tsx';
import { useProfile } from './use-profile.ts';

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
  const shown = onOnePage(questions, all);
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

function OneQuestion({ source, question, onTarget }: QuestionsProps & { readonly question: SourceQuestion }) {
  switch (question.kind) {
    case 'term':
      return <TermQuestion source={source} term={question.term} />;
    case 'terms':
      return <TermsQuestion source={source} header={question.header} terms={question.terms} />;
    case 'sheet':
      return <SheetQuestion source={source} />;
    case 'too-long':
      return <OverflowQuestion source={source} tooLong={question.tooLong} onTarget={onTarget} />;
    case 'as-is':
      return <AsIsQuestion name={source.name} proposals={question.proposals} />;
    case 'counts':
      return <CountsQuestion name={source.name} counts={question.counts} />;
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
