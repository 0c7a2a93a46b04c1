/** A point of a section's plane, mm. */
export type SectionPoint = { readonly xMm: number; readonly yMm: number };

/** A straight wall on its centreline. */
export type WallStrip = { readonly from: SectionPoint; readonly to: SectionPoint; readonly thicknessMm: number };

/** What a set of walls is worth about its own centroid, axes as drawn. Square corners, centreline model. */
export type ThinWalledSection = {
  readonly areaMm2: number;
  readonly centroid: SectionPoint;
  readonly ixMm4: number;
  readonly iyMm4: number;
  readonly ixyMm4: number;
  /** Largest and least second moment. */
  readonly iMaxMm4: number;
  readonly iMinMm4: number;
  /** Section moduli to the farther fibre. */
  readonly sxMm3: number;
  readonly syMm3: number;
  /** Distance from the centroid to the outer faces: up, down, right, left. */
  readonly reach: { readonly upMm: number; readonly downMm: number; readonly rightMm: number; readonly leftMm: number };
};

/**
 * Area and second moments of straight walls: A = Σ L t, Ix = Σ[L t (Δy²/12 + ȳ²) + L t³ cos²/12], Ixy likewise.
 * Derived; the formulas are those of any text on thin-walled sections.
 */
export function thinWalledSection(walls: readonly WallStrip[]): ThinWalledSection {
  const areaMm2 = sum(walls, areaOf);
  const centroid = {
    xMm: sum(walls, (wall) => areaOf(wall) * middle(wall).xMm) / areaMm2,
    yMm: sum(walls, (wall) => areaOf(wall) * middle(wall).yMm) / areaMm2,
  };
  const ixMm4 = sum(walls, (wall) => secondMoment(wall, centroid, "yMm", "yMm"));
  const iyMm4 = sum(walls, (wall) => secondMoment(wall, centroid, "xMm", "xMm"));
  const ixyMm4 = sum(walls, (wall) => secondMoment(wall, centroid, "xMm", "yMm"));
  const reach = reachOf(walls, centroid);
  const spread = Math.sqrt(((ixMm4 - iyMm4) / 2) * ((ixMm4 - iyMm4) / 2) + ixyMm4 * ixyMm4);
  return {
    areaMm2,
    centroid,
    ixMm4,
    iyMm4,
    ixyMm4,
    iMaxMm4: (ixMm4 + iyMm4) / 2 + spread,
    iMinMm4: (ixMm4 + iyMm4) / 2 - spread,
    sxMm3: ixMm4 / Math.max(reach.upMm, reach.downMm),
    syMm3: iyMm4 / Math.max(reach.rightMm, reach.leftMm),
    reach,
  };
}

export const lengthOf = ({ from, to }: WallStrip): number => {
  const [dx, dy] = [to.xMm - from.xMm, to.yMm - from.yMm];
  return Math.sqrt(dx * dx + dy * dy);
};

type Axis = "xMm" | "yMm";

const sum = (walls: readonly WallStrip[], of: (wall: WallStrip) => number): number =>
  walls.reduce((total, wall) => total + of(wall), 0);

const areaOf = (wall: WallStrip): number => lengthOf(wall) * wall.thicknessMm;

const middle = ({ from, to }: WallStrip): SectionPoint => ({
  xMm: (from.xMm + to.xMm) / 2,
  yMm: (from.yMm + to.yMm) / 2,
});

/** ∫ a b dA of one wall about the centroid; the wall's own thickness counts along its normal. */
function secondMoment(wall: WallStrip, centroid: SectionPoint, a: Axis, b: Axis): number {
  const { from, to } = wall;
  const length = lengthOf(wall);
  const along = (axis: Axis): number => (to[axis] - from[axis]) / length;
  const across = (axis: Axis): number => (axis === "xMm" ? -along("yMm") : along("xMm"));
  const offset = (axis: Axis): number => middle(wall)[axis] - centroid[axis];
  const area = length * wall.thicknessMm;
  return (
    area * offset(a) * offset(b) +
    (area * length * length * along(a) * along(b)) / 12 +
    (area * wall.thicknessMm * wall.thicknessMm * across(a) * across(b)) / 12
  );
}

function reachOf(walls: readonly WallStrip[], centroid: SectionPoint): ThinWalledSection["reach"] {
  const faces = (axis: Axis): number[] =>
    walls.flatMap((wall) => {
      const other = axis === "xMm" ? "yMm" : "xMm";
      const half = (Math.abs(wall.to[other] - wall.from[other]) / lengthOf(wall)) * (wall.thicknessMm / 2);
      return [wall.from[axis] + half, wall.from[axis] - half, wall.to[axis] + half, wall.to[axis] - half];
    });
  const [xs, ys] = [faces("xMm"), faces("yMm")];
  return {
    upMm: Math.max(...ys) - centroid.yMm,
    downMm: centroid.yMm - Math.min(...ys),
    rightMm: Math.max(...xs) - centroid.xMm,
    leftMm: centroid.xMm - Math.min(...xs),
  };
}
