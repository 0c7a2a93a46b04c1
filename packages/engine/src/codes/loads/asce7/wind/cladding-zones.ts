import type { CladdingZoneWidths } from "../../../../loads/wind-pressures.ts";

/**
 * Wall edge strip a = 10 % of the least plan size or 0.4h, whichever is less, but not under 4 % of it or 3 ft (Fig.
 * 30.3-1); flat roofs: strips of 0.6h, the inner part 1.2h in from the edges (Fig. 30.3-2A). The figure's corners are
 * L-shaped, 0.2h by 0.6h; the whole square of 0.6h is taken. From memory.
 */
export function claddingZoneWidths(heightMm: number, leastPlanMm: number): CladdingZoneWidths {
  return {
    wallEdgeMm: Math.max(Math.min(0.1 * leastPlanMm, 0.4 * heightMm), 0.04 * leastPlanMm, 914.4),
    roofEdgeMm: 0.6 * heightMm,
    roofMiddleMm: 1.2 * heightMm,
  };
}
