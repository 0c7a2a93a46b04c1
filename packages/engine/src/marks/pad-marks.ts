import type { Mark } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import { markOf } from "./mark-of.ts";

/** Pads that nothing stands on. */
export function padMarks({ structure, bearings, footings }: Analysis): Mark[] {
  const used = new Set<string>();
  for (const { contacts } of bearings)
    for (const { target } of contacts) if (target.on === "pad") used.add(target.elementId);
  for (const footing of footings.values()) if (footing.on === "pad") used.add(footing.elementId);
  return structure.building.pads
    .filter(({ id }) => !used.has(id))
    .map(({ id, xMm, yMm, topZMm }) =>
      markOf({
        fact: { kind: "pad-holds-nothing" },
        verdict: "not checked",
        certainty: "derived",
        elements: [id],
        at: { xMm, yMm, zMm: topZMm },
        basis: "Geometry: no fitting, rail or post stands on this pad.",
      }),
    );
}
