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

  it("have room for a post that stands out beyond the units", () => {
    // G1 lies 1.219 m to either side of the origin in the demo: nothing stands 3 m south of it.
    const out = { xUm: 6_000_000, yUm: -3_000_000, baseZUm: 0, topZUm: 5_792_000, turnMdeg: 0 };
    const posts = [{ id: "p9", tag: "P9", section: "HSS4x4x1/2", ...out }];
    const { rect, transform } = layViews(field, { ...demoScheme, posts }, "south", 0).plan;
    const yPx = transform.originYPx + 3 * transform.pxPerM;
    expect(yPx).toBeLessThan(rect.topPx + rect.heightPx - 50);
    expect(ground.plan.transform.originYPx + 3 * ground.plan.transform.pxPerM).toBeGreaterThan(yPx);
  });
});
