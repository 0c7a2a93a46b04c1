import { elementNames, markSentences } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { assessStrength } from "../../src/assess-strength.ts";
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

// HSS4x2x1/4, weak axis 1.48 in⁴ (AISC Manual, from memory) over 2896 mm between pins: 0.8·π²·E·I/L² = 116 kN, so that the bow is
// enlarged half as much again at a third of it, 38.7 kN, while the post itself bears 0.9·0.877·145 = 114 kN (E3).
const half = 2259 / 2;
const at = 1.5 * 5853;
const lower = { id: "g", type: "1CCC" as const, x: 0, y: 0 };
const posts = [-half, half].map((y, n) => {
  return { id: `p${n + 1}`, x: at, y, foot: 0, head: 2896, section: "HSS4x2x1/4" };
});
const scheme = schemeOf({
  units: [lower, { id: "t", type: "1CCC", x: 5853, y: 0, z: 2896 }],
  posts,
  pads: [...padsUnder(lower), ...posts.map(({ x, y }, n) => ({ id: `b${n}`, x, y, length: 1200, width: 1200 }))],
  loads: [{ in: "t", pa: 10_000, case: "finish" }],
});

describe("a slender post that enlarges its own bow by more than half", () => {
  const answer = assessStrength(scheme);
  if (!answer.accepted) throw new Error("gravity alone has no hazards to refuse");
  const { proof, assessment } = answer;
  const result = proof.report.results.find(({ part, check }) => part === "added post" && check === "amplification");

  it("is beyond what factors may stand for, by hand, before it is beyond its strength", () => {
    const working = proof.workings.find(({ id }) => id === result?.id)?.working;
    const pressed = working?.symbols.find(({ symbol }) => symbol === "P_r")?.value ?? Number.NaN;
    const limit = (0.8 * Math.PI ** 2 * 200_000 * 1.48 * 25.4 ** 4) / 2896 ** 2 / 3;
    expect(Math.abs((result?.utilisation ?? Number.NaN) / (pressed / limit) - 1)).toBeLessThan(0.01);
    expect(result?.utilisation).toBeGreaterThan(1);
    expect(pressed).toBeLessThan(114_000);
  });

  it("is a mark that needs the engineer and names it", () => {
    const mark = assessment.marks.find(
      ({ fact }) => fact.kind === "strength-open" && fact.parts.some(({ partId }) => partId === result?.id),
    );
    expect(mark?.verdict).toBe("needs the engineer");
    const said = mark === undefined ? "" : markSentences(mark, elementNames(scheme), "engineer").body;
    expect(said).toContain("added post own bow");
  });
});
