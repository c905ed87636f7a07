/** Where in the reader's material something went wrong; every part that is known is given. */
export interface FaultPlace {
  readonly file?: string;
  readonly row?: number;
  readonly column?: string;
  readonly path?: string;
}

/**
 * A fault in what the reader brought, not in Thrum: shown as one sentence, never as a stack trace.
 * `what` is wrong, `where` it stands, `mend` says what would put it right.
 */
export class InputError extends Error {
  override readonly name = 'InputError';
  constructor(
    readonly what: string,
    readonly where: FaultPlace,
    readonly mend: string,
  ) {
    super(faultSentence({ what, where, mend }));
  }
}

/** A fault in one sentence, also where it has come from a worker as plain data. */
export function faultSentence({ what, where, mend }: Pick<InputError, 'what' | 'where' | 'mend'>): string {
  const place = [
    where.file,
    where.row === undefined ? undefined : `row ${where.row}`,
    where.column === undefined ? undefined : `column "${where.column}"`,
    where.path,
  ].filter((part) => part !== undefined && part !== '');
  const start = place.length > 0 ? `${place.join(', ')}: ` : '';
  return `${start}${what}; ${mend}.`;
}
