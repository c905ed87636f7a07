export interface Target {
  readonly row: number;
  readonly column: number;
}
