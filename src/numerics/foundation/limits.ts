/** The ends of an interval, in the unit of what lies within. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}
