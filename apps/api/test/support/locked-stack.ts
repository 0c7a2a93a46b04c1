import type { FittingName, Scheme } from "@cornerway/schema";
import { heldUnit } from "./held-unit.ts";

const corners = ["front-left", "front-right", "door-left", "door-right"] as const satisfies readonly FittingName[];

/** Two 20 ft units held down to their pads, the upper one by stock locks at its four fittings. */
export const lockedStack: Scheme = (() => {
  const held = heldUnit();
  const [below] = held.containers;
  if (below === undefined) throw new Error("the sample has a unit");
  const above = { ...below, id: "h1", tag: "H1", zUm: 2_591_000 };
  const locks = corners.map((fitting, n) => ({
    ...{ id: `stock-${n}`, tag: `K${n + 1}`, containerId: above.id, fitting, kind: "lock" as const },
  }));
  return { ...held, containers: [below, above], locks: [...held.locks, ...locks] };
})();
