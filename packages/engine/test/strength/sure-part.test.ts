import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { containerMembers } from "../../src/catalog/sections/container-members.ts";
import { frameTube } from "../../src/catalog/sections/frame-tubes.ts";
import { assumptionSets } from "../../src/strength/assumption-sets.ts";
import { cornerPostPart, type PostStretch } from "../../src/strength/corner-post-part.ts";
import { elementResult } from "../../src/strength/element-result.ts";
import { memberPart, sureMemberPart, type MemberStretch } from "../../src/strength/member-part.ts";
import { screen } from "../../src/strength/screen.ts";
import type { SolvedRun } from "../../src/strength/solve-runs.ts";
import type { StrengthPart } from "../../src/strength/strength-part.ts";
import { isTold, toldOnce } from "../../src/strength/sure-part.ts";
import { surePostPart } from "../../src/strength/sure-post-part.ts";
import { unitStrength } from "../../src/strength/unit-strength.ts";
import { basis } from "./one-run.ts";

/** Forces on a line: pulled or pressed, bent evenly about both axes, twisted. N, N·mm. */
type Line = { readonly pressN: number; readonly strong: number; readonly weak: number; readonly twist: number };

const forces = ({ pressN, strong, weak, twist }: Line) => ({
  values: Float64Array.from([pressN, 0, 0, twist, strong, -weak, -pressN, 0, 0]),
  at: () => 0,
});
type Held = { readonly held?: readonly string[]; readonly set?: number };
const run = (line: Line, { held = [], set = 0 }: Held = {}): SolvedRun =>
  ({
    run: { id: `run ${set}`, level: "strength" },
    set: assumptionSets[set],
    held,
    inner: () => forces(line),
    loaded: forces(line),
  }) as unknown as SolvedRun;

const railStretch = (lineOf: (solved: SolvedRun) => Line): MemberStretch => ({
  ownerId: "u1",
  place: "left",
  member: {
    element: "top side rail",
    section: containerMembers["top side rail"],
    steel: steels.unproved,
    lengths: { strongMm: 2500, weakMm: 300, twistMm: 300 },
    unbracedMm: 300,
    cb: 1,
  },
  beams: [{ id: "a", lengthMm: 300 }],
  forces: (solved) => forces(lineOf(solved)),
});
const lines = new WeakMap<SolvedRun, Line>();
const solved = (line: Line, how: Held = {}): SolvedRun => {
  const one = run(line, how);
  lines.set(one, line);
  return one;
};
const rail = railStretch((one) => lines.get(one) ?? { pressN: 0, strong: 0, weak: 0, twist: 0 });
const railParts = (): StrengthPart[] => [memberPart(rail, basis.factored), ...sureMemberPart(rail, basis.factored)];

/** Pulled to this share of its strength, twisted to that of its own: nothing else acts. */
const strengths = basis.factored.capacities(basis.factored.memberStrengths(rail.member));
const pulledAndTwisted = (pulled: number, twisted: number): Line => ({
  pressN: -pulled * (strengths.tension ?? NaN),
  strong: 0,
  weak: 0,
  twist: twisted * (strengths.torsion ?? NaN),
});

function judgedBy(parts: readonly StrengthPart[], runs: readonly SolvedRun[]) {
  const told = screen(parts, runs).filter(({ part, asDrawn }) => isTold(part, asDrawn));
  const results = toldOnce(told.map(elementResult));
  const found = { unitId: "u1", results, holds: [], refused: [], runs: runs.length, withSteel: false, given: [] };
  return { results, ...unitStrength(found) };
}

