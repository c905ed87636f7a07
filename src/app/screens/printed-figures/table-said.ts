export interface TableSaid {
  readonly file: string;
  readonly rows?: string;
  readonly columns?: string;
  readonly attribute?: string;
  readonly roles?: Readonly<Record<string, string>>;
}
