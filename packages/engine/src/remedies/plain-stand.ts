import type { Pad, Scheme } from "@cornerway/schema";
import { placeContainer } from "../geometry/place.ts";

/**
 * One unit by itself on its four corners, with its own openings and loads, on wide pads that settle as the project says: what it
 * is before anything is asked of it. Undefined where the scheme has no such unit.
 */
export function plainStand(scheme: Scheme, unitId: string): Scheme | undefined {
  const drawn = scheme.containers.find(({ id }) => id === unitId);
  if (drawn === undefined) return undefined;
  const { groundZUm } = scheme.site;
  const unit = { ...drawn, zUm: groundZUm };
  const own = <T extends { readonly containerId: string }>(all: readonly T[]): T[] =>
    all.filter(({ containerId }) => containerId === unitId);
  return {
    ...scheme,
    containers: [unit],
    openings: own(scheme.openings),
    loads: own(scheme.loads),
    freeLoads: own(scheme.freeLoads),
    uses: own(scheme.uses),
    overrides: scheme.overrides.filter(({ elementId }) => elementId === unitId),
    pads: placeContainer(unit)
      .bottomFittings.filter(({ name }) => !name.endsWith("-inner"))
      .map(({ at }, index) => padAt(index, at.xMm, at.yMm, groundZUm))
      .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    ...{ posts: [], beams: [], seats: [], ties: [], locks: [] },
  };
}

/** Wide enough that the soil is no question. */
const padAt = (index: number, xMm: number, yMm: number, topZUm: number): Pad => ({
  ...{ id: `plain-pad-${index + 1}`, tag: `B${index + 1}`, topZUm, turnMdeg: 0 },
  ...{ xUm: Math.round(xMm * 1000), yUm: Math.round(yMm * 1000) },
  ...{ lengthUm: PAD_MM * 1000, widthUm: PAD_MM * 1000, depthUm: PAD_MM * 500 },
});

const PAD_MM = 2000;
