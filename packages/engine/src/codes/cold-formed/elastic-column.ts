import { atan2, cos, sin } from "../../numerics/elementary.ts";
import { shearModulus, steelModulus } from "../../catalog/materials.ts";
import type { OpenSection } from "../../catalog/sections/open-section.ts";

/** Effective lengths for bending in the planes of the larger and the smaller principal moment, and for twist, mm. */
export type BucklingLengths = { readonly strongMm: number; readonly weakMm: number; readonly twistMm: number };

/** Elastic buckling stresses of an open section, MPa: the three of their own and the least of the three together. */
export type ElasticColumn = {
  readonly strongMpa: number;
  readonly weakMpa: number;
  readonly twistMpa: number;
  readonly leastMpa: number;
  /** Shear centre from the centroid along the principal axes (strong axis, weak axis), and the polar radius about it. */
  readonly alongStrongMm: number;
  readonly alongWeakMm: number;
  readonly r0Mm: number;
};

/**
 * Flexural-torsional buckling of any open section: the least root of
 * (σ − σ_x)(σ − σ_y)(σ − σ_t) − σ²(σ − σ_y)(x₀/r₀)² − σ²(σ − σ_x)(y₀/r₀)² = 0
 * (AISI S100 Appendix 2, 2.3.1.1; AISC 360 E4-4). Found by halving between 0 and the least of σ_x, σ_y, σ_t.
 */
export function elasticColumn(section: OpenSection, lengths: BucklingLengths): ElasticColumn {
  const { areaMm2, iMaxMm4, iMinMm4, jMm4, cwMm6, r0Mm } = section;
  const piE = Math.PI * Math.PI * steelModulus.valueMpa;
  const squared = (value: number): number => value * value;
  const strongMpa = (piE * iMaxMm4) / (areaMm2 * squared(lengths.strongMm));
  const weakMpa = (piE * iMinMm4) / (areaMm2 * squared(lengths.weakMm));
  const twistMpa =
    (shearModulus.valueMpa * jMm4 + (piE * cwMm6) / squared(lengths.twistMm)) / (areaMm2 * squared(r0Mm));
  const { alongStrongMm, alongWeakMm } = principalShearCentre(section);
  const [a, b] = [squared(alongStrongMm / r0Mm), squared(alongWeakMm / r0Mm)];
  const cubic = (s: number): number =>
    (s - strongMpa) * (s - weakMpa) * (s - twistMpa) - s * s * ((s - weakMpa) * a + (s - strongMpa) * b);
  const leastMpa = firstRoot(cubic, Math.min(strongMpa, weakMpa, twistMpa));
  return { strongMpa, weakMpa, twistMpa, leastMpa, alongStrongMm, alongWeakMm, r0Mm };
}

/** Strong axis: the one about which the second moment is largest; x₀ runs along it. */
function principalShearCentre(section: OpenSection): Pick<ElasticColumn, "alongStrongMm" | "alongWeakMm"> {
  const { ixMm4, iyMm4, ixyMm4, centroid, shearCentre } = section;
  const turn = atan2(-2 * ixyMm4, ixMm4 - iyMm4) / 2;
  const [dx, dy] = [shearCentre.xMm - centroid.xMm, shearCentre.yMm - centroid.yMm];
  return { alongStrongMm: dx * cos(turn) + dy * sin(turn), alongWeakMm: dy * cos(turn) - dx * sin(turn) };
}

/** The cubic is negative at 0 and not negative at the least stress; it changes sign once between them. */
function firstRoot(cubic: (stress: number) => number, most: number): number {
  let [low, high] = [0, most];
  for (let halving = 0; halving < 100; halving += 1) {
    const middle = (low + high) / 2;
    if (cubic(middle) < 0) low = middle;
    else high = middle;
  }
  return low;
}
