/** "per 5 cm" -> 50 mm; null where the text names no length of more than one unit. */
export function countedOver(text: string): number | null {
  const found = /(?:per|pro|je|auf|par|al|por|pr\.?|\/) ?(\d+(?:[.,]\d+)?) ?(mm|cm|dm)/iu.exec(text);
  if (found === null) return null;
  const unit = { mm: 1, cm: 10, dm: 100 }[found[2]!.toLowerCase() as 'mm' | 'cm' | 'dm'];
  return Number(found[1]!.replace(',', '.')) * unit;
}
