import type { Mark } from "@cornerway/schema";
import type { BeamCollision } from "../bearing/beam-collisions.ts";
import type { PadCollision } from "../bearing/pad-collisions.ts";
import type { SolidInPad } from "../bearing/solids-in-pads.ts";
import type { Collision } from "../geometry/collisions.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** Two containers drawn in one place. */
export const collisionMarks = (collisions: readonly Collision[]): Mark[] =>
  collisions.map(({ one, other, depthMm }) =>
    markOf({
      fact: { kind: "collision", depthMm: rounded(depthMm) },
      verdict: "does not work",
      certainty: "published",
      elements: [one.id, other.id],
      at: {
        xMm: (one.frame.xMm + other.frame.xMm) / 2,
        yMm: (one.frame.yMm + other.frame.yMm) / 2,
        zMm: Math.max(one.baseZMm, other.baseZMm),
      },
      basis: "Geometry: the solids share a place (external dimensions of ISO 668; separating axes, any angle).",
    }),
  );

/** A beam drawn into a post, a pad or another beam. */
export const beamCollisionMarks = (collisions: readonly BeamCollision[]): Mark[] =>
  collisions.map(({ beam, otherId, depthMm, ...at }) =>
    markOf({
      fact: { kind: "collision", depthMm: rounded(depthMm) },
      verdict: "does not work",
      certainty: "derived",
      elements: [beam.id, otherId],
      at,
      basis: "Geometry: the two share a place as they are drawn. An end may be framed into a post or beam.",
    }),
  );

/** A pad drawn into a container. */
export const padCollisionMarks = (collisions: readonly PadCollision[]): Mark[] =>
  collisions.map(({ unit, pad, depthMm }) =>
    markOf({
      fact: { kind: "collision", depthMm: rounded(depthMm) },
      verdict: "does not work",
      certainty: "memory",
      elements: [unit.id, pad.id],
      at: { xMm: pad.xMm, yMm: pad.yMm, zMm: pad.topZMm },
      basis:
        "Geometry: the pad reaches above the underside of the container (fittings at its base, rails and cross members 12.5 mm higher, ISO 1496-1, from memory).",
    }),
  );

/** Two pads drawn in one place, or a post whose foot is drawn into a pad. */
export const solidInPadMarks = (found: readonly SolidInPad[]): Mark[] =>
  found.map(({ solid, pad, depthMm }) =>
    markOf({
      fact: { kind: "collision", depthMm: rounded(depthMm) },
      verdict: "does not work",
      certainty: "derived",
      elements: [solid.id, pad.id],
      at: { xMm: solid.xMm, yMm: solid.yMm, zMm: pad.topZMm },
      basis:
        "Geometry: the two share a place as they are drawn. Pads that run together are one pad; a post stands on the top of its pad.",
    }),
  );
