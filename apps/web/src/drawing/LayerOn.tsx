import type { LayerPlace, ViewLayer } from "./contract.ts";

/** What a layer inks on one view. */
export const LayerOn = ({ layer, ...place }: LayerPlace & { layer: ViewLayer | undefined }) => layer?.(place) ?? null;
