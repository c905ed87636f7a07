import type { Register } from '../attributes/definition.ts';
import { extendRegister } from '../attributes/register.ts';
import { InputError } from '../errors.ts';
import { COUNTED_KIND } from '../sources/layout/counts.ts';
import { type SourceProfile, sourceProfile } from '../sources/profile/profile.ts';
import { FROM_PIPE } from './read-table.ts';

/** What `thrum read` is asked, and what that adds to a profile and to what can be recorded. */
export interface ReadOptions {
  readonly profile?: string;
  readonly study?: string;
  readonly sheet?: string;
  readonly pieces?: SourceProfile['pieces'];
  readonly acceptSuggestions?: true;
  readonly asIs?: true;
  readonly counts?: string | true;
  readonly base?: string;
  readonly saveProfile?: string | true;
  readonly saveStudy?: string | true;
  readonly ledger?: string;
  readonly json?: true;
}

/** What is said of one table alone cannot be said of several. */
export function refuseForSeveral(paths: readonly string[], options: ReadOptions): void {
  if (paths.length < 2) return;
  const single = [
    ['--profile', options.profile],
    ['--sheet', options.sheet],
  ].find(([, value]) => value !== undefined);
  if (single !== undefined)
    throw new InputError(
      `${single[0]} is for one table, and ${paths.length} are named`,
      {},
      'read that table by itself',
    );
  if (typeof options.saveProfile === 'string')
    throw new InputError(
      `--save-profile names one file, and ${paths.length} tables are read`,
      {},
      'leave the name out: each profile is written beside its table',
    );
  if (paths.includes(FROM_PIPE))
    throw new InputError('a table from the pipe is read by itself', {}, 'save it as a file and name that');
}

export function withKinds(register: Register): Register {
  return register.attributes.has(COUNTED_KIND.id)
    ? register
    : extendRegister(register, { attributes: [COUNTED_KIND] });
}

export function withCounts(
  profile: SourceProfile | undefined,
  { counts, base }: ReadOptions,
): SourceProfile | undefined {
  if (counts === undefined) return profile;
  const given = profile ?? sourceProfile.parse({});
  const rule = {
    attribute: counts === true ? COUNTED_KIND.id : counts,
    place: 'site',
    ...(base === undefined ? {} : { base }),
  };
  return { ...given, layout: { ...given.layout, counts: rule } };
}

/** An answer given on the command line goes before the profile's. */
export function withPieces(
  profile: SourceProfile | undefined,
  pieces: SourceProfile['pieces'],
): SourceProfile | undefined {
  return pieces === undefined ? profile : { ...(profile ?? sourceProfile.parse({})), pieces };
}