describe("what is sure of a part", () => {
  it("is not hidden by a bound that is exceeded further: bounded 1.4 beside checked 1.2 does not work, and both are told", () => {
    // H3.2 as a bound: 1.2 + 0.45² = 1.40; the pull alone, 1.2, is a check
    const { results, verdict, reasons } = judgedBy(railParts(), [solved(pulledAndTwisted(1.2, Math.sqrt(0.2)))]);
    expect(
      results.map(({ limitState, covered, utilisation = NaN }) => [limitState, covered, Math.round(utilisation * 1e3)]),
    ).toEqual([
      ["torsion with other forces", "bounded", 1400],
      ["tension", "checked", 1200],
    ]);
    expect(verdict).toBe("does not work");
    expect(reasons.map(({ kind }) => kind)).toEqual(["beyond its bound", "over"]);
  });

  it("is left to the engineer where the bound alone is exceeded", () => {
    const { results, verdict, reasons } = judgedBy(railParts(), [solved(pulledAndTwisted(0.9, 0.8))]);
    expect(results.map(({ covered }) => covered)).toEqual(["bounded"]);
    expect([verdict, ...reasons.map(({ kind }) => kind)]).toEqual(["needs the engineer", "beyond its bound"]);
  });

  it("hangs on an assumption where the bound is exceeded under every one and the check under some", () => {
    const runs = [solved(pulledAndTwisted(1.2, 0)), solved(pulledAndTwisted(0.8, 0.5), { set: 1 })];
    const { verdict, reasons } = judgedBy(railParts(), runs);
    expect(verdict).toBe("needs the engineer");
    expect(reasons).toEqual([
      {
        kind: "assumption decides",
        partId: "u1 top side rail left",
        least: "locks tied",
        most: "locks at play",
      },
    ]);
  });

  it("is said under its own run and assumptions, with its own working", () => {
    const runs = [solved(pulledAndTwisted(1.1, 1.5)), solved(pulledAndTwisted(1.3, 0), { set: 1 })];
    const { results } = judgedBy(railParts(), runs);
    const [whole, sure] = results;
    expect([whole?.assumptions, sure?.assumptions]).toEqual(["locks at play", "locks tied"]);
    expect(sure?.working?.utilisation).toBeCloseTo(1.3, 6);
    expect(sure?.envelope).toEqual({ "locks at play": expect.closeTo(1.1, 6), "locks tied": expect.closeTo(1.3, 6) });
  });

  it("is never said by runs that stand only if something is held", () => {
    const { verdict, results } = judgedBy(railParts(), [solved(pulledAndTwisted(1.2, 0), { held: ["u1"] })]);
    expect([verdict, results.length]).toEqual(["needs the engineer", 1]);
  });

  it("does not arise where every limit state is checked and stated", () => {
    const member = { ...rail.member, element: "jamb", section: frameTube, steel: steels.tube } as const;
    const tube: MemberStretch = { ...rail, member };
    expect(sureMemberPart(tube, basis.factored)).toEqual([]);
  });

  it("stops a run whose forces are no numbers: they compare with nothing", () => {
    const broken = solved({ pressN: NaN, strong: NaN, weak: 0, twist: 0 });
    expect(() => judgedBy([{ ...memberPart(rail, basis.factored), use: () => NaN }], [broken])).toThrow(
      /no utilisation/,
    );
  });
});

describe("a corner post beyond both of its bounds", () => {
  const post: PostStretch = {
    ownerId: "u1",
    element: "front corner post",
    place: "left",
    clearMm: 2500,
    sheeted: false,
    beams: [{ id: "a", lengthMm: 2500 }],
  };
  const parts = (): StrengthPart[] => [cornerPostPart(post, basis.factored), surePostPart(post, basis.factored)];
  const bent = (strong: number, pressN = 0): SolvedRun => run({ pressN, strong, weak: 0, twist: 0 });
  /** First yield about either axis of its outline, φ 0.90: 0.90 · 235 MPa · S. */
  const { sxMm3, syMm3 } = containerMembers["front corner post"];
  const [least, most] = [0.9 * 235 * Math.min(sxMm3, syMm3), 0.9 * 235 * Math.max(sxMm3, syMm3)];

  it("does not work once first yield is passed whichever way round it stands, and needs the engineer before that", () => {
    expect(judgedBy(parts(), [bent(0.99 * most)]).verdict).toBe("needs the engineer");
    expect(judgedBy(parts(), [bent((least + most) / 2)]).verdict).toBe("needs the engineer");
    const { verdict, reasons } = judgedBy(parts(), [bent(1.2 * most)]);
    expect([verdict, ...reasons.map(({ kind }) => kind)]).toEqual(["does not work", "beyond its bound", "over"]);
  });

  it("is not called so by compression below the 848 kN of its stacking test (ISO 1496-1)", () => {
    expect(judgedBy(parts(), [bent(0, 840_000)]).verdict).toBe("needs the engineer");
    expect(judgedBy(parts(), [bent(0, 860_000)]).verdict).toBe("does not work");
  });
});
