import type { LayerPlace, ViewLayer } from "./contract.ts";

/** What a layer inks on one view. */
export const LayerOn = ({ layer, place }: { layer: ViewLayer | undefined; place: LayerPlace }) =>
  layer?.ink(place) ?? null;
