import type { SheetFlows } from "./solve-runs.ts";

/** One strip with the panels over one another in it. */
export type SheetStrip = {
  readonly widthMm: number;
  readonly panels: readonly { readonly id: string; readonly heightMm: number }[];
};

/**
 * Mean flow over the height of each strip, N/mm, in the order of the strips; valid until asked again. Where the flows of their
 * panels stand is looked up once for every layout.
 */
export function stripFlows(strips: readonly SheetStrip[]): (forces: SheetFlows) => Float64Array {
  const panels = strips.flatMap((strip) => strip.panels);
  const heightsMm = Float64Array.from(panels, ({ heightMm }) => heightMm);
  const means = new Float64Array(strips.length);
  let last: SheetFlows["panelAt"] | undefined;
  let places = new Int32Array(0);
  return ({ values, panelAt }) => {
    if (panelAt !== last) {
      last = panelAt;
      places = Int32Array.from(panels, ({ id }) => panelAt(id));
    }
    let n = 0;
    for (let s = 0; s < means.length; s++) {
      let sum = 0;
      let heightMm = 0;
      for (const end = n + (strips[s]?.panels.length ?? 0); n < end; n++) {
        const own = heightsMm[n] ?? 0;
        sum += own * (values[places[n] ?? 0] ?? 0);
        heightMm += own;
      }
      means[s] = sum / heightMm;
    }
    return means;
  };
}
