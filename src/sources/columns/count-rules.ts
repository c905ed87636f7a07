import type { Register } from '../../attributes/definition.ts';
import { QUANTITY } from '../../fragments/quantity.ts';
import { KIND_HEADER, QUANTITY_HEADER } from '../layout/counts.ts';
import type { SourceProfile } from '../profile/profile.ts';

/** What the columns of a table of counts feed, where the profile does not say it of them already. */
export function withCountColumns(
  profile: SourceProfile,
  headers: readonly string[],
  register: Register,
): SourceProfile {
  const { counts } = profile.layout;
  if (counts === undefined) return profile;
  const named = new Set(profile.columns.flatMap(({ header }) => header));
  const first = headers[0] ?? '';
  const rules = [
    ...(counts.attribute === undefined ? [] : [{ header: KIND_HEADER, attribute: counts.attribute }]),
    ...(register.attributes.has(QUANTITY) ? [{ header: QUANTITY_HEADER, attribute: QUANTITY }] : []),
    ...(first === KIND_HEADER ? [] : [{ header: first, attribute: counts.place }]),
  ].filter(({ header }) => !named.has(header));
  return { ...profile, columns: [...profile.columns, ...rules] };
}
