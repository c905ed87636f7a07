/**
 * Linkages whose merges never bring a third cluster nearer, and the number of each one's recurrence
 * (Lance & Williams 1967) in the compiled loops, `wasm/source/recurrence.ts`.
 */
export const UNIONS = { complete: 0, average: 1, mcquitty: 2, ward: 3, 'ward-squared': 4 } as const;
export type Reducible = keyof typeof UNIONS;
