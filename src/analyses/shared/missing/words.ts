import type { SetAside, Turn } from '../../contract.ts';
import { inSentence, printCount, printList, printSome } from '../../phrasing.ts';
import type { MissingKinds } from './compute.ts';

/**
 * What the missing kinds would have to be, as a turn.
 *
 * @param said kinds and unit as a sentence names them, what the verdict would be, and that it would stand.
 */
export function missingKindsTurn(
  found: MissingKinds | null,
  said: { readonly kinds: string; readonly unit: string; readonly turned: string; readonly stands: string },
): Turn[] {
  if (found === null) return [];
  const { lines, turn } = found;
  if (turn === null) {
    const listed = printSome(
      lines.map(({ label, missing }) => `${missing} of ${label}`),
      3,
    );
    return [
      {
        what: `had ${said.kinds} been recorded of all (missing: ${listed})`,
        size: `${said.stands}, whatever those of any one line were`,
        overturns: false,
      },
    ];
  }
  const whose = `${printCount(turn.missing, said.unit)} of ${turn.label} without ${said.kinds}`;
  const others = lines.filter(({ label }) => label !== turn.label);
  return [
    {
      what:
        turn.count === 0
          ? `were the ${whose} like those recorded there`
          : `were ${turn.count} of the ${whose} ${turn.kind}, and the others like those recorded there`,
      size: `${said.turned}${others.length === 0 ? '' : `; of ${printList([`${others.length} more`])} it would take as many or more`}`,
      overturns: false,
    },
  ];
}

/** What an answer left out, and why. */
export function asideTurn(setAside: readonly SetAside[]): Turn[] {
  const all = setAside.reduce((sum, { fragments }) => sum + fragments, 0);
  if (all === 0) return [];
  const why =
    setAside.length === 1
      ? inSentence(setAside[0].reason)
      : setAside.map(({ reason, fragments }) => `${inSentence(reason)} (${fragments})`).join('; ');
  const what = `${printCount(all, 'fragment')} ${all === 1 ? 'was' : 'were'} left out (${why})`;
  return [{ what, size: '', overturns: false }];
}
