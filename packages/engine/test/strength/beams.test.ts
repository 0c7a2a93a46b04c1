import { describe, expect, it } from "vitest";
import { findSection } from "../../src/catalog/sections/find-section.ts";
import { steels } from "../../src/catalog/materials.ts";
import type { ActionCase } from "../../src/loads/action-case.ts";
import { governingOf } from "../../src/strength/screen.ts";
import { strength } from "../../src/strength.ts";
import { holes, padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";
import { oneRun, ownWeight } from "./one-run.ts";

// A 20 ft high cube across two W8x31 (8 in deep: 203.2 mm), each on two pads 2800 mm apart; hole spacings 5853 and 2259: ISO 668, from memory.
const unit = { id: "u", type: "1CCC" as const, x: 0, y: 0 };
const { s, p } = holes["1CCC"];
const HALF_SPAN = 1400;
const DEPTH = 203.2;
const scheme = schemeOf({
  units: [unit],
  groundMm: -DEPTH,
  beams: [-1, 1].map((end) => ({
    id: `b${end + 2}`,
    from: [(end * s) / 2, -1550, 0],
    to: [(end * s) / 2, 1550, 0],
  })),
  pads: [-1, 1].flatMap((end) =>
    [-1, 1].map((side) => ({
      id: `p${end + 2}${side + 2}`,
      x: (end * s) / 2,
      y: side * HALF_SPAN,
      top: -DEPTH,
      length: 300,
      width: 300,
    })),
  ),
});
const section = findSection("W8x31");
if (section?.kind !== "I") throw new Error("W8x31 is an I shape");

const WEIGHT = 200_000;
const weight = ownWeight(scheme, WEIGHT);
const pushed: ActionCase = {
  id: "push",
  symbol: "W",
  loads: [{ kind: "point", elementId: "u", at: { xMm: 0, yMm: 1129.5, zMm: 2856 }, xN: 0, yN: 6000, zN: 0 }],
};

/** In one run, what every support gives: by beam and place. */
const run = (actions: readonly ActionCase[]): Run => {
  const known = runs.get(actions.length);
  if (known !== undefined) return known;
  const { solved, set, worsts } = oneRun(scheme, actions);
  const supports = set.built.model.supports.map(({ node }) => ({ node, force: solved.bearing(node) }));
  const found = { solved, supports, worsts, notes: set.built.notes };
  runs.set(actions.length, found);
  return found;
};
type Run = Pick<ReturnType<typeof oneRun>, "solved" | "worsts"> & {
  readonly supports: readonly { readonly node: string; readonly force: readonly [number, number, number] }[];
  readonly notes: ReturnType<typeof oneRun>["set"]["built"]["notes"];
};
/** With the weight alone, and with the push. */
const runs = new Map<number, Run>();

describe("added beams under a container", () => {
  it("are part of the model: nothing is left out for them", () => {
    expect(run([weight]).notes).toEqual([]);
  });

  it("hand a quarter of it to each pad", () => {
    const { supports } = run([weight]);
    expect(supports).toHaveLength(4);
    for (const { force } of supports) expect(force[2]).toBeCloseTo(WEIGHT / 4, 1);
  });

  it("bend as a simple beam under two forces: M = R (2800 − 2259)/2", () => {
    const { solved } = run([weight]);
    const { values, at } = solved.between();
    const from = at("b1:line 3"); // between the two fittings
    const moment = Math.abs(values[from + 4] ?? NaN);
    expect(moment).toBeCloseTo((WEIGHT / 4) * (HALF_SPAN - p / 2), 0);
  });

  it("hold the container in plan: the ground gives all of a push", () => {
    const { supports } = run([weight, pushed]);
    const level = [0, 1].map((c) => supports.reduce((sum, { force }) => sum + (force[c] ?? 0), 0));
    expect(level[0]).toBeCloseTo(0, 1);
    expect(level[1]).toBeCloseTo(-6000, 1);
  });

  it("are checked as members: shear decides so near the supports, 0.6 F_y d t_w with φ 1 (G2.1)", () => {
    const { worsts } = run([weight]);
    const member = worsts.find(({ part }) => part.id === "b1 added beam by itself");
    if (member === undefined) throw new Error("the beam is checked as a member");
    const { use, screened } = governingOf(member);
    expect(screened.limitState).toBe("shear");
    expect(use).toBeCloseTo(WEIGHT / 4 / (0.6 * steels.wideFlange.fyMpa * section.depthMm * section.webMm), 4);
  });

  it("are checked where a fitting presses the web: J10.2, F_y t_w (5k + l_b), l_b 162 mm of the fitting", () => {
    const { worsts, solved } = run([weight]);
    const pressed = worsts.filter(({ part }) => part.id.startsWith("b1 added beam under u"));
    expect(pressed).toHaveLength(2);
    for (const one of pressed) {
      const { screened } = governingOf(one);
      const check = screened.checks().find(({ limitState }) => limitState === "web yielding");
      if (check?.ok !== true) throw new Error("the web is checked for yielding");
      const strengthN = steels.wideFlange.fyMpa * section.webMm * (5 * (section.kMm ?? NaN) + 162);
      expect(check.utilisation).toBeCloseTo((screened.forceN ?? NaN) / strengthN, 6);
    }
    expect(solved.residual).toBeLessThan(1e-6);
  });
});

describe("the anchors of a beam on a pad of 300 mm", () => {
  it("break out to an edge 50 mm off: 300/2 − 200/2 (ACI 318 17.7.2, from memory, by hand 6.72 kN)", () => {
    // r 75, A_Vc/A_Vco (50 + 200 + 50)·75/11250 = 2; l_e 128; V_b 0.6·8^0.2·√16·√17.2·50^1.5 = 5334; ψ_ed 0.7 + 0.3·50/75 = 0.9
    const canN = 0.7 * 2 * 0.9 * 0.6 * 8 ** 0.2 * 4 * Math.sqrt(17.2) * 50 ** 1.5;
    const { worsts, supports } = run([weight, pushed]);
    const groups = worsts.filter(({ part }) => part.place.startsWith("anchors of the stated detail under b1"));
    const [first] = groups;
    if (first === undefined) throw new Error("the anchors are checked");
    const shears = supports.filter(({ node }) => node.startsWith("b1:")).map(({ force: [x, y] }) => Math.hypot(x, y));
    expect(Math.max(...groups.map((group) => governingOf(group).use))).toBeCloseTo(Math.max(...shears) / canN, 3);
  });
});

describe("a container on one below and a beam on two posts", () => {
  it("stands under every set of assumptions, and its beam, posts and bolts are checked", () => {
    const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
    const far = 1.5 * s;
    const answer = strength(
      schemeOf({
        units: [lower, { id: "t", type: "1CCC", x: s, y: 0, z: 2896 }],
        beams: [{ id: "b", from: [far, -1500, 2896], to: [far, 1500, 2896] }],
        posts: [-1, 1].map((side) => ({ id: `c${side + 2}`, x: far, y: side * 1300, foot: 0, head: 2896 - DEPTH })),
        pads: [
          ...padsUnder(lower),
          ...[-1, 1].map((side) => ({ id: `q${side + 2}`, x: far, y: side * 1300, length: 900, width: 900 })),
        ],
      }),
    );
    if (!answer.accepted) throw new Error("gravity alone has no hazards to refuse");
    expect(answer.refusedRuns).toEqual([]);
    const own = answer.results
      .filter(({ ownerId }) => ownerId === "b")
      .map(({ element, place }) => `${element} ${place}`);
    expect(own).toContain("added beam by itself");
    expect(own.filter((name) => name.startsWith("added beam over its support"))).toHaveLength(2);
    expect(own.filter((name) => name.startsWith("added beam under t"))).toHaveLength(2);
    expect(answer.results.some(({ ownerId, element }) => ownerId === "c1" && element === "added post")).toBe(true);
    const upper = answer.units.find(({ unitId }) => unitId === "t");
    expect(upper?.reasons.some((reason) => reason.kind === "left out of the model")).toBe(false);
  });
});
