import type { ModelSection } from "../model/analytical-model.ts";

/**
 * Writes the stiffness of a straight member in its local axes into `k` (12 × 12, row-major): ends i then j, ux uy uz rx ry rz each, with
 * shear deformation where the section has shear areas.
 * Source: Przemieniecki, Theory of Matrix Structural Analysis, §5.6 (from memory); test: closed beam formulae.
 */
export function memberStiffness(section: ModelSection, lengthMm: number, k: Float64Array): void {
  k.fill(0);
  bar(k, 0, (section.E * section.A) / lengthMm);
  bar(k, 3, (section.G * section.J) / lengthMm);
  bending(
    k,
    1,
    5,
    1,
    section.E * section.Iz,
    shearRatio(section.E * section.Iz, section.G, section.Asy, lengthMm),
    lengthMm,
  );
  bending(
    k,
    2,
    4,
    -1,
    section.E * section.Iy,
    shearRatio(section.E * section.Iy, section.G, section.Asz, lengthMm),
    lengthMm,
  );
}

/**
 * Writes into `f` the forces the nodes exert on the fixed ends of a member under a uniform load (N/mm) along local axis 0, 1
 * or 2; the same with and without shear deformation, by symmetry. Source: w·L/2, w·L²/12 (fixed-fixed beam, uniform load).
 */
export function fixedEndForces(axis: 0 | 1 | 2, lengthMm: number, load: number, f: Float64Array): void {
  f[axis] = (-load * lengthMm) / 2;
  f[6 + axis] = (-load * lengthMm) / 2;
  if (axis === 0) return;
  const rotation = axis === 1 ? 5 : 4;
  const sign = axis === 1 ? -1 : 1;
  f[rotation] = (sign * load * lengthMm * lengthMm) / 12;
  f[6 + rotation] = (-sign * load * lengthMm * lengthMm) / 12;
}

/** Φ = 12·EI/(G·As·L²), the ratio of shear to bending flexibility; zero without a shear area. */
function shearRatio(bendingStiffness: number, G: number, shearArea: number | undefined, lengthMm: number): number {
  return shearArea === undefined ? 0 : (12 * bendingStiffness) / (G * shearArea * lengthMm * lengthMm);
}

function bar(k: Float64Array, freedom: number, stiffness: number): void {
  pair(k, freedom, freedom, stiffness);
  pair(k, 6 + freedom, 6 + freedom, stiffness);
  pair(k, freedom, 6 + freedom, -stiffness);
}

/** `sign` is −1 in the x-z plane, where a positive rotation about y lowers the far end. */
function bending(k: Float64Array, u: number, r: number, sign: 1 | -1, EI: number, phi: number, L: number): void {
  const base = EI / (L * (1 + phi));
  const shear = (12 * base) / (L * L);
  const mixed = (sign * 6 * base) / L;
  pair(k, u, u, shear);
  pair(k, 6 + u, 6 + u, shear);
  pair(k, u, 6 + u, -shear);
  pair(k, u, r, mixed);
  pair(k, u, 6 + r, mixed);
  pair(k, 6 + u, r, -mixed);
  pair(k, 6 + u, 6 + r, -mixed);
  pair(k, r, r, (4 + phi) * base);
  pair(k, 6 + r, 6 + r, (4 + phi) * base);
  pair(k, r, 6 + r, (2 - phi) * base);
}

function pair(k: Float64Array, row: number, column: number, value: number): void {
  k[row * 12 + column] = value;
  k[column * 12 + row] = value;
}
