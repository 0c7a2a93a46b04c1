import { planModel } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { framedPlan } from "../../src/drawing/plan/framed-plan.ts";
import { layViews, planStringsWithin } from "../../src/paper/lay-views.ts";
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

  // The south side is 15.192 m by 8.688 m, the ground floor 11.034 m deep. At 1:100, 50 px a metre, the elevation takes 434.4 px
  // and 167 px round it; what is left of 868 px, less 82 px round the plan, is 184 px: 11.034 m at 16.67 px a metre, 1:300.
  it("draw the elevation at 1:100 and the ground floor at 1:300 on a sheet of 1440 by 900", () => {
    expect(ground.elevation.transform.pxPerM).toBe(50);
    expect(ground.plan.transform.pxPerM).toBeCloseTo(100 / 6, 2);
  });

  it("dimension no string of the plan into its title", () => {
    const { rect, transform: view } = ground.plan;
    const model = planModel(demoScheme, 0);
    const stringsWithin = planStringsWithin(rect);
    const { strings } = framedPlan(model, {
      scheme: demoScheme,
      view,
      revisionLetters: [],
      units: "SI",
      stringsWithin,
    });
    const levels = strings.lines.filter(({ upright }) => !upright);
    expect(levels.map(({ key }) => key)).toEqual(["overall"]);
    for (const { atPx } of levels) expect(atPx).toBeLessThanOrEqual(stringsWithin.footPx);
    const far = framedPlan(model, {
      scheme: demoScheme,
      view,
      revisionLetters: [],
      units: "SI",
      stringsWithin: { ...stringsWithin, footPx: 0 },
    });
    expect(far.strings.lines.some(({ key }) => key === "overall")).toBe(false);
  });

  it.each([0, 1, 2])(
    "leave the wall of storey %d, its string of the whole and its title apart at every size",
    (storey) => {
      for (const size of [field, { widthPx: 1340, heightPx: 1048 }, { widthPx: 570, heightPx: 736 }]) {
        const { rect, transform: view } = layViews(size, demoScheme, "south", storey).plan;
        const stringsWithin = planStringsWithin(rect);
        const framed = framedPlan(planModel(demoScheme, storey), {
          ...{ scheme: demoScheme, view, revisionLetters: [], units: "SI", stringsWithin },
        });
        const whole = framed.strings.lines.find(({ key }) => key === "overall");
        if (framed.grid.numbers.length > 2) expect(whole).toBeDefined();
        // The rule under a title runs 21 px over the foot of its place, the top of its capitals 15 px over the rule.
        const capitalsPx = rect.topPx + rect.heightPx - 36;
        expect(capitalsPx - (framed.outline?.bottom ?? 0)).toBeGreaterThan(20);
        if (whole !== undefined) expect(capitalsPx - whole.atPx).toBeGreaterThanOrEqual(4);
      }
    },
  );

  it("have room for a post that stands out beyond the units", () => {
    // G1 lies 1.219 m to either side of the origin in the demo: nothing stands 3 m south of it.
    const out = { xUm: 6_000_000, yUm: -3_000_000, baseZUm: 0, topZUm: 5_792_000, turnMdeg: 0 };
    const posts = [{ id: "p9", tag: "P9", section: "HSS4x4x1/2", ...out }];
    const { rect, transform } = layViews(field, { ...demoScheme, posts }, "south", 0).plan;
    const yPx = transform.originYPx + 3 * transform.pxPerM;
    expect(yPx).toBeLessThan(planStringsWithin(rect).footPx);
    expect(ground.plan.transform.originYPx + 3 * ground.plan.transform.pxPerM).toBeGreaterThan(yPx);
  });
});
