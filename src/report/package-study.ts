import { entriesOf, filesOf } from '../study/load.ts';
import type { Prepared } from '../study/prepare.ts';
import { PACKAGED_PROFILE, PACKAGED_STUDY, PACKAGED_TABLE } from './packaged-names.ts';

/**
 * The study that asks the normalised table the same questions, file name -> text: with the attributes and terms that the
 * table is in, what counts as one, and what each source told apart. Questions whose rules or claims lie in files of their
 * own are left out, since those are not part of the package; what was selected and decided is in the table already.
 */
export function packageStudy({ study, fragments }: Prepared): ReadonlyMap<string, string> {
  const tells = Object.fromEntries(
    fragments.sources.flatMap((source, i) => {
      const told = fragments.tells?.[i] ?? [];
      return told.length === 0 ? [] : [[source, told]];
    }),
  );
  const profiled = Object.keys(tells).length > 0;
  const { select: _s, duplicates: _d, names: _n, $schema: _schema, brief, analyses: _a, ...rest } = study;
  const asked = entriesOf(study).filter((entry) => filesOf(entry).length === 0);
  const kept = brief?.filter((id) => asked.some((entry) => entry.id === id)) ?? [];
  const again = {
    ...rest,
    sources: [{ file: PACKAGED_TABLE, ...(profiled ? { profile: PACKAGED_PROFILE } : {}) }],
    ...(kept.length === 0 ? {} : { brief: kept }),
    analyses: asked,
  };
  return new Map([
    [PACKAGED_STUDY, json(again)],
    ...(profiled ? [[PACKAGED_PROFILE, json({ normalised: { tells } })] as const] : []),
  ]);
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
