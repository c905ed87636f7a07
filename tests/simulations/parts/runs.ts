/**
 * How many runs a line of a simulation rests on: what the caller asks, else `usual`. Said above the table, with the
 * simulation error (1.96 standard errors) that so many runs leave on shares of 95, 90 and 5 %.
 */
export function runsAsked(usual: number, what = 'runs a line'): number {
  const asked = process.argv[2] ?? String(usual);
  const runs = Number(asked);
  if (!Number.isInteger(runs) || runs < 1) {
    console.error(`"${asked}" is no number of runs: give a whole number, 1 or more.`);
    process.exit(2);
  }
  const error = (share: number) => ((196 * Math.sqrt(share * (1 - share))) / Math.sqrt(runs)).toFixed(1);
  console.log(
    `${runs} ${what}; simulation error of a share of 95 %: ± ${error(0.95)} %, of 90 %: ± ${error(0.9)} %, of 5 %: ± ${error(0.05)} %\n`,
  );
  return runs;
}
