import type { SeismicRequest } from "../../../../loads/design-basis.ts";
import type { SeismicForces, StoreyForce, StoreyMass } from "../../../../loads/seismic-force.ts";
import type { SeismicDesign } from "../../../../loads/seismic-site.ts";
import { pow } from "../../../../numerics/elementary.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { interpolate } from "../../interpolate.ts";
import { designPeriod, responseCoefficient } from "./base-shear.ts";

/**
 * Equivalent lateral forces, 12.8, and diaphragm forces, 12.10.1.1. In category A each level takes 1 % of its weight.
 */
export function lateralForces(edition: Asce7Edition, design: SeismicDesign, request: SeismicRequest): SeismicForces {
  const period = designPeriod(edition, design, request.kind, request.heightMm, request.computedPeriodS);
  const coefficient = responseCoefficient(edition, design, request.r, period);
  const weight = request.storeys.reduce((sum, { weightN }) => sum + weightN, 0);
  const w = openWorking("Seismic base shear", asce7(edition, "12.8.1"));
  w.take("C_s", coefficient);
  w.let("W", weight, "N", "effective seismic weight", "derived", "12.7.2");
  w.compute("V", "C_s * W", "N", "12.8-1");
  const baseShear = w.giving("V");
  const levels = distribute(edition, baseShear, period, request.storeys, design.category === "A");
  return {
    coefficient,
    baseShear,
    periodS: period.result.value,
    storeys: levels.map((level, at) => withDiaphragm(edition, design, level, levels.slice(at))),
  };
}

type Level = StoreyMass & { readonly working: Working };

/** 12.8.3: each level by w·h^k; in category A by weight alone (1.4.2). */
function distribute(
  edition: Asce7Edition,
  baseShear: Working,
  period: Working,
  storeys: readonly StoreyMass[],
  byWeight: boolean,
): Level[] {
  const k = byWeight
    ? 0
    : interpolate(
        [
          [0.5, 1],
          [2.5, 2],
        ],
        period.result.value,
      );
  const moment = ({ weightN, heightMm }: StoreyMass) => weightN * pow(heightMm / 1000, k);
  const sum = storeys.reduce((total, storey) => total + moment(storey), 0);
  return storeys.map((storey) => {
    const w = openWorking(`Force at level ${storey.id}`, asce7(edition, byWeight ? "1.4.2" : "12.8.3"));
    w.take("V", baseShear);
    w.let("k", k, "1", "exponent for the period", "memory", "12.8.3");
    w.let("w_x", storey.weightN, "N", "weight of the level", "derived");
    w.let("h_x", storey.heightMm / 1000, "m", "height of the level", "derived");
    w.let("Σ", sum, "1", "sum of w·h^k over all levels, N and m", "derived");
    w.compute("C_vx", "w_x * h_x^k / Σ", "1", "12.8-12");
    w.compute("F_x", "C_vx * V", "N", "12.8-11");
    return { ...storey, working: w.giving("F_x") };
  });
}

function withDiaphragm(
  edition: Asce7Edition,
  design: SeismicDesign,
  level: Level,
  fromHere: readonly Level[],
): StoreyForce {
  const w = openWorking(`Diaphragm force at level ${level.id}`, asce7(edition, "12.10.1.1"));
  const sum = (of: (one: Level) => number) => fromHere.reduce((total, one) => total + of(one), 0);
  w.let(
    "ΣF",
    sum(({ working }) => working.result.value),
    "N",
    "forces of this level and above",
    "derived",
  );
  w.let(
    "Σw",
    sum(({ weightN }) => weightN),
    "N",
    "weights of this level and above",
    "derived",
  );
  w.let("w_px", level.weightN, "N", "weight of the diaphragm", "derived");
  w.let("S_DS", design.sds, "g", "design acceleration, short", "derived");
  w.let("I_e", design.importance, "1", "importance", "memory", "Table 1.5-2");
  w.compute("F_1", "ΣF / Σw * w_px", "N", "12.10-1");
  w.compute(
    "F_px",
    design.category === "A" ? "F_1" : "max(min(F_1, 0.4 * S_DS * I_e * w_px), 0.2 * S_DS * I_e * w_px)",
    "N",
    "12.10-2, 12.10-3",
  );
  const diaphragm = w.giving("F_px");
  const { id, heightMm, weightN, working } = level;
  return {
    id,
    heightMm,
    weightN,
    forceN: working.result.value,
    diaphragmN: diaphragm.result.value,
    workings: [working, diaphragm],
  };
}
