import type { PointMm } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import type { PlacedContainer } from "../geometry/place.ts";
import { patchForceN, type ActionCase, type ActionLoad, type Patch } from "./action-case.ts";

/** Sum of a case's forces, N, and of their moments about a point, N·mm, in site axes. Movements have none. */
export type CaseResultant = {
  readonly xN: number;
  readonly yN: number;
  readonly zN: number;
  readonly aboutXNmm: number;
  readonly aboutYNmm: number;
  readonly aboutZNmm: number;
};

/**
 * Throws a RangeError for a load on a container that is not among those given. Own weight stands at the middle of the
 * box.
 */
export function caseResultant(
  { loads }: ActionCase,
  containers: readonly PlacedContainer[],
  about: PointMm,
): CaseResultant {
  const byId = new Map(containers.map((placed) => [placed.id, placed]));
  const find = (id: string): PlacedContainer => {
    const placed = byId.get(id);
    if (placed === undefined) throw new RangeError(`a load on ${id}, which is not there`);
    return placed;
  };
  return loads.map((load) => forceOf(load, find)).reduce((sum, force) => add(sum, force, about), nothing);
}

type Force = { readonly at: PointMm; readonly xN: number; readonly yN: number; readonly zN: number };

const nothing: CaseResultant = { xN: 0, yN: 0, zN: 0, aboutXNmm: 0, aboutYNmm: 0, aboutZNmm: 0 };

function forceOf(load: ActionLoad, find: (id: string) => PlacedContainer): Force {
  switch (load.kind) {
    case "own weight": {
      const { frame, dimensions } = find(load.containerId);
      const at = { xMm: frame.xMm, yMm: frame.yMm, zMm: frame.zMm + dimensions.heightMm / 2 };
      return { at, xN: 0, yN: 0, zN: -load.weightN };
    }
    case "on": {
      const face = faceFrame(find(load.containerId), load.surface);
      const { u, v } = patchCentre(load.patch);
      return { at: pointOnFace(face, u, v), xN: 0, yN: 0, zN: -patchForceN(load.patch) };
    }
    case "against": {
      const face = faceFrame(find(load.containerId), load.face);
      const { u, v } = patchCentre(load.patch);
      const force = -patchForceN(load.patch);
      return {
        at: pointOnFace(face, u, v),
        xN: force * face.normal.xMm,
        yN: force * face.normal.yMm,
        zN: force * face.normal.zMm,
      };
    }
    case "point":
      return load;
    case "movement":
      return { at: { xMm: 0, yMm: 0, zMm: 0 }, xN: 0, yN: 0, zN: 0 };
  }
}

/**
 * Where a patch's force stands: off its middle by slope·width²/12 over the mean pressure. A pure couple is not met in
 * practice.
 */
function patchCentre({ rect, pressurePa, alongUPaPerMm, alongVPaPerMm }: Patch): { u: number; v: number } {
  const wide = rect.u1 - rect.u0;
  const high = rect.v1 - rect.v0;
  const mean = pressurePa + (alongUPaPerMm * wide) / 2 + (alongVPaPerMm * high) / 2;
  const off = (slope: number, length: number) => (mean === 0 ? 0 : (slope * length * length) / 12 / mean);
  return {
    u: (rect.u0 + rect.u1) / 2 + off(alongUPaPerMm, wide),
    v: (rect.v0 + rect.v1) / 2 + off(alongVPaPerMm, high),
  };
}

function add(sum: CaseResultant, { at, xN, yN, zN }: Force, about: PointMm): CaseResultant {
  const x = at.xMm - about.xMm;
  const y = at.yMm - about.yMm;
  const z = at.zMm - about.zMm;
  return {
    xN: sum.xN + xN,
    yN: sum.yN + yN,
    zN: sum.zN + zN,
    aboutXNmm: sum.aboutXNmm + y * zN - z * yN,
    aboutYNmm: sum.aboutYNmm + z * xN - x * zN,
    aboutZNmm: sum.aboutZNmm + x * yN - y * xN,
  };
}
