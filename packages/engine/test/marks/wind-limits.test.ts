import { describe, expect, it } from "vitest";
import { strengthMarks } from "../../src/marks/strength-marks.ts";
import { strength } from "../../src/strength.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";

describe("the mark of a unit whose wind is outside the procedure", () => {
  const answer = strength(drawnUnit({ type: "1CC" }));
  if (!answer.accepted) throw new Error("gravity alone has no hazards to refuse");
  const limits = ["one roof level", "closed below"] as const;
  const under = (reasons: (typeof answer.units)[number]["reasons"]) =>
    strengthMarks(
      { ...answer, units: answer.units.map((unit) => ({ ...unit, verdict: "needs the engineer", reasons })) },
      () => ({ xMm: 0, yMm: 0, zMm: 0 }),
    ).map(({ fact }) => fact);

  it("holds each limit that failed", () => {
    const [fact] = under([{ kind: "wind outside its limits", limits }]);
    expect(fact).toMatchObject({ kind: "strength-open", others: ["wind outside its limits"], windLimits: limits });
  });

  it("holds none where all hold", () => {
    const [fact] = under([{ kind: "seismic system refused", axis: "x" }]);
    expect(fact?.kind).toBe("strength-open");
    expect(fact).not.toHaveProperty("windLimits");
  });
});
