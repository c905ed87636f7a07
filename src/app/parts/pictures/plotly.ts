import plotlyAddress from 'plotly.js-cartesian-dist-min/plotly-cartesian.min.js?url';

/** What the workbench uses of plotly; the bundle is fetched when the first figure is drawn. */
export interface PlotlyPoint {
  readonly customdata?: unknown;
}

export interface PlotlyEvent {
  readonly points?: readonly PlotlyPoint[];
  readonly event?: MouseEvent;
}

export type PlotlyElement = HTMLElement & {
  on?: (name: string, listener: (event: PlotlyEvent | null) => void) => void;
  removeAllListeners?: (name: string) => void;
};

export interface Plotly {
  react(
    element: HTMLElement,
    data: readonly object[],
    layout: object,
    config: object,
  ): Promise<PlotlyElement>;
  purge(element: HTMLElement): void;
  toImage(figure: object, options: object): Promise<string>;
  Plots: { resize(element: HTMLElement): void };
}

let loading: Promise<Plotly> | null = null;

/**
 * The library is a file beside the workbench rather than a part of it: nobody waits for it before the first figure.
 */
export function loadPlotly(): Promise<Plotly> {
  loading ??= new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = plotlyAddress;
    script.onload = () => {
      const { Plotly } = globalThis as { Plotly?: Plotly };
      if (Plotly === undefined) reject(new Error('the plotting library did not load'));
      else resolve(Plotly);
    };
    script.onerror = () => reject(new Error('the plotting library could not be fetched'));
    document.head.append(script);
  });
  return loading;
}

/** No upload button, no logo, no address of anyone; the figure is not to be edited by a slip of the hand. */
export const PLOTLY_CONFIG = {
  displaylogo: false,
  showSendToCloud: false,
  responsive: false,
  doubleClick: 'reset',
  modeBarButtonsToRemove: [
    'autoScale2d',
    'toImage',
    'hoverClosestCartesian',
    'hoverCompareCartesian',
    'toggleSpikelines',
  ],
} as const;
