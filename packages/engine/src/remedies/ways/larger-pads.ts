import { enlarged, sideFor } from "../changed-pads.ts";
import { overParts } from "../over-parts.ts";
import type { Generator, Trial } from "../trial.ts";

/** Pads beyond what the soil bears, made square and large enough for the pressure told, then larger in steps. */
export const largerPads: Generator = ({ scheme, mark }) => {
  const over = overParts(mark).filter(({ part }) => part === "pad");
  const pads = scheme.pads.filter(({ id }) => over.some(({ partId }) => partId.startsWith(`${id} `)));
  if (pads.length === 0) return [];
  const trials = SPARE.map((spare): Trial => {
    const sides = pads.map(({ id, lengthUm, widthUm }) => {
      const use = Math.max(
        ...over.filter(({ partId }) => partId.startsWith(`${id} `)).map(({ utilisation }) => utilisation ?? 1),
      );
      return sideFor(lengthUm / 1000, widthUm / 1000, use * spare);
    });
    const sideMm = Math.max(...sides);
    const padIds = pads.map(({ id }) => id);
    return { change: { kind: "larger pads", padIds, sideMm }, operations: enlarged(scheme, padIds, sideMm) };
  });
  return [trials.filter(({ operations }) => operations.length > 0)];
};

/** A larger pad draws a little more load and weighs more: the area asked for, and more than that. */
const SPARE = [0.9, 1.05, 1.25, 1.5];
