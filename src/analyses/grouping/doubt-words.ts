import type { GroupingFound } from './found.ts';
import type { GroupsVerdict } from './trust-found.ts';

const NO_EVIDENCE = {
  heading: 'Groups (no evidence that they are any)',
  sentence: ' There is no evidence that these are groups.',
};
const UNTESTED = {
  heading: 'Groups (not tested)',
  sentence: ' Whether these are groups was not tested.',
};
const SHOWN = { heading: 'Groups', sentence: '' };

/** What tables and pictures say of the groups that they name and colour, so that neither promises anything. */
const DOUBTS: Readonly<Record<GroupsVerdict, { readonly heading: string; readonly sentence: string }>> = {
  groups: SHOWN,
  'one attribute': SHOWN,
  'no better than shuffled': NO_EVIDENCE,
  'no better than one heap': NO_EVIDENCE,
  'no two groups': NO_EVIDENCE,
  'cannot be told': UNTESTED,
};

/** The heading of the groups. */
export function groupsTitle({ verdict }: GroupingFound): string {
  return DOUBTS[verdict].heading;
}

/** A sentence after the caption of a picture of them; empty where they are shown to be groups. */
export function groupsDoubt({ verdict }: GroupingFound): string {
  return DOUBTS[verdict].sentence;
}
