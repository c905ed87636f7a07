import { parseJson } from '../../sources/formats/parse-json.ts';
import { checkProfile } from '../../sources/profile/profile.ts';
import { findsTable } from '../../study/finds-table.ts';
import { listedFinds } from '../../study/listed-finds.ts';
import { entriesOf } from '../../study/load.ts';
import type { Prepared, Progress } from '../../study/prepare.ts';
import { analyseOne } from '../../study/run-study.ts';
import type { PlacedFinds } from './protocol.ts';

/** Places the finds of a table one after the other on the same material. */
export function placeListed(
  prepared: Prepared,
  files: ReadonlyMap<string, Uint8Array>,
  {
    name,
    bytes,
    profile,
  }: { readonly name: string; readonly bytes: Uint8Array; readonly profile?: Uint8Array },
  onProgress: Progress,
): PlacedFinds {
  const rules =
    profile === undefined
      ? undefined
      : checkProfile(parseJson(new TextDecoder().decode(profile), 'profile.json'), 'profile.json');
  const listed = listedFinds(bytes, name, prepared.register, rules);
  const [entry] = entriesOf(prepared.study);
  if (entry === undefined) throw new Error('the placement is missing from its study');
  const placed = listed.finds.map((find, place) => {
    onProgress(place / listed.finds.length, `placing ${find.name}`);
    return { ...find, result: analyseOne(prepared, { ...entry, find: find.given }, files, {}) };
  });
  return {
    table: findsTable(placed),
    notes: listed.notes,
    finds: placed.map(({ name: called, given }) => ({ name: called, given })),
  };
}
