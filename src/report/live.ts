import { gzipSync, strToU8 } from 'fflate';
import { legendBeyond } from './drawing/legend.ts';
import { numberOr } from './drawing/plain.ts';
import { base64 } from './drawing/png.ts';
import type { NumberedFigure } from './page/outline.ts';

/** CSS pixels of a figure on a screen, on the narrow side. */
const SCREEN = 800;

/** Text packed so that a browser can unpack it; without a time, so that equal texts give equal bytes. */
function packed(text: string): string {
  return base64(gzipSync(strToU8(text), { level: 9, mtime: 0 }));
}

/** JSON has no infinity, and typed arrays would become objects. */
function plain(_key: string, value: unknown): unknown {
  if (ArrayBuffer.isView(value) && !(value instanceof DataView)) return Array.from(value as Float64Array);
  return typeof value === 'number' && !Number.isFinite(value) ? null : value;
}

/**
 * The part of a report that brings a figure to life: the plotting code once and the figures' numbers, both packed
 * and unpacked only when the first figure is asked for.
 *
 * @param plotly text of the plotting code.
 */
export function livePart(figures: readonly NumberedFigure[], plotly: string): string {
  const numbers = Object.fromEntries(
    figures.map(({ name, figure: { data, layout } }) => [
      name,
      {
        data,
        layout: { ...layout, height: numberOr(layout.height, 400) + legendBeyond(data, layout, SCREEN) },
      },
    ]),
  );
  return `<script type="application/octet-stream" id="plotting">${packed(plotly)}</script>
<script type="application/octet-stream" id="numbers">${packed(JSON.stringify(numbers, plain))}</script>
<script>${SCRIPT}</script>`;
}

const SCRIPT = `
const unpack = async (id) => {
  const bytes = Uint8Array.from(atob(document.getElementById(id).textContent), (letter) => letter.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).text();
};
let plotting = null;
const ready = () => plotting ??= (async () => {
  const code = document.createElement('script');
  code.textContent = await unpack('plotting');
  document.head.append(code);
  return JSON.parse(await unpack('numbers'));
})();
const enliven = async (place) => {
  const numbers = await ready();
  const { data, layout } = numbers[place.dataset.figure];
  const still = place.firstElementChild;
  const live = document.createElement('div');
  live.className = 'alive';
  still.hidden = true;
  still.style.display = 'none';
  place.append(live);
  place.closest('figure').classList.remove('half');
  const sized = { ...layout, autosize: true, paper_bgcolor: '#FFFFFF', plot_bgcolor: '#FFFFFF' };
  delete sized.width;
  await Plotly.newPlot(live, data, sized, {
    displaylogo: false, showSendToCloud: false, responsive: true,
    toImageButtonOptions: { format: 'svg', filename: place.dataset.figure },
  });
};
const still = (place) => {
  const live = place.querySelector('.alive');
  if (live === null) return;
  Plotly.purge(live);
  live.remove();
  place.firstElementChild.hidden = false;
  place.firstElementChild.style.display = '';
};
for (const place of document.querySelectorAll('[data-figure]')) {
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Look closer';
  button.addEventListener('click', async () => {
    if (place.querySelector('.alive') !== null) {
      still(place);
      button.textContent = 'Look closer';
      return;
    }
    button.disabled = true;
    await enliven(place);
    button.textContent = 'As printed';
    button.disabled = false;
  });
  place.after(button);
}
addEventListener('beforeprint', () => document.querySelectorAll('[data-figure]').forEach(still));
`;
