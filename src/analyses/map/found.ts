import type { Findings, Unavailable } from '../contract.ts';
import type { Beside } from '../shared/guard/beside.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import type { Outline } from './geojson.ts';
import type { MapOptions } from './options.ts';

export interface MapPlace {
  readonly label: string;
  readonly records: number;
  readonly items: number;
  /** Across and up, in the unit of the coordinates: degrees, or that of the grid. Null where not recorded. */
  readonly at: readonly [number, number] | null;
  /** Half the width of the cell that the place is known to lie in; 0 where it is exact. */
  readonly within: number;
  /** Share of the kind that is asked for. */
  readonly share: number;
  /** To the place that is asked for; null of that place itself. */
  readonly likeness: number | null;
  /** Label of its group, null where none is recorded or several are. */
  readonly group: string | null;
  /** Place of the group in the order of symbols and colours. */
  readonly mark: number | null;
  /** On the first two axes of all likenesses; null where there are none. */
  readonly onAxes: readonly [number, number] | null;
  /** Whether it has the items that a line needs. */
  readonly judged: boolean;
}

/** Two places that lean the same way in their kinds, further than chance would. */
export interface Line {
  readonly first: number;
  readonly second: number;
  readonly likeness: number;
  readonly leaning: number;
  readonly p: number;
  readonly pAdjusted: number;
  readonly drawn: boolean;
}

export interface MapFound extends Findings {
  readonly options: MapOptions;
  readonly unit: 'fragment' | 'item';
  readonly placesLabel: string;
  readonly kindsLabel: string;
  readonly level: LevelSaid;
  /** Conditions that go with the places. */
  readonly beside: Beside;
  readonly places: readonly MapPlace[];
  readonly coordinates:
    | {
        readonly geographic: boolean;
        readonly x: string;
        readonly y: string;
        readonly unit: string;
        readonly kilometres: number | null;
        readonly stretch: number;
      }
    | Unavailable;
  readonly to: string;
  readonly share: string;
  /** Null where the groups are not recorded. */
  readonly groupLabel: string | null;
  /** Every pair judged, the surest first. */
  readonly lines: readonly Line[];
  /** Deals that the p of each rests on at least. */
  readonly deals: number;
  /** Lines when counted as recorded; null where the level changes nothing. */
  readonly asRecorded: { readonly drawn: number; readonly overturns: boolean } | null;
  readonly verdict: 'some' | 'none' | 'cannot be told';
  readonly tooFew: readonly { readonly label: string; readonly items: number }[];
  readonly without: readonly string[];
  readonly axesShares: readonly number[];
  readonly outlines: readonly Outline[];
}
