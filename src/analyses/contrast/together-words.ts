import type { Turn } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { guardTurns } from '../shared/guard/turn-words.ts';
import type { Told } from '../verdicts.ts';
import type { Together } from './together-found.ts';

/** What would change the verdict on all attributes together. */
export function togetherTurns({ told, asRecorded, spreadTold, setAside, notes, guard }: Together): Turn[] {
  const words: Readonly<Record<Told, string>> = {
    'told apart': 'together they differ',
    'not told apart': 'together they are not told apart',
    'cannot be told': 'together they cannot be tested',
  };
  return [
    ...(asRecorded === null
      ? []
      : [
          {
            what: 'kinds counted by the words as recorded',
            size: `${asRecorded === told ? 'still ' : ''}${words[asRecorded]}`,
            overturns: asRecorded !== told,
          },
        ]),
    ...(guard === null
      ? []
      : guardTurns(guard).flatMap((turn) =>
          turn.overturns ? [{ ...turn, what: `all together ${turn.what}` }] : [],
        )),
    ...(spreadTold === 'told apart'
      ? [
          {
            what: 'the groups spread unequally in all attributes together',
            size: 'that can look like a difference of place',
            overturns: false,
          },
        ]
      : []),
    ...(setAside > 0
      ? [
          {
            what: `${printCount(setAside, 'item')} could not be compared with all others`,
            size: 'left out of the joint tests',
            overturns: false,
          },
        ]
      : []),
    ...notes.map((note) => ({ what: note, size: '', overturns: false })),
  ];
}
