import { availableStrength, type StrengthFactors } from "../../working/design-method.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { aisi, type ColdFormedBasis } from "./cold-formed-basis.ts";

/** Axial force with bending about both axes (H1.1, H1.2): plain sum of the three ratios. Second order is in the demands. */
export function thinAxialWithBending(
  required: { readonly axialN: number; readonly mxNmm: number; readonly myNmm: number },
  available: { readonly axial: Working; readonly mx: Working; readonly my: Working },
  basis: ColdFormedBasis,
): Working {
  const working = openWorking("Axial force with bending, cold-formed", aisi(basis, "H1.1, H1.2"));
  working.let("P", Math.abs(required.axialN), "N", "required axial strength", "derived", "analysis");
  working.let(
    "M_x",
    Math.abs(required.mxNmm),
    "N·mm",
    "required moment in the plane of the web",
    "derived",
    "analysis",
  );
  working.let("M_y", Math.abs(required.myNmm), "N·mm", "required moment across the web", "derived", "analysis");
  working.take("P_a", available.axial);
  working.take("M_ax", available.mx);
  working.take("M_ay", available.my);
  working.compute("ratio", "P/P_a + M_x/M_ax + M_y/M_ay", "1", "Eq. H1.2-1");
  working.let("limit", 1, "1", "limit", "memory");
  return working.against("ratio", "limit");
}

/** Bending with shear at one place (H2). */
export function thinBendingWithShear(
  required: { readonly momentNmm: number; readonly shearN: number },
  available: { readonly moment: Working; readonly shear: Working },
  basis: ColdFormedBasis,
): Working {
  const working = openWorking("Bending with shear, cold-formed", aisi(basis, "H2"));
  working.let("M", Math.abs(required.momentNmm), "N·mm", "required moment", "derived", "analysis");
  working.let("V", Math.abs(required.shearN), "N", "required shear", "derived", "analysis");
  working.take("M_a", available.moment);
  working.take("V_a", available.shear);
  working.compute("ratio", "sqrt((M/M_a)^2 + (V/V_a)^2)", "1", "Eq. H2-1");
  working.let("limit", 1, "1", "limit", "memory");
  return working.against("ratio", "limit");
}

/** φ and Ω of bending with web crippling (AISI S100 H3). */
const cripplingFactors: StrengthFactors = { phi: 0.9, omega: 1.7, certainty: "memory" };

/** Bending with web crippling at one place, single web (H3): 0.91 P/P_n + M/M_n ≤ 1.33 φ or 1.33/Ω; nominal strengths, N, N·mm. */
export function thinBendingWithCrippling(
  required: { readonly momentNmm: number; readonly forceN: number },
  nominal: { readonly momentNmm: number; readonly forceN: number },
  basis: ColdFormedBasis,
): Working {
  const working = openWorking("Bending with web crippling, cold-formed", aisi(basis, "H3"));
  working.let("M", Math.abs(required.momentNmm), "N·mm", "required moment", "derived", "analysis");
  working.let("P", Math.abs(required.forceN), "N", "required bearing force", "derived", "analysis");
  working.let("M_n", nominal.momentNmm, "N·mm", "nominal strength in bending", "derived");
  working.let("P_n", nominal.forceN, "N", "nominal strength in web crippling", "derived");
  working.compute("ratio", "0.91*P/P_n + M/M_n", "1", "Eq. H3-1");
  working.let("c", 1.33, "1", "single web", "memory");
  availableStrength(working, "limit", "c", "1", cripplingFactors, basis.method);
  return working.against("ratio", "limit");
}
