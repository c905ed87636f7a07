import type { DescribedView } from '../../../engine/protocol.ts';
import { Button } from '../../../parts/controls.tsx';
import { LongEntry } from '../../../parts/long-entry.tsx';

export interface AsWrittenProps {
  readonly text: string;
  /** How the text is parted; null while it is blank or being read. */
  readonly described: DescribedView | null;
  readonly onDraft: (text: string) => void;
  readonly onKeep: (text: string) => void;
}

/** The structure in one breath, as a catalogue would write it: what it sets, what was not used, what is asked. */
export function AsWritten({ text, described, onDraft, onKeep }: AsWrittenProps) {
  return (
    <div className="stack tight">
      <LongEntry
        label="As written"
        value={text}
        onChange={onDraft}
        onDone={() => onKeep(text)}
        placeholder="open diagonal twining with pile"
        {...(described === null ? {} : { reading: <Parted described={described} /> })}
      />
      {(described?.unused ?? []).flatMap(({ mend }) =>
        mend === undefined
          ? []
          : [
              <div key={mend.text}>
                <Button
                  look="small"
                  onPress={() => {
                    onDraft(mend.text);
                    onKeep(mend.text);
                  }}
                >
                  It means {mend.meant}
                </Button>
              </div>,
            ],
      )}
    </div>
  );
}

function Parted({ described: { structure, facets, unused } }: { readonly described: DescribedView }) {
  const said = [...(structure === null ? [] : [{ label: 'Structure', said: structure.label }]), ...facets];
  return (
    <>
      {said.length === 0
        ? 'no structure is named'
        : `read as ${said.map((one) => `${one.label.toLowerCase()}: ${one.said}`).join(' · ')}`}
      {unused.map(({ text, why }) => (
        <span key={text} className="unused">
          {why}
        </span>
      ))}
    </>
  );
}
