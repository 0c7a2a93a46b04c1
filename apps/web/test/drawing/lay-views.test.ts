import { describe, expect, it } from "vitest";
import { layViews } from "../../src/paper/lay-views.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const field = { widthPx: 934, heightPx: 868 };

describe("views laid on the sheet of the demo", () => {
  const ground = layViews(field, demoScheme, "south", 0);
  const first = layViews(field, demoScheme, "south", 1);

  it("leave the elevation where it is whichever storey is cut", () => {
    expect(ground.elevation).toEqual(first.elevation);
  });

  // Without T1 across the top the ground and first floor are 15.192 m by four rows of 2.438 m at most; with it, 15.7 m deep.
  it("draw the ground floor larger than the first, which has the unit across it overhead", () => {
    expect(ground.plan.transform.pxPerM).toBeGreaterThan(first.plan.transform.pxPerM);
  });
});
