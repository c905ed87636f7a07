/**
 * How far apart two grades are by their ranks in the sample: Podani 1999, Taxon 48:331, eq. 2b, on
 * Gower's coefficient. With ranks r and T tied records at a grade, grades a and b are
 *
 *   (|r_a - r_b| - (T_a - 1)/2 - (T_b - 1)/2) / (r_max - r_min - (T_max - 1)/2 - (T_min - 1)/2)
 *
 * apart, which is one more than the number of records strictly between them over the same for the
 * lowest and the highest grade that occur. A grade beyond those is as far as the end (1 at most).
 *
 * @param counts records at each grade, lowest grade first.
 * @returns grades * grades distances, row by row.
 */
export function rankDistances(counts: ArrayLike<number>): Float64Array {
  const grades = counts.length;
  const below = new Float64Array(grades + 1);
  for (let grade = 0; grade < grades; grade++) below[grade + 1] = below[grade] + counts[grade];
  const steps = (low: number, high: number) => below[high] - below[low + 1] + 1;
  const seen = Array.from({ length: grades }, (_, grade) => grade).filter((grade) => counts[grade] > 0);
  const span = seen.length > 1 ? steps(seen[0], seen[seen.length - 1]) : 1;
  return fill(grades, (low, high) => Math.min(1, steps(low, high) / span));
}

/** Grades as equal steps: |a - b| / (grades - 1), the number of grades being that of the scale, not of the sample. */
export function gradeDistances(grades: number): Float64Array {
  return fill(grades, (low, high) => (high - low) / (grades - 1));
}

function fill(grades: number, distance: (low: number, high: number) => number): Float64Array {
  const between = new Float64Array(grades * grades);
  for (let low = 0; low < grades; low++) {
    for (let high = low + 1; high < grades; high++) {
      between[low * grades + high] = distance(low, high);
      between[high * grades + low] = between[low * grades + high];
    }
  }
  return between;
}
