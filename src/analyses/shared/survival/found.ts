/** Fibre that could not have survived at a place, so that its absence or scarcity there says nothing. */
export interface Loss {
  readonly place: string;
  /** The broad kind: "plant fibre". */
  readonly fibre: string;
  /** Kinds compared that belong to it and would be lost at the place. */
  readonly kinds: readonly string[];
  /** Records of these kinds at the place all the same, of those counted there. */
  readonly found: number;
  readonly counted: number;
  /** "in a bog". */
  readonly where: string;
  /** Records of the place so preserved that these kinds are lost, of all that it has. */
  readonly records: number;
  readonly of: number;
  /** Broad kinds compared that would have lasted in it: their absence says something. */
  readonly lasting: readonly string[];
}
