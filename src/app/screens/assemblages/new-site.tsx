import { useState } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { AttributeView } from '../../engine/views/study.ts';
import { Button, Entry } from '../../parts/controls.tsx';

export interface TypedSite {
  readonly label: string;
  readonly counts: Readonly<Record<string, number>>;
}

export interface NewSiteProps {
  /** The attribute in whose kinds places are compared. */
  readonly kinds: AttributeView | undefined;
  readonly sites: readonly TypedSite[];
  readonly onSet: (sites: readonly TypedSite[], what: string) => void;
}

/** A site known by its counts alone, set among the others: its name, and how many of each kind. */
export function NewSite({ kinds, sites, onSet }: NewSiteProps) {
  const [open] = sites;
  const [label, setLabel] = useState(open?.label ?? '');
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>(
    Object.fromEntries(Object.entries(open?.counts ?? {}).map(([kind, count]) => [kind, String(count)])),
  );
  if (kinds === undefined) return null;
  const counts = Object.entries(texts).filter(([, text]) => text.trim() !== '');
  const broken = counts.filter(([, text]) => !/^\d{1,4}$/.test(text.trim()));
  const ready = counts.length > 0 && broken.length === 0;
  const name = label.trim() === '' ? 'new site' : label.trim();
  return (
    <Disclosure defaultExpanded={open !== undefined}>
      <Heading level={3} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          Set a new site among them
        </AriaButton>
      </Heading>
      <DisclosurePanel>
        <div className="stack">
          <Entry label="Its name" value={label} onChange={setLabel} placeholder="new site" />
          <fieldset className="stack tight new-site">
            <legend className="label">How many of each</legend>
            {kinds.levels.map(({ id, label: kind }) => (
              <Entry
                key={id}
                label={kind}
                value={texts[kind] ?? ''}
                onChange={(text) => setTexts({ ...texts, [kind]: text })}
                placeholder="0"
                invalid={broken.some(([one]) => one === kind)}
              />
            ))}
          </fieldset>
          {broken.length === 0 ? null : <p className="small">Type whole numbers, such as 7.</p>}
          <div className="line">
            <Button
              look="main"
              disabled={!ready}
              onPress={() => {
                const typed = Object.fromEntries(counts.map(([kind, text]) => [kind, Number(text)]));
                onSet([{ label: name, counts: typed }], `set ${name} among them`);
              }}
            >
              Set it among them
            </Button>
            {open === undefined ? null : (
              <Button look="plain small" onPress={() => onSet([], `take ${open.label} away`)}>
                Take it away
              </Button>
            )}
          </div>
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}
