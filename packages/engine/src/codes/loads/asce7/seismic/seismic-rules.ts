import type { SeismicRules } from "../../../../loads/design-basis.ts";
import type { Asce7Edition } from "../asce7-edition.ts";
import { importanceFactors } from "../importance-factors.ts";
import { seismicDesign } from "./design-spectrum.ts";
import { horizontalIrregularities } from "./horizontal-irregularities.ts";
import { lateralForces } from "./lateral-forces.ts";
import { permitSystem } from "./permit-system.ts";
import { redundancy } from "./redundancy.ts";
import { seismicDrift, stabilityCoefficient } from "./storey-drift.ts";
import { accidentalEccentricity, torsionalRatio, torsionAmplification } from "./torsion.ts";
import { verticalIrregularities } from "./vertical-irregularities.ts";

/** Chapters 11 and 12 of one edition. */
export const seismicRules = (edition: Asce7Edition): SeismicRules => ({
  design: ({ seismic, riskCategory }) => seismicDesign(edition, seismic, riskCategory),
  permit: (system, category, heightMm) => permitSystem(edition, system, category, heightMm),
  forces: (design, request) => lateralForces(edition, design, request),
  irregularities: (category, storeys) => [
    ...storeys.flatMap((storey) => horizontalIrregularities(edition, category, storey)),
    ...verticalIrregularities(edition, category, storeys),
  ],
  redundancy: (category, storeys, found) => redundancy(edition, category, storeys, found),
  /** 12.4.2.2: 0.2·S_DS; none in category B (its exception) and A. */
  verticalShare: ({ sds, category }) => (category === "A" || category === "B" ? 0 : 0.2 * sds),
  /** 12.5: 100 % and 30 % in D to F, for every building rather than for shared columns alone. */
  orthogonalShare: (category) => (category === "D" || category === "E" || category === "F" ? 0.3 : 0),
  drift: ({ riskCategory }, storey) =>
    seismicDrift(edition, {
      ...storey,
      importance: importanceFactors[riskCategory].seismic,
      riskCategory,
      tolerant: false,
    }),
  stability: ({ riskCategory }, { elasticMm, ...storey }) => {
    const importance = importanceFactors[riskCategory].seismic;
    return stabilityCoefficient(edition, { ...storey, importance, driftMm: (storey.cd * elasticMm) / importance });
  },
  /** 12.8.4.3: amplified in C to F where the floor is torsionally irregular. */
  accidentalEccentricity: (category, storey, axis) => {
    const ratio = torsionalRatio(storey, axis);
    const amplify = category !== "A" && category !== "B" && ratio !== undefined && ratio > 1.2;
    return accidentalEccentricity * (amplify ? torsionAmplification(edition, ratio).result.value : 1);
  },
});
