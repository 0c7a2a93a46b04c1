import type { MarkKind } from "@cornerway/schema";

/** Marks of how a unit stands as a body. */
export const moves: ReadonlySet<MarkKind> = new Set<MarkKind>([
  "tips-over",
  "near-tipping",
  "mechanism",
  "overhang",
  "uplift",
  "slides",
]);

/** Marks of what a unit comes down on. */
export const bears: ReadonlySet<MarkKind> = new Set<MarkKind>([
  "overhang",
  "borne-on-rail",
  "made-connection",
  "corner-on-air",
  "rocks",
]);

/** Marks that strength itself notes. */
export const ofStrength: ReadonlySet<MarkKind> = new Set<MarkKind>([
  "overstressed",
  "strength-open",
  "uplift",
  "slides",
  "no-lateral-wall",
]);

/** Marks that ask for every part in which the elements they name bear on each other. */
export const asksForBearings = (kind: MarkKind): boolean => kind === "load-over-opening" || bears.has(kind);
