import type { Beam, PointMm } from "@cornerway/schema";
import { sectionSizeMm } from "../catalog/section-size.ts";
import type { PlanRect } from "./plan-rect.ts";

/** A beam as a solid in the site frame, mm. It is measured along its plan from `from`; depth is upright. */
export type PlacedBeam = {
  readonly id: string;
  readonly from: PointMm;
  readonly to: PointMm;
  /** In plan. */
  readonly lengthMm: number;
  readonly depthMm: number;
  readonly widthMm: number;
  /** First side along the beam, from `from` to `to`. */
  readonly outline: PlanRect;
  readonly beam: Beam;
};

export function placeBeam(beam: Beam): PlacedBeam {
  const from = spotMm(beam.from);
  const to = spotMm(beam.to);
  const { depthMm, widthMm } = sectionSizeMm(beam.section);
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  const lengthMm = Math.sqrt(dx * dx + dy * dy);
  const outline = {
    cxMm: (from.xMm + to.xMm) / 2,
    cyMm: (from.yMm + to.yMm) / 2,
    ux: dx / lengthMm,
    uy: dy / lengthMm,
    halfUMm: lengthMm / 2,
    halfVMm: widthMm / 2,
  };
  return { id: beam.id, from, to, lengthMm, depthMm, widthMm, outline, beam };
}

const spotMm = ({ xUm, yUm, zUm }: Beam["from"]): PointMm => ({
  xMm: xUm / 1000,
  yMm: yUm / 1000,
  zMm: zUm / 1000,
});

/** Height of its upper face at a place along it; level past its ends. */
export function beamTopMm({ from, to, lengthMm }: PlacedBeam, uMm: number): number {
  const share = Math.max(0, Math.min(1, uMm / lengthMm));
  return from.zMm + (to.zMm - from.zMm) * share;
}

/** The point of its upper face on its centre line, so far along it. */
export function onBeam(beam: PlacedBeam, uMm: number): PointMm {
  const { ux, uy } = beam.outline;
  return { xMm: beam.from.xMm + ux * uMm, yMm: beam.from.yMm + uy * uMm, zMm: beamTopMm(beam, uMm) };
}

/** How far along a beam a place is, held to its ends, and how far beside its centre line, mm, left of it positive. */
export function alongBeam(
  { from, outline: { ux, uy }, lengthMm }: PlacedBeam,
  at: { readonly xMm: number; readonly yMm: number },
): { uMm: number; offMm: number } {
  const x = at.xMm - from.xMm;
  const y = at.yMm - from.yMm;
  return { uMm: Math.max(0, Math.min(lengthMm, x * ux + y * uy)), offMm: y * ux - x * uy };
}

/** The lowest and the highest point of the solid, mm. */
export const beamHeightMm = ({ from, to, depthMm }: PlacedBeam): { lowMm: number; highMm: number } => ({
  lowMm: Math.min(from.zMm, to.zMm) - depthMm,
  highMm: Math.max(from.zMm, to.zMm),
});
