import {
  namedPad,
  railAndTube,
  railBesideTubeMm,
  roofFlow,
  weldFlowUnder,
} from "../../../packages/engine/test/strength/support/detail-answers.ts";
import type { VerificationCase, VerificationFamily } from "../verification-case.ts";

type Weld = readonly [string, Parameters<typeof weldFlowUnder>[0], number];

const weld = ([what, forces, reference]: Weld): VerificationCase => ({
  id: `weld all round: ${what}`,
  what: `weld all round a tube of 100 × 100 mm, ${what}: greatest flow`,
  source: "elastic, the weld as a line: length 400 mm, S = 13 333 mm², J = 1 333 333 mm³, corner 70.7 mm off",
  certainty: "derived",
  reference,
  unit: "N/mm",
  allowed: { relative: 1e-4 },
  ours: () => weldFlowUnder(forces),
});

const { rail, tube } = railAndTube;
/** π² E (I₁ + I₂)/L² of both, of which the rail has A₁/(A₁ + A₂), is π² E I₁/l² of the rail alone. */
const besideMm = Math.sqrt((rail.ixMm4 * (rail.areaMm2 + tube.areaMm2)) / ((rail.ixMm4 + tube.ixMm4) * rail.areaMm2));

/** Welds of frames, bars welded along each other, a roof as a diaphragm, the pad that would do. */
export const details: VerificationFamily = {
  id: "details",
  title: "Details: welds of frames, bars along each other, roofs in shear, pads",
  about:
    "Hand arithmetic, shown with each case, against the checks of details and the sizes that are named. Sizes are drawn in steps of 100 mm.",
  cases: [
    weld(["40 kN along it", { axialN: 40_000 }, 100]),
    weld(["30 and 40 kN across it", { shearStrongN: 30_000, shearWeakN: 40_000 }, 125]),
    weld(["2 kN·m of bending", { momentStrongNmm: 2e6 }, 150]),
    weld(["1 kN·m of torsion", { torsionNmm: 1e6 }, 53.033]),
    weld(["40 kN along and 50 kN across", { axialN: 40_000, shearStrongN: 50_000 }, 160.078]),
    {
      id: "rail beside a header",
      what: "top rail welded along a frame tube over 12 m: length at which it would bow alone as it does so",
      source: "sum of both elastic forces, shared as their areas",
      certainty: "derived",
      reference: 12_000 * besideMm,
      unit: "mm",
      allowed: { relative: 1e-9 },
      ours: railBesideTubeMm,
    },
    {
      id: "roof in shear",
      what: "40 ft unit with an open door end, 10 kN across the middle of its roof: shear of the roof towards the blind end",
      source: "statics: 10 kN over 2.259 m; what the soft door frame takes is missing",
      certainty: "derived",
      reference: 10_000 / 2259,
      unit: "N/mm",
      allowed: { short: 0.1, over: 0.001 },
      ours: roofFlow,
    },
    {
      id: "pad on clay",
      what: "100 kN on ground of 71.8 kPa: side of the square pad named",
      source: "√(100 / 71.8) = 1.180 m, drawn as 1.2 m",
      certainty: "derived",
      reference: 1200,
      unit: "mm",
      allowed: { absolute: 0 },
      ours: () => namedPad(0)?.sideMm ?? Number.NaN,
    },
    {
      id: "pad that is pulled",
      what: "the same pulled by 20 kN, at least 0.5 m deep: side of the square pad named",
      source: "20 kN / (0.9 · 23.5 kN/m³) = 0.946 m³; 1.4 × 1.4 × 0.5 m is the least in steps of 0.1 m",
      certainty: "derived",
      reference: 1400,
      unit: "mm",
      allowed: { absolute: 0 },
      ours: () => namedPad(20_000)?.sideMm ?? Number.NaN,
    },
  ],
};
