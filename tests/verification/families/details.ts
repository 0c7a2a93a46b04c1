import {
  namedPad,
  railAndTube,
  railBesideTubeMm,
  roofFlow,
  thinWeldUse,
  twistedRailUse,
  webUnderCrossMemberUse,
  weldFlowAsAlong,
  weldFlowUnder,
} from "../../../packages/engine/test/strength/support/detail-answers.ts";
import {
  boardUse,
  pullWithoutPryingN,
  tensionBesideShearKip,
  tieUse,
} from "../../../packages/engine/test/strength/support/joint-answers.ts";
import {
  sideWallInTwistN,
  sillWherePadSettlesNmm,
} from "../../../packages/engine/test/strength/support/ordinary-answers.ts";
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

/**
 * A frame b wide and h high of sill, header and two posts, its posts leaning by ψ = 2 δ/b: joints below turn by θ, above by φ,
 * 6 k_s θ + 2 k_p (2 θ + φ − 3 ψ) = 0 and 6 k_h φ + 2 k_p (2 φ + θ − 3 ψ) = 0, k = I/l; M = 6 E k_s θ. mm, N·mm.
 */
function sillOfRackedFrame(sunkMm: number): number {
  const [b, h] = [2259, 2766];
  const [sill, header, post] = [3.4777e6 / b, 4.7348e6 / b, 7e6 / h];
  const lean = 6 * post * ((2 * sunkMm) / b);
  const [below, above, beside] = [6 * sill + 4 * post, 6 * header + 4 * post, 2 * post];
  return (6 * 200_000 * sill * lean * (above - beside)) / (below * above - beside * beside);
}

/** Ties, bolts and boards, worked by hand. */
const joints: readonly VerificationCase[] = [
  {
    id: "bolt in tension beside shear",
    what: "¾ in A325-N, 23.4 kips of pull beside 8.00 of shear, LRFD: tension it still takes",
    source: "AISC Design Examples J.3: 25.4 kips, from memory",
    certainty: "memory",
    reference: 25.4,
    unit: "kip",
    allowed: { relative: 0.005 },
    ours: () => tensionBesideShearKip(8),
  },
  {
    id: "bolt that pries nothing",
    what: "¾ in bolt 41.4 mm from a web, 76 mm from the next, plate of 10 mm of A36: pull without prying, LRFD",
    source: "0.9 · 76 · 399.9 · 10² / (4 · 31.875) (AISC Manual Part 9, from memory)",
    certainty: "memory",
    reference: (0.9 * 76 * 399.9 * 100) / (4 * 31.875),
    unit: "N",
    allowed: { relative: 0.001 },
    ours: pullWithoutPryingN,
  },
  {
    id: "tie pulled",
    what: "100 kN across the gap, plate 150 × 10 of A36: utilisation in yielding",
    source: "0.9 · 248.2 · 1500 = 335.1 kN (AISC 360 J4.1)",
    certainty: "derived",
    reference: 0.2984,
    unit: "1",
    allowed: { relative: 0.001 },
    ours: () => tieUse({ acrossN: -100_000 }, "tension"),
  },
  {
    id: "tie pressed",
    what: "100 kN across the gap of 300 mm: utilisation in buckling",
    source: "L/r 103.9, F_e 182.8, F_cr 140.6 MPa, 0.9 · 1500 of it (AISC 360 J4.4)",
    certainty: "derived",
    reference: 100_000 / (0.9 * 140.6 * 1500),
    unit: "1",
    allowed: { relative: 0.002 },
    ours: () => tieUse({ acrossN: 100_000 }, "compression"),
  },
  {
    id: "tie sheared",
    what: "10 kN along the gap: utilisation of the welds of one end",
    source: "I_p 2.25·10⁶ mm³, 2.9155 of 10 kN on 0.5 · 0.75 · 3 · 300 · 360 = 121.5 kN (AISI S100 J2.5)",
    certainty: "derived",
    reference: 29_155 / 121_500,
    unit: "1",
    allowed: { relative: 0.001 },
    ours: () => tieUse({ levelN: 10_000 }, "weld"),
  },
  {
    id: "boards under load",
    what: "floor boards over 308 mm under 5 kPa and 9 kN at one place: share of what a wheel of the ISO test proves",
    source: "(59.3 + 2250) / (0.9 · 4899) N·mm/mm; ISO 1496-1 test 8, from memory",
    certainty: "memory",
    reference: 2309.3 / (0.9 * 4899),
    unit: "1",
    allowed: { relative: 0.001 },
    ours: () => boardUse(5000, 9000),
  },
];

