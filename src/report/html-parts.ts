/** Text as it stands, wherever it may come from, safe in element content and in quoted attributes. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

/** A list of texts. */
export function listPart(lines: readonly string[]): string {
  return `<ul>${lines.map((line) => `<li>${escapeHtml(line)}</li>`).join('\n')}</ul>`;
}
