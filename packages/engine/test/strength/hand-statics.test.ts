import { describe, expect, it } from "vitest";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { demandRoom, DemandsAlong } from "../../src/strength/demands-along.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { drawnUnit } from "./drawn-unit.ts";
import { lineForces, oneRun, ownWeight, pressed } from "./one-run.ts";

const expectWithin = (ours: number, hand: number, part: number): void =>
  expect(Math.abs(ours / hand - 1), `ours ${ours}, by hand ${hand}`).toBeLessThan(part);

function demandsAlong(forces: readonly number[], lengthMm: number) {
  const along = new DemandsAlong();
  along.take(forces, 0, lengthMm);
  return Array.from({ length: along.count }, (_, n) => {
    const room = demandRoom();
    along.write(n, room);
    return room;
  });
}

describe("demands along a line", () => {
  // A beam of 3 m on two supports with 2 N/mm down: ends carry 3 kN, the middle w L²/8 = 2.25 kN·m sagging.
  const ends = [0, 0, 3000, 0, 0, 0, 0, 0, 3000, 0, 0, 0];

  it("finds w L²/8 = 2.25 kN·m with the head pressed at the middle of a simple beam, and w L/2 of shear at its ends", () => {
    const demands = demandsAlong(ends, 3000);
    expect(Math.max(...demands.map(({ momentStrongNmm }) => momentStrongNmm))).toBeCloseTo(2.25e6, 3);
    expect(Math.max(...demands.map(({ shearStrongN }) => shearStrongN))).toBeCloseTo(3000, 9);
  });

  it("calls a member pushed at its first end compressed", () => {
    expect(demandsAlong([500, 0, 0, 0, 0, 0, -500, 0, 0, 0, 0, 0], 1000)[0]?.axialN).toBe(500);
  });

  // Cantilever of 1 m held at its first end, 100 N down at the other: M = −P L at the held end (foot pressed).
  it("calls a cantilever's held end foot-pressed", () => {
    const [held] = demandsAlong([0, 0, 100, 0, -100_000, 0, 0, 0, -100, 0, 0, 0], 1000);
    expect(held?.momentStrongNmm).toBe(-100_000);
  });
});

// One 40 ft unit, 41 202 N of its own (4200 kg at 9.81), 3.4 kPa on 12.192 × 2.438 m: 101 062 N. Both are even about both
// middle lines, so each of four corners carries a quarter of 142 264 N.
describe("a single 40 ft unit on four pads", () => {
  const scheme = drawnUnit({});
  const { set, solved, worsts } = oneRun(scheme, [ownWeight(scheme, 41_202), pressed(scheme, 3400)]);
  const quarter = (41_202 + 3400 * 12.192 * 2.438) / 4;

  it("stands on a quarter of its load at each corner, to 1 in 10⁵, and balances to 1 in 10⁹", () => {
    const reactions = Object.values(solved.frame.reactions).map(([, , z = 0]) => z);
    expect(reactions).toHaveLength(4);
    for (const reaction of reactions) expectWithin(reaction, quarter, 1e-5);
    expect(solved.frame.residual).toBeLessThan(1e-9);
  });

  it("carries that quarter in the foot of each corner post, to 1 in 10⁵", () => {
    const feet = lineForces(solved, set, "u1").filter(([id]) => id.startsWith("post#"));
    const most = Math.max(...feet.map(([, ends]) => Math.abs(ends[0] ?? 0)));
    expectWithin(most, quarter, 1e-5);
  });

  it("has no level reaction under upright load with locks at play", () => {
    for (const [x = 0, y = 0] of Object.values(solved.frame.reactions)) {
      expect(Math.abs(x)).toBeLessThan(1);
      expect(Math.abs(y)).toBeLessThan(1);
    }
  });

  // Cross member as a simple beam between rails 2259 mm apart: 3.4 kPa on a strip of 11 985/39 mm and half of the own weight
  // (floor and base: common practice of the model) over 12 192 mm: w L²/8.
  it("bends its cross members as simple beams, w L²/8, to 1 %", () => {
    const strip = 11_985 / 39;
    const w = (3400e-6 * strip * 2438) / 2259 + (0.5 * 41_202 * strip) / 11_985 / 2259;
    const found = worsts.find(({ part }) => part.element === "cross member");
    const bending =
      found &&
      governingOf(found)
        .screened.checks()
        .find(({ limitState }) => limitState === "bending, strong axis");
    const ours = bending?.ok === true ? bending.working.symbols.find(({ symbol }) => symbol === "demand")?.value : NaN;
    expectWithin(ours ?? NaN, (w * 2259 * 2259) / 8, 0.01);
  });

  it("gives every part the same utilisation by its working as by its screening, to 1 in 10⁹", () => {
    for (const worst of worsts) {
      const { part } = worst;
      const { screened, use: quick } = governingOf(worst);
      const use = Math.max(...screened.checks().map((check) => (check.ok ? check.utilisation : Infinity)));
      expect(Math.abs(use - quick), part.id).toBeLessThan(1e-9 * Math.max(1, use));
    }
  });
});

