/**
 * A function of one text that keeps its answers for equal texts, as tables repeat theirs. It forgets them all
 * when there are `most`, so that what is kept stays small.
 */
export function remembered<Answer>(
  answer: (text: string) => Answer,
  most = 200_000,
): (text: string) => Answer {
  const known = new Map<string, Answer>();
  return (text) => {
    const kept = known.get(text);
    if (kept !== undefined) return kept;
    const found = answer(text);
    if (known.size >= most) known.clear();
    known.set(text, found);
    return found;
  };
}
