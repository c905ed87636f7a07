import type { CellState } from '../../../cells/reading.ts';
import type { OpenTerm, SourceView } from '../../engine/views/sources.ts';
import { Picker } from '../../parts/asking/picker.tsx';
import { Button, Choice } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { useProfile } from './use-profile.ts';

const NOTHING: readonly { readonly id: CellState; readonly label: string; readonly note: string }[] = [
  { id: 'not-observed', label: 'not observed', note: 'hidden, lost, illegible or not recorded' },
  { id: 'absent', label: 'absent', note: 'looked for where it could be seen, and not there' },
  { id: 'not-applicable', label: 'does not apply', note: 'makes no sense for this structure' },
];

/** What a wording means that no term covers. */
export function TermQuestion({ source, term }: { source: SourceView; term: OpenTerm }) {
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
