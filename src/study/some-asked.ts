/** As much of a study as asking fewer questions of it touches. */
interface Asking {
  readonly analyses?: readonly object[];
  readonly brief?: readonly string[] | undefined;
}

/**
 * The same study asking these questions alone. Its brief then names no others: a study whose brief names what is not
 * asked is refused.
 */
export function askingOnly<Study extends Asking, Asked extends readonly { readonly id: string }[]>(
  study: Study,
  analyses: Asked,
): Omit<Study, 'analyses' | 'brief'> & { readonly analyses: Asked; readonly brief?: readonly string[] } {
  const { brief, analyses: _, ...rest } = study;
  const kept = brief?.filter((id) => analyses.some((analysis) => analysis.id === id)) ?? [];
  return { ...rest, analyses, ...(kept.length === 0 ? {} : { brief: kept }) };
}
