import { useState } from 'react';
import { defaultRegister } from '../../../attributes/register.ts';
import {
  asSort,
  OWN_SORTS,
  type OwnSort,
  type Proposal,
  withOwnColumns,
} from '../../../sources/columns/propose-attributes.ts';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withProfile } from '../../state/workspace-sources.ts';
import { ownProfile } from './use-profile.ts';

const NAMES: Readonly<Record<OwnSort, string>> = {
  numbers: 'Numbers',
  kinds: 'Kinds',
  'yes-no': 'Yes or no',
  text: 'Text, kept and not compared',
};

/** Columns of one sort that are listed; the others are counted. */
const LISTED = 12;

/** One answer for all columns that nothing claims: what each holds, with three of its cells, and take them. */
export function AsIsQuestion({ name, proposals }: { name: string; proposals: readonly Proposal[] }) {
  const { change } = useWorkbench();
  const [sorts, setSorts] = useState<Readonly<Record<string, OwnSort>>>({});
  const [picked, setPicked] = useState<ReadonlySet<string>>(new Set());
  const chosen = proposals.map((one) => asSort(one, sorts[one.header] ?? one.sort, defaultRegister()));
  const toggle = (header: string) =>
    setPicked((before) => {
      const next = new Set(before);
      if (!next.delete(header)) next.add(header);
      return next;
    });
  const setPickedTo = (sort: OwnSort) => {
    setSorts((before) => ({ ...before, ...Object.fromEntries([...picked].map((header) => [header, sort])) }));
    setPicked(new Set());
  };
  const take = () =>
    change((now) => {
      const known = new Set((now.study.attributes ?? []).map(({ id }) => id));
      const own = chosen.flatMap(({ attribute }) =>
        attribute === undefined || known.has(attribute.id) ? [] : [attribute],
      );
      const study = { ...now.study, attributes: [...(now.study.attributes ?? []), ...own] };
      return withProfile({ ...now, study }, name, withOwnColumns(ownProfile(now, name), chosen));
    }, `take ${chosen.length} columns as they are`);
  return (
    <div className="stack tight">
      <p>
        <strong>{proposals.length} columns</strong> are no attributes that are known. Take them as they are?
      </p>
      {OWN_SORTS.map((sort) => ({ sort, own: chosen.filter((one) => one.sort === sort) }))
        .filter(({ own }) => own.length > 0)
        .map(({ sort, own }) => (
          <fieldset key={sort} className="stack tight">
            <legend className="small">
              {NAMES[sort]} ({own.length})
            </legend>
            {own.slice(0, LISTED).map(({ header, examples }) => (
              <label key={header} className="small">
                <input type="checkbox" checked={picked.has(header)} onChange={() => toggle(header)} />{' '}
                <strong>{header}</strong> <span className="soft">{examples.join(' · ')}</span>
              </label>
            ))}
            {own.length > LISTED ? <p className="small soft">and {own.length - LISTED} more</p> : null}
          </fieldset>
        ))}
      <div className="line">
        <Button look="small" onPress={take}>
          Take all {proposals.length} as they are
        </Button>
        {picked.size === 0
          ? null
          : OWN_SORTS.map((sort) => (
              <Button key={sort} look="plain small" onPress={() => setPickedTo(sort)}>
                {`The ${picked.size} ticked: ${NAMES[sort].toLowerCase()}`}
              </Button>
            ))}
      </div>
    </div>
  );
}
