import type { WitnessChoice } from '../../../fragments/items/witness.ts';
import type { WitnessCandidate } from '../../../sources/names/witness-candidates.ts';
import { type Workspace, withStudy } from '../../state/workspace.ts';
import { withColumnRule, withProfile } from '../../state/workspace-sources.ts';
import { ownProfile } from './use-profile.ts';

/** What somebody said of one source: the column that names the object, or null where no column does. */
export type ColumnChosen = WitnessCandidate | null;

/**
 * The study says that its columns are confirmed and what one is called; the profile of each source says which column,
 * in the place of the one that was taken for it, or that none is.
 *
 * @param chosen by name of the source; sources of which nothing was said stay as they are read.
 * @param item header of the column that is read as the item now, by name of the source.
 */
export function withWitnessColumns(
  workspace: Workspace,
  chosen: ReadonlyMap<string, ColumnChosen>,
  item: ReadonlyMap<string, string>,
  noun: string,
): Workspace {
  const said = withStudy(workspace, { witness: choiceOf('column', noun, workspace.study.witness) });
  return [...chosen].reduce((now, [source, candidate]) => {
    const before = candidate === null ? item.get(source) : candidate.insteadOf;
    if (candidate?.needsProfile !== true && before === undefined) return now;
    const own = ownProfile(now, source);
    const freed = before === undefined ? own : withColumnRule(own, before, { attribute: null });
    return withProfile(
      now,
      source,
      candidate === null ? freed : withColumnRule(freed, candidate.header, { attribute: 'item' }),
    );
  }, said);
}

/** What one is called: the plural that was given of another noun goes with it. */
export function choiceOf(
  is: WitnessChoice['is'],
  noun: string,
  before: WitnessChoice | undefined,
): WitnessChoice {
  const called = noun.trim() === '' ? 'item' : noun.trim();
  return before?.noun === called && before.plural !== undefined
    ? { is, noun: called, plural: before.plural }
    : { is, noun: called };
}
