import { describe, expect, it } from "vitest";
import { emptyInspection, readInspection, type TypedInspection } from "../../src/screens/survey/inspection-draft.ts";

const id = "00000000-0000-4000-8000-000000000001";
const photos = [{ fileId: id, digest: "a".repeat(64) }];
const typed = (more: Partial<TypedInspection> = {}): TypedInspection => ({
  ...{ ...emptyInspection("2026-11-12"), maxGrossKg: "30480", stackingKg: "216000", photos },
  ...more,
});
const read = (more: Partial<TypedInspection>, units: "SI" | "US" = "SI") => {
  const outcome = readInspection(typed(more), id, units);
  return outcome.ok ? outcome.inspection : outcome.why;
};

describe("an inspection as it is typed", () => {
  it("has lengths in millimetres, or in inches for those who read US units, and what is empty is not said", () => {
    const thickness = { "top side rail": "2.8", "door sill": " " };
    const damages = [{ key: "1", member: "top side rail", place: " left ", kind: "bent", size: "35" }] as const;
    expect(read({ thickness, damages, rackingKn: "150" })).toMatchObject({
      plate: { tareKg: null, madeIn: null, maxGrossKg: 30_480, rackingN: 150_000 },
      damages: [{ member: "top side rail", place: "left", kind: "bent", sizeUm: 35_000 }],
      thicknesses: [{ member: "top side rail", thicknessUm: 2800 }],
    });
    // 0.11 in = 2.794 mm
    expect(read({ thickness: { "top side rail": "0.11" } }, "US")).toMatchObject({
      thicknesses: [{ thicknessUm: 2794 }],
    });
  });

  it.each<[string, Partial<TypedInspection>, string]>([
    ["without a photo", { photos: [] }, "A photo of the plate and of what was found is missing or cannot be taken."],
    ["without the gross mass", { maxGrossKg: "" }, "Greatest gross mass is missing or cannot be taken."],
    ["with a month that is none", { madeIn: "2019-13" }, "Made, year and month is missing or cannot be taken."],
    ["with words for a tare", { tareKg: "light" }, "Tare is missing or cannot be taken."],
    [
      "with a thickness in words",
      { thickness: { "door sill": "thin" } },
      "A measured thickness is missing or cannot be taken.",
    ],
    [
      "with a damage of no size",
      { damages: [{ key: "1", member: "door sill", place: "left", kind: "torn", size: "" }] },
      "A damage: its place and size is missing or cannot be taken.",
    ],
  ])("%s says what is missing", (_what, more, why) => expect(read(more)).toBe(why));
});
