/** The cells of a table as texts, row by row, before anything is made of them. */
export type Grid = readonly (readonly string[])[];
