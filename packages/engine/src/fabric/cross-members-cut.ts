import type { ContainerDimensions, FaceRect } from "../catalog/container-dimensions.ts";

/**
 * How many cross members an opening in the floor cuts. They are taken to stand at the catalogue's pitch from the front
 * sill; their true places must be measured.
 */
export function crossMembersCut(dimensions: ContainerDimensions, cut: FaceRect): number {
  const { u0, u1, v0, v1 } = dimensions.sheetZone("floor");
  if (cut.v1 <= v0 || cut.v0 >= v1) return 0;
  const half = dimensions.crossMemberFlangeMm / 2;
  let count = 0;
  for (let centre = u0 + dimensions.crossMemberPitchMm; centre < u1; centre += dimensions.crossMemberPitchMm)
    if (centre + half > cut.u0 && centre - half < cut.u1) count += 1;
  return count;
}
