import { lengthOf, thinWalledSection, type SectionPoint, type WallStrip } from "./thin-walled-section.ts";
import type { ThinWalledSection } from "./thin-walled-section.ts";

/** An open thin-walled section: one strip bent along a line, with what torsion needs. */
export type OpenSection = ThinWalledSection & {
  readonly jMm4: number;
  readonly cwMm6: number;
  readonly shearCentre: SectionPoint;
  /** Polar radius of gyration about the shear centre. */
  readonly r0Mm: number;
};

/**
 * Section bent along `outline` (centreline, in order) from sheet of one thickness. J = Σ L t³/3; shear centre and
 * warping constant from the sectorial coordinate ω (Vlasov), integrated exactly for straight walls. Derived.
 */
export function openSection(outline: readonly SectionPoint[], thicknessMm: number): OpenSection {
  const walls = wallsAlong(outline, thicknessMm);
  const plane = thinWalledSection(walls);
  const shearCentre = shearCentreOf(walls, plane);
  const polar = plane.ixMm4 + plane.iyMm4;
  const [dx, dy] = [shearCentre.xMm - plane.centroid.xMm, shearCentre.yMm - plane.centroid.yMm];
  return {
    ...plane,
    jMm4: walls.reduce((total, wall) => total + (lengthOf(wall) * cube(wall.thicknessMm)) / 3, 0),
    cwMm6: warpingConstant(walls, shearCentre, plane.areaMm2),
    shearCentre,
    r0Mm: Math.sqrt(polar / plane.areaMm2 + dx * dx + dy * dy),
  };
}

export function wallsAlong(outline: readonly SectionPoint[], thicknessMm: number): WallStrip[] {
  return outline.flatMap((to, at) => {
    const from = outline[at - 1];
    return from === undefined ? [] : [{ from, to, thicknessMm }];
  });
}

const cube = (value: number): number => value * value * value;

/** A wall with the values some quantity has at its two ends, linear between. */
type Varying = { readonly wall: WallStrip; readonly start: number; readonly end: number };

/** ω along the walls for a pole: twice the area swept by the ray from the pole. */
function sectorial(walls: readonly WallStrip[], pole: SectionPoint): Varying[] {
  let reached = 0;
  return walls.map((wall) => {
    const start = reached;
    const { from, to } = wall;
    reached += (from.xMm - pole.xMm) * (to.yMm - from.yMm) - (from.yMm - pole.yMm) * (to.xMm - from.xMm);
    return { wall, start, end: reached };
  });
}

/** ∫ f g dA over the walls, both linear along each. */
function integral(pairs: readonly Varying[], other: (wall: WallStrip) => readonly [number, number]): number {
  return pairs.reduce((total, { wall, start, end }) => {
    const [otherStart, otherEnd] = other(wall);
    const mean = (2 * start * otherStart + 2 * end * otherEnd + start * otherEnd + end * otherStart) / 6;
    return total + lengthOf(wall) * wall.thicknessMm * mean;
  }, 0);
}

function shearCentreOf(walls: readonly WallStrip[], plane: ThinWalledSection): SectionPoint {
  const { centroid, ixMm4, iyMm4, ixyMm4 } = plane;
  const omega = sectorial(walls, centroid);
  const omegaY = integral(omega, ({ from, to }) => [from.yMm - centroid.yMm, to.yMm - centroid.yMm]);
  const omegaX = integral(omega, ({ from, to }) => [from.xMm - centroid.xMm, to.xMm - centroid.xMm]);
  const determinant = ixMm4 * iyMm4 - ixyMm4 * ixyMm4;
  return {
    xMm: centroid.xMm + (iyMm4 * omegaY - ixyMm4 * omegaX) / determinant,
    yMm: centroid.yMm - (ixMm4 * omegaX - ixyMm4 * omegaY) / determinant,
  };
}

function warpingConstant(walls: readonly WallStrip[], shearCentre: SectionPoint, areaMm2: number): number {
  const omega = sectorial(walls, shearCentre);
  const mean = integral(omega, () => [1, 1]) / areaMm2;
  const normalised = omega.map(({ wall, start, end }) => ({ wall, start: start - mean, end: end - mean }));
  const byWall = new Map(normalised.map(({ wall, start, end }) => [wall, [start, end] as const]));
  return integral(normalised, (wall) => byWall.get(wall) ?? [0, 0]);
}

/** Greatest normalised sectorial coordinate, mm²: where a bimoment B stresses the section most, B ω/C_w (Vlasov). */
export function greatestSectorialMm2(outline: readonly SectionPoint[], thicknessMm: number): number {
  const walls = wallsAlong(outline, thicknessMm);
  const plane = thinWalledSection(walls);
  const omega = sectorial(walls, shearCentreOf(walls, plane));
  const mean = integral(omega, () => [1, 1]) / plane.areaMm2;
  return Math.max(...omega.flatMap(({ start, end }) => [Math.abs(start - mean), Math.abs(end - mean)]));
}
