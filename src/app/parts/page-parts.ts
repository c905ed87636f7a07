import fontAddress from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url';
import plottingAddress from 'plotly.js-cartesian-dist-min/plotly-cartesian.min.js?url';
import { base64 } from '../../report/drawing/png.ts';
import type { PageParts } from '../../report/html.ts';

/** What a report carries along: the typeface and the smaller build of the plotting code, fetched when one is written. */
export async function pageParts(): Promise<PageParts> {
  const [font, plotly] = await Promise.all([fontText(), fetch(plottingAddress).then((file) => file.text())]);
  return { font, plotly };
}

/** The typeface as WOFF2 in base64. */
export async function fontText(): Promise<string> {
  const file = await fetch(fontAddress);
  return base64(new Uint8Array(await file.arrayBuffer()));
}
