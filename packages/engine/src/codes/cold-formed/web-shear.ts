import type { OpenWorking } from "../../working/open-working.ts";

/** V_n of a web without stiffeners, N, from the V_y and V_cr noted before it (AISI S100 G2.1). */
export function webShear(working: OpenWorking): void {
  working.compute("λ_v", "sqrt(V_y/V_cr)", "1", "Eq. G2.1-4");
  if (working.when("λ_v", "<=", "0.815", "G2.1")) working.compute("V_n", "V_y", "N", "Eq. G2.1-1");
  else if (working.when("λ_v", "<=", "1.227", "G2.1"))
    working.compute("V_n", "0.815*sqrt(V_cr*V_y)", "N", "Eq. G2.1-2");
  else working.compute("V_n", "V_cr", "N", "Eq. G2.1-3");
}
