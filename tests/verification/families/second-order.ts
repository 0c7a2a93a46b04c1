import {
  benchmarkBow,
  portalLean,
  portalReference,
  yieldPressureKpa,
} from "../../../packages/engine/test/codes-steel/support/second-order-answers.ts";
import type { VerificationCase, VerificationFamily } from "../verification-case.ts";

const benchmark = (kip: number, moment: number): VerificationCase => ({
  id: `second order: bow under ${kip} kip`,
  what: `W14x48, 28 ft, 0.2 kip/ft, thrust ${kip} kip: moment in the middle over 235.2 kip-in without thrust`,
  source: "AISC 360 commentary C2, benchmark problem 1",
  certainty: "memory",
  reference: moment / 235.2,
  unit: "1",
  allowed: { relative: 0.015 },
  ours: () => benchmarkBow(kip),
});

const lean = (verticalKn: number): VerificationCase => ({
  id: `second order: portal under ${verticalKn} kN`,
  what: `portal 2.40 × 2.26 m on pinned bases, I 5·10⁶ and 2·10⁶ mm⁴, ${verticalKn} kN on it: sway over its first-order sway`,
  source: "elastic less geometric stiffness, four bars a column, solved with a library for matrices",
  certainty: "derived",
  reference: portalReference(verticalKn * 1000),
  unit: "1",
  // R_M = 0.85 is the code's lower bound for frames: ours may be more and never less
  allowed: { short: 0, over: 0.08 },
  ours: () => portalLean(verticalKn * 1000),
});

/** Second order by factors, and sheet bent out of its plane. */
export const secondOrder: VerificationFamily = {
  id: "second-order",
  title: "Second order, and sheet bent out of its plane",
  about:
    "Factors on first-order forces against the exact beam-column and a solution with geometric stiffness, stiffness not reduced; the pressure at which a side sheet first yields against what the ISO side-wall test puts on it.",
  cases: [
    benchmark(150, 268.9),
    benchmark(300, 313.5),
    benchmark(450, 375.4),
    lean(50),
    lean(100),
    {
      id: "sheet: side wall test",
      what: "side sheet 1.6 mm of 343 MPa, 2.35 m clear as a simple span: pressure at first yield against 0.6·P·g on a 40 ft side",
      source: "ISO 1496-1 test 6, 157.2 kN over 11.8 × 2.35 m",
      certainty: "memory",
      reference: 5.6,
      unit: "kPa",
      // a proof load: the sheet, fixed in part by its welds, has to bear it without harmful set; a simple span may yield before
      allowed: { short: 0.35, over: 1 },
      ours: yieldPressureKpa,
    },
  ],
};
