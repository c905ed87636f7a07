/**
 * Whether the parts that run long are asked for: simulations, beds of tens of thousands of cases, every table at
 * every option. `.ci/run` sets THRUM_LONG; without it the suite tries a sample of the same.
 */
export const LONG = process.env.THRUM_LONG === '1';
