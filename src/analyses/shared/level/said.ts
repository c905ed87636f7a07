import type { LevelFound } from '../../../fragments/level/common-level.ts';
import { printCount, printList, printSome } from '../../phrasing.ts';
import type { ToldCloser } from './counted.ts';

/** At which level kinds were counted, as findings keep it and sentences say it. */
export interface LevelSaid {
  readonly asked: 'common' | 'recorded' | 'named';
  /** Whether anything is counted otherwise than it was recorded. */
  readonly differs: boolean;
  /** Broader terms that stand for their narrower ones, with who says no more, worst first. */
  readonly folds: readonly {
    readonly label: string;
    readonly narrower: readonly string[];
    readonly records: number;
    readonly because: readonly { readonly label: string; readonly broad: number; readonly of: number }[];
  }[];
  /** Records that say less than the level and are left out. */
  readonly tooBroad: readonly { readonly label: string; readonly records: number }[];
}

/** What is told apart beside the common level, and who says no more of how many. */
export type CloserSaid = LevelSaid['folds'];

export function closerSaid({ unfolded }: ToldCloser): CloserSaid {
  return unfolded.map(({ label, narrower, records, because }) => ({ label, narrower, records, because }));
}

/** "With open twining and close twining told apart, the 3 of 20 of Drommavel Landing that say no more than twined left out". */
export function sayCloser(folds: CloserSaid): string {
  return printSome(
    folds.map(({ label, narrower, because }) => {
      const out = because.map((one) => `${one.broad} of ${one.of} of ${one.label}`);
      return `with ${printSome(narrower, 3)} told apart, the ${printSome(out, 2)} that say no more than ${label} left out`;
    }),
    2,
  );
}

export function levelSaid(
  asked: 'common' | 'recorded' | readonly string[],
  found: Pick<LevelFound, 'folds' | 'tooBroad' | 'differs'>,
): LevelSaid {
  return {
    asked: typeof asked === 'string' ? asked : 'named',
    differs: found.differs,
    folds: found.folds.map(({ label, narrower, records, because }) => ({
      label,
      narrower,
      records,
      because,
    })),
    tooBroad: found.tooBroad.map(({ label, rows }) => ({ label, records: rows.length })),
  };
}

/** "twined for open twining and close twining, since Drommavel Landing says no more of 20 of 20". */
export function sayFolds({ folds }: LevelSaid): string {
  return printSome(
    folds.map(({ label, narrower, because }) => {
      const [worst] = because;
      const since =
        worst === undefined ? '' : `, since ${worst.label} says no more of ${worst.broad} of ${worst.of}`;
      return `${label} for ${printSome(narrower, 3)}${since}`;
    }),
    2,
  );
}

/** "4 items that say no more than twined"; empty where there are none. */
export function sayTooBroad({ tooBroad }: LevelSaid, unit: string): string {
  return printList(
    tooBroad.map(({ label, records }) => `${printCount(records, unit)} that say no more than ${label}`),
  );
}

/** Said under a table of kinds that are counted at a level. */
export function levelNote(level: LevelSaid, unit: string): string {
  if (!level.differs) return '';
  const folds = level.folds.length === 0 ? '' : `: ${sayFolds(level)}`;
  const out = level.tooBroad.length === 0 ? '' : ` Left out: ${sayTooBroad(level, unit)}.`;
  const at = level.asked === 'named' ? 'at the level asked for' : 'at the finest level that all record';
  return ` Counted ${at}${folds}.${out}`;
}
