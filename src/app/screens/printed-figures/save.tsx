import { useState } from 'react';
import { faultText, Stopped } from '../../engine/client.ts';
import type { ClaimsForm } from '../../engine/protocol.ts';
import { download } from '../../files.ts';
import { Button } from '../../parts/controls.tsx';
import { FaultNote } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

const FORMS: readonly (readonly [form: ClaimsForm, ending: string, type: string, name: string])[] = [
  ['markdown', 'md', 'text/markdown', 'List for a letter'],
  ['html', 'html', 'text/html', 'Page with every working'],
  ['csv', 'csv', 'text/csv', 'Table'],
  ['json', 'json', 'application/json', 'JSON'],
];

export interface SaveClaimsProps {
  readonly list: StudyAnalysis;
  readonly stem: string;
}

/** The answer as a file: for the author, for the record, for another program. */
export function SaveClaims({ list, stem }: SaveClaimsProps) {
  const { workspace, engine } = useWorkbench();
  const [fault, setFault] = useState<string | null>(null);
  const file = String(list.file ?? 'claims.csv');
  const bytes = workspace.files.get(file);
  const save = async (form: ClaimsForm, name: string, type: string) => {
    try {
      const text = await engine.ask(
        (remote) => remote.claimsFile(workspace.study, list, form) as Promise<string>,
      );
      download(name, text, type);
      setFault(null);
    } catch (error) {
      if (!(error instanceof Stopped)) setFault(faultText(error));
    }
  };
  return (
    <div className="stack tight">
      <div className="line">
        <span className="small">Save the verdicts:</span>
        {FORMS.map(([form, ending, type, name]) => (
          <Button
            key={form}
            look="small"
            label={`Save the verdicts: ${name}`}
            onPress={() => void save(form, `${stem}.verdicts.${ending}`, type)}
          >
            {name}
          </Button>
        ))}
        {bytes === undefined ? null : (
          <Button look="small" onPress={() => download(file, bytes, 'text/csv')}>
            The claims themselves
          </Button>
        )}
      </div>
      {fault === null ? null : <FaultNote text={fault} />}
    </div>
  );
}
