import type { BuildingFrame } from "./building-frame.ts";
import type { ExposedFace } from "./exposed-faces.ts";
import type { CladdingZone, CladdingZoneWidths } from "./wind-pressures.ts";

/**
 * The worst zone that a part of the envelope touches, measured on the enclosing box; the whole square where roof edges
 * meet is corner.
 */
export function claddingZone(
  { outline }: BuildingFrame,
  { side, rect }: ExposedFace,
  widths: CladdingZoneWidths,
): CladdingZone {
  if (side === "up" || side === "down") {
    const nearX = Math.min(rect.u0 - outline.x0, outline.x1 - rect.u1);
    const nearY = Math.min(rect.v0 - outline.y0, outline.y1 - rect.v1);
    const { roofEdgeMm, roofMiddleMm } = widths;
    if (nearX < roofEdgeMm && nearY < roofEdgeMm) return "corner";
    if (nearX < roofEdgeMm || nearY < roofEdgeMm) return "edge";
    return nearX < roofMiddleMm || nearY < roofMiddleMm ? "middle" : "inner";
  }
  const [low, high] = side === "+x" || side === "-x" ? [outline.y0, outline.y1] : [outline.x0, outline.x1];
  return Math.min(rect.u0 - low, high - rect.u1) < widths.wallEdgeMm ? "edge" : "middle";
}
