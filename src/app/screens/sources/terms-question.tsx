import { useState } from 'react';
import type { OpenTerm, SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withColumnRule, withProfile } from '../../state/workspace-sources.ts';
import { NEW_DRAFT, withOwn } from './own-attribute.ts';
import { TermQuestion } from './term-question.tsx';
import { ownProfile, useProfile } from './use-profile.ts';

export interface TermsQuestionProps {
  readonly source: SourceView;
  readonly header: string;
  /** Wordings of one column that no term covers, most frequent first. */
  readonly terms: readonly OpenTerm[];
}

/** Wordings that are named in the question. */
const NAMED = 6;

/** One answer for all wordings of a column that no term covers; or one by one. */
export function TermsQuestion({ source, header, terms }: TermsQuestionProps) {
  const { view, change } = useWorkbench();
  const { column } = useProfile(source.name);
  const [single, setSingle] = useState(false);
  const attribute = view?.register.find(({ id }) => id === terms[0]?.attribute);
  const own = () =>
    change((now) => {
      const draft = { ...NEW_DRAFT, label: header, block: attribute?.block ?? NEW_DRAFT.block };
      const study = withOwn(now.study, draft);
      const made = 'fault' in study ? undefined : study.attributes?.at(-1);
      if ('fault' in study || made === undefined) return now;
      const profile = withColumnRule(ownProfile(now, source.name), header, { attribute: made.id });
      return withProfile({ ...now, study }, source.name, profile);
    }, `the wordings of “${header}” are kinds of their own`);
  return (
    <div className="stack tight">
      <p>
        <strong>{terms.length} wordings</strong> of “{header}” are no terms of{' '}
        {attribute?.label ?? 'its attribute'}. What are they?
      </p>
      <p className="small soft">
        {terms
          .slice(0, NAMED)
          .map(({ text }) => text)
          .join(' · ')}
        {terms.length > NAMED ? ` and ${terms.length - NAMED} more` : ''}
      </p>
      <div className="line">
        <Button look="small" label={`Kinds of their own: “${header}”`} onPress={own}>
          Kinds of their own
        </Button>
        <Button
          look="plain small"
          label={`Keep it as text: “${header}”`}
          onPress={() => column(header, { attribute: null, ignore: undefined }, `“${header}” stays text`)}
        >
          Keep the column as text
        </Button>
        <Button
          look="plain small"
          label={`One by one: “${header}”`}
          onPress={() => setSingle((before) => !before)}
        >
          {single ? 'All together' : 'Say it one by one'}
        </Button>
      </div>
      {single ? terms.map((term) => <TermQuestion key={term.text} source={source} term={term} />) : null}
    </div>
  );
}
