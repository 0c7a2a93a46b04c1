import { steels } from "../../../src/catalog/materials.ts";
import { corrugatedSheet, folds } from "../../../src/catalog/sections/corrugated-sheet.ts";
import { checkBasisOf } from "../../../src/checks/check-basis.ts";
import { sheetUnderPressure } from "../../../src/checks/wind-on-parts.ts";
import { amplificationOf, memberAmplification, storeyAmplification } from "../../../src/codes/steel/amplification.ts";
import { E, secondOrder, type PlaneBar } from "./geometric-frame.ts";

const lrfd = { edition: "2016", method: "LRFD" } as const;
/** Direct analysis leaves 0.8 of the stiffness; what is compared with a whole frame is given back the rest. */
const whole = 1 / 0.8;

/** B₁ of benchmark 1 of the commentary: W14x48, I 484 in⁴, 28 ft, under so many kip. */
export function benchmarkBow(kip: number): number {
  const member = { inertiaMm4: 484 * 25.4 ** 4 * whole, lengthMm: 28 * 304.8, axialN: kip * 4448.222 };
  const step = memberAmplification(member, lrfd).steps.find((one) => one.kind === "value" && one.symbol === "B_1");
  return step?.kind === "value" ? step.result : Number.NaN;
}

/** A portal with pinned bases: height, width, inertias of column and beam, push of 1 kN at its head. */
const portal = { h: 2400, b: 2260, column: 5e6, beam: 2e6, pushN: 1000 };

/** B₂ of the portal by the code's formula from its first-order sway (closed form). */
export function portalLean(verticalN: number): number {
  const { h, b, column, beam, pushN } = portal;
  const firstOrderMm = (pushN * h ** 3) / (6 * E * column) + (pushN * h * h * b) / (12 * E * beam);
  const storey = { verticalN, shearN: pushN, driftMm: firstOrderMm / whole, heightMm: h };
  return amplificationOf(storeyAmplification(storey, lrfd));
}

/** How much more it sways under half of the load on each column: elastic less geometric stiffness, four bars a column. */
export function portalReference(verticalN: number): number {
  return swayUnder(verticalN) / swayUnder(0);
}

function swayUnder(verticalN: number): number {
  const { h, b, column, beam, pushN } = portal;
  const legs = 4;
  const leg = (x: number) => Array.from({ length: legs + 1 }, (_, n) => [x, (n * h) / legs] as const);
  const chain = (first: number): PlaneBar[] =>
    Array.from({ length: legs }, (_, n) => {
      return { from: first + n, to: first + n + 1, inertiaMm4: column, compressionN: verticalN / 2 };
    });
  const bars = [...chain(0), ...chain(legs + 1), { from: legs, to: 2 * legs + 1, inertiaMm4: beam }];
  const base = 3 * (legs + 1);
  const held = [0, 1, base, base + 1];
  return secondOrder({ nodes: [...leg(0), ...leg(b)], bars, held }, { [3 * legs]: pushN })[3 * legs] ?? Number.NaN;
}

/** Pressure at which a side sheet of 343 MPa first yields on a clear height of 2.35 m, kPa. */
export function yieldPressureKpa(): number {
  const strength = checkBasisOf("IBC 2021", "LRFD").sheetBending(corrugatedSheet(folds.side, 1.6), steels.weathering);
  const span = { pressurePa: 1000, spanMm: 2350, meaning: "1 kPa", from: [] };
  const check = sheetUnderPressure("side sheet", span, 1, strength);
  return check.ok && strength.ok ? strength.nominal / strength.available / check.utilisation : Number.NaN;
}
