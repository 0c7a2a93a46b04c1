import type { Mark } from "@cornerway/schema";
import { tiePlace, type TiePlace } from "../bearing/tie-place.ts";
import type { Building } from "../geometry/building.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** What is to be said of every tie: the gap it bridges and what it meets, or why it does not serve. */
export const tieMarks = (building: Building): Mark[] =>
  building.ties.map((tie) => {
    const place = tiePlace(building, tie);
    return markOf({
      fact: factOf(place),
      verdict: "why" in place && place.why !== "on sheet" ? "does not work" : "not checked",
      certainty: "common practice",
      elements: [tie.id, tie.aId, tie.bId],
      named: 1,
      at: place.at,
      basis:
        "Geometry: a tie lies within 150 mm of the walls of both units, side by side (common practice, no published source), and meets fittings, posts or rails of the generic specification. What it takes upright depends on stiffness and is not found by statics.",
    });
  });

function factOf(place: TiePlace): Mark["fact"] {
  if ("why" in place) return { kind: "tie-cannot-serve", why: place.why, awayMm: rounded(place.awayMm) };
  const upright = place.tie.carries === "in plan and upright";
  return { kind: "tie-joins", gapMm: rounded(place.gapMm), meets: place.meets, upright };
}
