import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import type { AttributeView } from '../../engine/views/study.ts';
import { bytesOf, download } from '../../files.ts';
import { Button, Choice } from '../../parts/controls.tsx';
import { FaultNote } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';
import { type RuleFile, readRuleFile, ruleText } from './rule-file.ts';
import { firstAttribute } from './rules-form.tsx';

export interface ClaimsProps {
  readonly claims: readonly StudyAnalysis[];
  readonly open: StudyAnalysis | null;
  readonly file: RuleFile | null;
  readonly attributes: readonly AttributeView[];
  readonly onOpen: (id: string) => void;
}

/** Which claim is on the table; how one comes in, goes out, and gets a rival. */
export function Claims({ claims, open, file, attributes, onOpen }: ClaimsProps) {
  const { workspace, change } = useWorkbench();
  const [fault, setFault] = useState<string | null>(null);
  const titleOf = ({ id, rules }: StudyAnalysis) =>
    readRuleFile(workspace.files.get(String(rules)))?.title ?? id;
  const rivals = (open?.rivals as readonly string[] | undefined) ?? [];

  const add = (name: string, bytes: Uint8Array) => {
    const id = freeName(
      'types',
      claims.map((claim) => claim.id),
    );
    change(
      (now) =>
        withAnalysis(
          { ...now, files: new Map(now.files).set(name, bytes) },
          { id, kind: 'typology', rules: name },
        ),
      'a new claim',
    );
    onOpen(id);
  };
  const start = () => {
    const first = firstAttribute(attributes);
    const name = freeName('types', [...workspace.files.keys()], '.types.json');
    const fresh: RuleFile = {
      title: 'Two kinds',
      types: [
        { id: 'type1', label: 'Type 1', when: { attribute: first, known: true } },
        { id: 'type2', label: 'Type 2', when: { attribute: first, known: false } },
      ],
    };
    add(name, new TextEncoder().encode(ruleText(fresh)));
  };
  const take = async (list: FileList | null, use: (name: string, bytes: Uint8Array) => void) => {
    for (const [name, bytes] of await bytesOf(list ?? [])) {
      const sound = readRuleFile(bytes) !== null;
      setFault(sound ? null : `${name}: not a rule file; it needs a "title" and a list of "types".`);
      if (sound) use(name, bytes);
    }
  };
  const addRival = (name: string, bytes: Uint8Array) => {
    if (open === null) return;
    const others = [...rivals.filter((rival) => rival !== name), name];
    change(
      (now) =>
        withAnalysis({ ...now, files: new Map(now.files).set(name, bytes) }, { ...open, rivals: others }),
      'a rival',
    );
  };
  return (
    <div className="stack">
      {claims.length < 2 ? null : (
        <Choice
          label="Claim"
          value={open?.id ?? null}
          options={claims.map((claim) => ({ id: claim.id, label: titleOf(claim) }))}
          onChange={onOpen}
        />
      )}
      <div className="line">
        <Button look="small" onPress={start}>
          New claim
        </Button>
        <FileTrigger acceptedFileTypes={['.json']} onSelect={(list) => void take(list, add)}>
          <Button look="small" onPress={() => undefined}>
            Open a rule file
          </Button>
        </FileTrigger>
        {file === null ? null : (
          <Button look="small" onPress={() => download(String(open?.rules), ruleText(file))}>
            Save the rule file
          </Button>
        )}
      </div>
      {open === null || file === null ? null : (
        <div className="line">
          <FileTrigger acceptedFileTypes={['.json']} onSelect={(list) => void take(list, addRival)}>
            <Button look="plain small" onPress={() => undefined}>
              Set a rival file beside it
            </Button>
          </FileTrigger>
          <Button
            look="plain small"
            onPress={() =>
              addRival(
                freeName('rival', [...workspace.files.keys()], '.types.json'),
                new TextEncoder().encode(ruleText({ ...file, title: `${file.title} (as it was)` })),
              )
            }
          >
            Keep these rules as a rival
          </Button>
        </div>
      )}
      {rivals.map((rival) => (
        <div key={rival} className="line">
          <span className="small">against {readRuleFile(workspace.files.get(rival))?.title ?? rival}</span>
          <Button
            look="plain small"
            label={`Remove the rival ${rival}`}
            onPress={() =>
              open !== null &&
              change(
                (now) => withAnalysis(now, { ...open, rivals: rivals.filter((other) => other !== rival) }),
                'without the rival',
              )
            }
          >
            remove
          </Button>
        </div>
      ))}
      {fault === null ? null : <FaultNote text={fault} />}
    </div>
  );
}

function freeName(stem: string, taken: readonly string[], end = ''): string {
  let count = 1;
  while (taken.includes(`${stem}-${count}${end}`)) count++;
  return `${stem}-${count}${end}`;
}