// Two 20 ft units of 2300 kg: the upper one's quarter, 5640.75 N, goes from corner to corner; each pad has twice that.
describe("a plain stack of two", () => {
  const scheme = drawnUnit({ type: "1CC", above: 1 });
  const { solved } = oneRun(scheme, [ownWeight(scheme, 2300 * 9.81)]);

  it("hands a quarter of the upper unit to each fitting below, to 1 in 10⁵", () => {
    const links = Object.values(solved.frame.links).map(([, , z = 0]) => z);
    expect(links).toHaveLength(4);
    for (const force of links) expectWithin(force, (2300 * 9.81) / 4, 1e-5);
  });

  it("stands on a quarter of both at each pad, to 1 in 10⁵", () => {
    for (const [, , z = 0] of Object.values(solved.frame.reactions)) expectWithin(z, (2300 * 9.81) / 2, 1e-5);
  });
});

// modelling.md's side wall, 12.0 m between posts, 4.0 kN/m on the bottom rail and 1.5 on the top rail: bottom-rail moments of
// 0.40 kN·m whole, 2.7 and 16.3 with a framed 3.0 m opening at mid-length and at the quarter point (derived, fold by fold).
// Here both walls of a unit are cut alike, 11.985 m between posts, so that neither hands its load to the other: 8.0 and
// 3.0 kN/m over two sides as pressure on floor and roof.
describe("the moment of a bottom rail", () => {
  const moment = (fromMm?: number): number => {
    const scheme = drawnUnit({
      openings:
        fromMm === undefined
          ? []
          : (["right", "left"] as const).map((face) => ({ face, framed: true, fromMm, widthMm: 3000 })),
    });
    const loads = [pressed(scheme, 8000 / 2.438), pressed(scheme, 3000 / 2.438, "roof")];
    const { set, solved } = oneRun(scheme, loads);
    const forces = lineForces(solved, set, "u1").filter(([id]) => id.startsWith("bottomRail#"));
    return Math.max(...forces.map(([, ends]) => Math.abs(ends[4] ?? 0))) / 1e6;
  };
  const [whole, middle, quarter] = [moment(), moment(4596), moment(1603.5)];

  it("is small where the wall is whole: under 1 kN·m (0.40 without cross members and post)", () => {
    expect(whole).toBeLessThan(1);
  });

  it("with a framed 3 m opening at mid-length is 2.7 kN·m, to a third", () => {
    expectWithin(middle, 2.7, 1 / 3);
  });

  it("with the same at the quarter point is 16.3 kN·m, to a sixth", () => {
    expectWithin(quarter, 16.3, 1 / 6);
  });

  it("passes the rail's first yield of 9.4 kN·m at 235 MPa only near the end (W 39.9 cm³, common practice)", () => {
    const yieldNmm = (235 * containerMembers["bottom side rail"].sxMm3) / 1e6;
    expect(middle).toBeLessThan(yieldNmm);
    expect(quarter).toBeGreaterThan(yieldNmm);
  });
});
