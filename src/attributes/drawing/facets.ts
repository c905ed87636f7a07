import type { Schema } from './drawing.ts';

/** Attribute id -> value of the facets of a structure: "spacingClass" -> "open", "pile" -> "present". */
export type Facets = Readonly<Record<string, string | undefined>>;

/** One way to draw; what it chooses or leaves out goes to the notes. Null where the facets ask for another picture. */
export type Recipe = (facets: Facets, notes: string[]) => Schema | null;

/** For a drawing that is the same however close the work is: says so where a record tells it. */
export function spacingLeftOut(facets: Facets, notes: string[]): void {
  if (facets.spacingClass !== undefined) notes.push('How close the work is (open, close) is not drawn.');
}
