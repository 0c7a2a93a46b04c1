import type { Mark } from "@cornerway/schema";
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