/** Welds of frames, bars welded along each other, a roof as a diaphragm, the pad that would do. */
export const details: VerificationFamily = {
  id: "details",
  title: "Details: ties, bolts, boards, welds of frames, bars along each other, roofs in shear, pads",
  about:
    "Hand arithmetic, shown with each case, against the checks of details and the sizes that are named. Sizes are drawn in steps of 100 mm.",
  cases: [
    ...joints,
    weld(["40 kN along it", { axialN: 40_000 }, 100]),
    weld(["30 and 40 kN across it", { shearStrongN: 30_000, shearWeakN: 40_000 }, 125]),
    weld(["2 kN·m of bending", { momentStrongNmm: 2e6 }, 150]),
    weld(["1 kN·m of torsion", { torsionNmm: 1e6 }, 53.033]),
    weld(["40 kN along and 50 kN across", { axialN: 40_000, shearStrongN: 50_000 }, 160.078]),
    {
      id: "weld all round a thin tube",
      what: "5 mm all round a tube of 60 × 60 × 3 mm, 25.5 kN along it, 2.8 kN·m and 4.83 kN of shear: utilisation, LRFD",
      source:
        "AISI S100 J2.5, from memory: across the less of 0.65·3·427 = 832.7 and 0.60·0.75·0.707·5·482.6 = 767.7 N/mm, along 0.50·0.75·3·427 = 480.4; flows 25 500/240 + 2.8e6/4800 = 689.6 and 4830/240 = 20.1, ellipse between",
      certainty: "memory",
      reference: Math.sqrt((689.6 / 767.7) ** 2 + (20.1 / 480.4) ** 2),
      unit: "1",
      allowed: { relative: 1e-3 },
      ours: () => thinWeldUse({ axialN: 25_500, momentStrongNmm: 2.8e6, shearStrongN: 4830 }),
    },
    {
      id: "weld pulled askew",
      what: "weld all round a tube of 100 × 100 mm, 30 kN along the tube and 40 across it: flow as if all ran along the weld",
      source:
        "EN 1993-1-8 4.5.3.2, from memory: σ⊥ = τ⊥ = 75/√2, τ∥ = 100 over a throat of 1 mm; √(σ⊥² + 3(τ⊥² + τ∥²))/√3, across √1.5 times along",
      certainty: "memory",
      reference: Math.sqrt((75 ** 2 / 2 + 3 * (75 ** 2 / 2 + 100 ** 2)) / 3),
      unit: "N/mm",
      allowed: { relative: 1e-9 },
      ours: () => weldFlowAsAlong({ axialN: 30_000, shearStrongN: 40_000 }, Math.sqrt(1.5)),
    },
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
      id: "bottom rail twisted at a seat",
      what: "8 kN across under a channel 162 × 48 × 30 × 4.5 midway between two cross members, 79 mm to the seat's plate: utilisation by warping alone, LRFD",
      source:
        "Vlasov by hand: shear centre 120.2 mm above the foot flange, C_w 3.956e8 mm⁶, ω 2561 mm² at the tip of the foot; 8 kN × 134.9 mm, half to either side × 79 mm, over 0.9 · 235 MPa",
      certainty: "derived",
      reference: (8000 * 134.9 * 0.5 * 79 * 2561) / 3.956e8 / (0.9 * 235),
      unit: "1",
      allowed: { relative: 0.01 },
      ours: () => twistedRailUse(8000 * 90),
    },
    {
      id: "web of a bottom rail under a cross member",
      what: "0.72 kN·m at the end of a cross member 122 deep on the web of a rail 162 deep, 4.5 mm: utilisation, LRFD",
      source: "plastic hinges: m = 235 · 4.5²/4, strip 40 + 2 · 39.5 mm wide, force 0.72e6/118 N at 39.5 of 157.5 mm",
      certainty: "derived",
      reference: 0.72e6 / 118 / (0.9 * 2 * ((235 * 4.5 ** 2) / 4) * 119 * (1 / 39.5 + 1 / 118)),
      unit: "1",
      allowed: { relative: 1e-3 },
      ours: () => webUnderCrossMemberUse(0.72e6),
    },
    {
      id: "roof in shear",
      what: "40 ft unit with an open door end, 10 kN across the middle of its roof: shear of the roof towards the blind end",
      source: "statics: 10 kN over 2.259 m, header over the doors limp; what its frame takes even so is missing",
      certainty: "derived",
      reference: 10_000 / 2259,
      unit: "N/mm",
      allowed: { short: 0.05, over: 0.001 },
      ours: () => roofFlow(1 / 1000),
    },
    {
      id: "twist of an open door end",
      what: "40 ft unit, doors left as doors, 16 psf across it, 0.6 of it: force in a side wall",
      source:
        "statics of a stiff roof on three walls: 0.6 · 0.766 kPa · 12.192 · 2.896/2 m² to the roof, 5.9925 m off the blind end, between sides 2.259 m apart; ours has a roof that gives and a door frame that helps",
      certainty: "derived",
      reference: (0.6 * 766 * 12.192 * 1.448 * 5.9925) / 2.259,
      unit: "N",
      allowed: { short: 0.25, over: 0 },
      ours: sideWallInTwistN,
    },
    {
      id: "door sill where a pad settles",
      what: "40 ft unit, doors left as doors, one pad under them 10 mm lower, floor and roof stiff: moment at the end of the sill",
      source:
        "five stiff panels rack the sixth by 2 δ h/b; frame of sill, header and posts by slope deflection, EI of the model",
      certainty: "derived",
      reference: sillOfRackedFrame(10),
      unit: "N·mm",
      // side walls and blind end are not stiff
      allowed: { short: 0.12, over: 0 },
      ours: sillWherePadSettlesNmm,
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
