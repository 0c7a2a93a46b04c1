import { poissonRatio, steelModulus } from "../../catalog/materials.ts";

/** Stress a flat element would buckle at with plate factor k: k π² E/(12(1 − μ²)) (t/w)² (AISI S100 Appendix 1, 1.1). */
export function plateBucklingMpa(k: number, widthMm: number, thicknessMm: number): number {
  const ratio = thicknessMm / widthMm;
  const mu = poissonRatio.value;
  return ((k * Math.PI * Math.PI * steelModulus.valueMpa) / (12 * (1 - mu * mu))) * ratio * ratio;
}

/** Share of a flat element that works at stress f: 1 up to λ = 0.673, then (1 − 0.22/λ)/λ (Appendix 1, 1.1). */
export function effectiveShare(k: number, widthMm: number, thicknessMm: number, stressMpa: number): number {
  const slenderness = Math.sqrt(stressMpa / plateBucklingMpa(k, widthMm, thicknessMm));
  return slenderness <= 0.673 ? 1 : (1 - 0.22 / slenderness) / slenderness;
}

/** Plate factors of evenly pressed elements: held on both edges, held on one (Appendix 1, 1.1 and 1.2.1). */
export const evenPlateFactors = { bothEdges: 4, oneEdge: 0.43 } as const;

/** A web in bending: stress at its pressed edge (> 0) and at the other (tension < 0), MPa. */
export type WebStress = { readonly pressedMpa: number; readonly farMpa: number };

/** What is left of a web under a stress gradient: lengths next to the pressed edge and above the neutral axis, mm. */
export type EffectiveWeb = {
  readonly psi: number;
  readonly k: number;
  readonly share: number;
  readonly atEdgeMm: number;
  readonly atAxisMm: number;
};

/**
 * Web under a stress gradient (Appendix 1, 1.1.2), flanges on one or both sides, h_o/b_o ≤ 4: ψ = |f₂/f₁|,
 * k = 4 + 2(1 + ψ)³ + 2(1 + ψ), b₁ = b_e/(3 + ψ), b₂ = b_e/2 for ψ > 0.236, else b_e − b₁.
 */
export function effectiveWeb(widthMm: number, thicknessMm: number, stress: WebStress): EffectiveWeb {
  const psi = Math.abs(stress.farMpa / stress.pressedMpa);
  const k = 4 + 2 * (1 + psi) * (1 + psi) * (1 + psi) + 2 * (1 + psi);
  const share = effectiveShare(k, widthMm, thicknessMm, stress.pressedMpa);
  const effective = share * widthMm;
  const atEdgeMm = effective / (3 + psi);
  return { psi, k, share, atEdgeMm, atAxisMm: psi > 0.236 ? effective / 2 : effective - atEdgeMm };
}
