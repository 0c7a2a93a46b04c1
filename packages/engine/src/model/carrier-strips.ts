import type { FaceRect } from "../catalog/container-dimensions.ts";
import type { Unit } from "../geometry/building.ts";
import type { LoadCarrier, LoadedFace } from "./load-carrier.ts";

/** A carrier with the part of its face it answers for, as openings are measured. */
export interface CarrierStrip {
  readonly carrier: LoadCarrier;
  readonly rect: FaceRect;
}

/** The carriers of a container by face, with their strips; edge strips reach to the outer face. */
export function carrierStrips(carriers: readonly LoadCarrier[], unit: Unit): Map<LoadedFace, CarrierStrip[]> {
  const byFace = new Map<LoadedFace, CarrierStrip[]>();
  for (const carrier of carriers) {
    const strips = byFace.get(carrier.face) ?? [];
    strips.push({ carrier, rect: stripOf(carrier, unit) });
    byFace.set(carrier.face, strips);
  }
  return byFace;
}

/** The part of the face a carrier answers for, as openings are measured; edge strips reach to the outer face. */
function stripOf({ face, x, y, z, lengthMm, stripMm }: LoadCarrier, { dimensions }: Unit): FaceRect {
  const { lengthMm: L, widthMm: W, heightMm: H, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = dimensions;
  const runsAcross = face === "front" || face === "door" || face === "floor";
  const { u0, u1 } = runsAcross
    ? stretched(y + W / 2, lengthMm, W, (W - holeSpacingCrosswiseMm) / 2)
    : stretched(x + L / 2, lengthMm, L, (L - holeSpacingLengthwiseMm) / 2);
  if (face === "floor") {
    const along = floorStrip(x, stripMm, L, holeSpacingLengthwiseMm);
    return { u0: along.u0, u1: along.u1, v0: u0, v1: u1 };
  }
  if (face === "roof") return { u0, u1, v0: y > 0 ? W / 2 : 0, v1: y > 0 ? W : W / 2 };
  return z < H / 2 ? { u0, u1, v0: 0, v1: stripMm } : { u0, u1, v0: H - stripMm, v1: H };
}

/** Ends that come to the post axis are stretched to the outer face. */
function stretched(middle: number, lengthMm: number, whole: number, edge: number): { u0: number; u1: number } {
  const [from, to] = [middle - lengthMm / 2, middle + lengthMm / 2];
  return { u0: from <= edge + 1 ? 0 : from, u1: to >= whole - edge - 1 ? whole : to };
}

function floorStrip(x: number, stripMm: number, L: number, holes: number): { u0: number; u1: number } {
  const u = x + L / 2;
  const edge = (L - holes) / 2;
  if (Math.abs(u - edge) < 1) return { u0: 0, u1: u + stripMm };
  if (Math.abs(u - (L - edge)) < 1) return { u0: u - stripMm, u1: L };
  return { u0: u - stripMm / 2, u1: u + stripMm / 2 };
}
