import type { BuildingModel } from "../model/building-model.ts";
import type { ModelledBearing } from "./modelled-bearings.ts";

/** The model with every bearing of these units and posts holding what lifts, as if connections were there. */
export function heldModel(
  model: BuildingModel,
  bearings: readonly ModelledBearing[],
  held: ReadonlySet<string>,
): BuildingModel {
  const names = new Set(bearings.filter(({ ownerId }) => held.has(ownerId)).map(({ name }) => name));
  return {
    ...model,
    links: model.links.map((link) => (names.has(link.id) ? { ...link, compression_only: false } : link)),
    supports: model.supports.map((support) =>
      names.has(support.node) ? { ...support, compression_only: false } : support,
    ),
  };
}
