import { useState } from 'react';
import type { SeemingCounts } from '../../../sources/columns/looks-like-counts.ts';
import { COUNTED_KIND } from '../../../sources/layout/counts.ts';
import { Button, Choice } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withProfile } from '../../state/workspace-sources.ts';
import { AttributePicker } from './attribute-picker.tsx';
import { ownProfile } from './use-profile.ts';

/** Kinds that are named in the question. */
const NAMED = 4;

/** Whether a table counts kinds place by place, of which attribute, and of what its shares are taken. */
export function CountsQuestion({ name, counts }: { name: string; counts: SeemingCounts }) {
  const { change, view } = useWorkbench();
  const [base, setBase] = useState(counts.shares?.base ?? null);
  const [known, setKnown] = useState(false);
  const { columns, shares } = counts;
  const source = view?.sources.find((one) => one.name === name);
  const others = (source?.columns ?? []).filter(
    ({ header, index }) => index > 0 && !columns.includes(header),
  );
  const read = (attribute: string) =>
    change((now) => {
      const own = now.study.attributes ?? [];
      const lacking = attribute === COUNTED_KIND.id && !own.some(({ id }) => id === attribute);
      const study = lacking ? { ...now.study, attributes: [...own, COUNTED_KIND] } : now.study;
      const profile = ownProfile(now, name);
      const rule = { attribute, place: 'site', ...(base === null ? {} : { base }) };
      return withProfile({ ...now, study }, name, {
        ...profile,
        layout: { ...profile.layout, counts: rule },
      });
    }, `read ${name} as counts`);
  return (
    <div className="stack tight">
      <p>
        <strong>{columns.length} columns</strong> seem to hold{' '}
        {shares === null ? 'counts' : 'shares, in per cent,'} of kinds, place by place. Count them so?
      </p>
      <p className="small soft">
        {columns.slice(0, NAMED).join(' · ')}
        {columns.length > NAMED ? ` and ${columns.length - NAMED} more` : ''}
      </p>
      {shares === null ? null : others.length === 0 ? (
        <p className="small">No column holds the number of objects, and shares alone are no counts.</p>
      ) : (
        <Choice
          label="Per cent of the number in"
          value={base}
          options={others.map(({ header }) => ({ id: header, label: header }))}
          onChange={setBase}
        />
      )}
      <div className="line">
        <Button
          look="small"
          onPress={() => read(COUNTED_KIND.id)}
          disabled={shares !== null && base === null}
        >
          Yes, of kinds of their own
        </Button>
        {known ? null : (
          <Button
            look="plain small"
            onPress={() => setKnown(true)}
            disabled={shares !== null && base === null}
          >
            Yes, of an attribute that is known
          </Button>
        )}
      </div>
      {known ? <AttributePicker label="The columns count" value={null} onChange={read} /> : null}
    </div>
  );
}
