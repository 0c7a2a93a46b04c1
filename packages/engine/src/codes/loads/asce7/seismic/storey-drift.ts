import type { RiskCategory } from "../../../../loads/site-hazards.ts";
import type { Working } from "../../../../working/working.ts";
import { openWorking } from "../../../../working/open-working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";

export type DriftRequest = {
  readonly elasticMm: number;
  readonly storeyMm: number;
  readonly cd: number;
  readonly importance: number;
  readonly riskCategory: RiskCategory;
  /** Up to four storeys with finishes that take the movement (Table 12.12-1). */
  readonly tolerant: boolean;
};

/** Design storey drift against what is allowed, 12.8.6 and 12.12.1. */
export function seismicDrift(edition: Asce7Edition, request: DriftRequest): Working {
  const w = openWorking("Storey drift in an earthquake", asce7(edition, "12.8.6, 12.12.1"));
  w.let("δ", request.elasticMm, "mm", "elastic storey movement at strength level", "derived");
  w.let("C_d", request.cd, "1", "deflection amplification", "memory", "Table 12.2-1");
  w.let("I_e", request.importance, "1", "importance", "memory", "Table 1.5-2");
  w.let("h_sx", request.storeyMm, "mm", "storey height", "derived");
  w.let(
    "r",
    allowed[request.riskCategory][request.tolerant ? 1 : 0],
    "1",
    "allowed part of the height",
    "memory",
    "Table 12.12-1",
  );
  w.compute("Δ", "C_d * δ / I_e", "mm", "12.8-15");
  w.compute("Δ_a", "r * h_sx", "mm", "Table 12.12-1");
  return w.against("Δ", "Δ_a");
}

const allowed: Readonly<Record<RiskCategory, readonly [number, number]>> = {
  I: [0.02, 0.025],
  II: [0.02, 0.025],
  III: [0.015, 0.02],
  IV: [0.01, 0.015],
};

export type StabilityRequest = {
  readonly verticalN: number;
  readonly driftMm: number;
  readonly importance: number;
  readonly shearN: number;
  readonly storeyMm: number;
  readonly cd: number;
};

/** Stability coefficient θ against its limit, 12.8.7, with β = 1. Up to 0.10 second order may be left out. */
export function stabilityCoefficient(edition: Asce7Edition, request: StabilityRequest): Working {
  const w = openWorking("Stability coefficient of the storey", asce7(edition, "12.8.7"));
  w.let("P_x", request.verticalN, "N", "vertical load, factors 1", "derived");
  w.let("Δ", request.driftMm, "mm", "design storey drift", "derived");
  w.let("I_e", request.importance, "1", "importance", "memory", "Table 1.5-2");
  w.let("V_x", request.shearN, "N", "storey shear", "derived");
  w.let("h_sx", request.storeyMm, "mm", "storey height", "derived");
  w.let("C_d", request.cd, "1", "deflection amplification", "memory", "Table 12.2-1");
  w.compute("θ", "P_x * Δ * I_e / (V_x * h_sx * C_d)", "1", "12.8-16");
  w.compute("θ_max", "min(0.5 / C_d, 0.25)", "1", "12.8-17");
  w.when("θ", "<=", "0.10", "second order may be left out");
  return w.against("θ", "θ_max");
}
