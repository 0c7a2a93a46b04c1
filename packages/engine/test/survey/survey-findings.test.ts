import { describe, expect, it } from "vitest";
import { surveyFindings } from "../../src/survey/survey-findings.ts";
import { usualSurveyLimits } from "../../src/survey/usual-limits.ts";

const dent = (member: "top side rail" | "bottom side rail" | "door header" | "cross member", sizeMm: number) => ({
  ...{ member, place: "left, 3 m from the front", kind: "bent" as const, sizeUm: sizeMm * 1000 },
});
const torn = (member: "top side rail" | "bottom side rail" | "door header", sizeMm: number) => ({
  ...{ member, place: "left", kind: "torn" as const, sizeUm: sizeMm * 1000 },
});

describe("damage against the usual limits", () => {
  // IMO CSC.1/Circ.138/Rev.1: top rail 60 mm bent, 45 torn; bottom rail 100 and 75; header 80 and 80.
  it.each([
    [dent("top side rail", 60), false],
    [dent("top side rail", 61), true],
    [torn("top side rail", 46), true],
    [dent("bottom side rail", 100), false],
    [dent("bottom side rail", 101), true],
    [torn("bottom side rail", 76), true],
    [torn("door header", 80), false],
    [dent("door header", 81), true],
  ])("%j is beyond: %s", (damage, beyond) => {
    expect(surveyFindings({ damages: [damage], thicknesses: [] }, usualSurveyLimits)).toMatchObject([{ beyond }]);
  });

  it("of a member with no limit stated is the engineer's to judge", () => {
    const [finding] = surveyFindings({ damages: [dent("cross member", 30)], thicknesses: [] }, usualSurveyLimits);
    expect(finding).toMatchObject({ limitUm: null, beyond: null });
  });
});

describe("thickness against the usual limits", () => {
  // 0.9 of the assumed 4.5 mm is 4.05 mm; nothing is assumed of a fitting.
  it("is beyond below nine tenths of what is assumed", () => {
    const at = (thicknessUm: number) =>
      surveyFindings({ damages: [], thicknesses: [{ member: "bottom side rail", thicknessUm }] }, usualSurveyLimits);
    expect(at(4050)).toMatchObject([{ assumedUm: 4500, limitUm: 4050, beyond: false }]);
    expect(at(4049)).toMatchObject([{ beyond: true }]);
    const fitting = surveyFindings(
      { damages: [], thicknesses: [{ member: "corner fitting", thicknessUm: 9000 }] },
      usualSurveyLimits,
    );
    expect(fitting).toMatchObject([{ assumedUm: null, beyond: null }]);
  });
});
