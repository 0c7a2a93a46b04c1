import type { Pad, Scheme } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "../numerics/elementary.ts";
import type { Side } from "./side.ts";
import { project } from "./projection.ts";
import type { PaperRect } from "./corrugation.ts";
import type { ElevationFace } from "./elevation-faces.ts";

export type ElevationPad = PaperRect & { pad: Pad; depthMm: number; behind: boolean };

/** A pad belongs to a face when it lies this near to it in depth, mm: half a pad and a fitting. */
const ofFaceMm = 700;

/**
 * Pads as seen, one hidden by another at the same place left out. One that lies neither in front of the building nor
 * under a face at the front of its storey is behind.
 */
export function elevationPads(scheme: Scheme, side: Side, faces: readonly ElevationFace[]): ElevationPad[] {
  const nearestFirst = scheme.pads.map((pad) => padOnPaper(pad, side)).toSorted((a, b) => a.depthMm - b.depthMm);
  const front = faces.filter(({ beyond }) => !beyond);
  const frontMm = Math.min(...front.map(({ nearestMm }) => nearestMm));
  const shown: ElevationPad[] = [];
  for (const pad of nearestFirst) {
    const hidden = shown.some((other) => pad.u0Mm < other.u1Mm && pad.u1Mm > other.u0Mm && pad.z1Mm <= other.z1Mm);
    if (!hidden) shown.push({ ...pad, behind: pad.depthMm > frontMm && !front.some((face) => isUnder(pad, face)) });
  }
  return shown;
}

const isUnder = (pad: ElevationPad, face: ElevationFace): boolean =>
  Math.abs(pad.depthMm - face.nearestMm) < ofFaceMm && pad.u1Mm > face.u0Mm && pad.u0Mm < face.u1Mm;

function padOnPaper(pad: Pad, side: Side): ElevationPad {
  const { uMm, depthMm } = project(side, { xMm: pad.xUm / 1000, yMm: pad.yUm / 1000, zMm: 0 });
  const cos = Math.abs(cosDegThousandths(pad.turnMdeg));
  const sin = Math.abs(sinDegThousandths(pad.turnMdeg));
  const alongX = (pad.lengthUm * cos + pad.widthUm * sin) / 2000;
  const alongY = (pad.lengthUm * sin + pad.widthUm * cos) / 2000;
  const half = side === "south" || side === "north" ? alongX : alongY;
  const z1Mm = pad.topZUm / 1000;
  return { pad, depthMm, behind: false, u0Mm: uMm - half, u1Mm: uMm + half, z0Mm: z1Mm - pad.depthUm / 1000, z1Mm };
}
