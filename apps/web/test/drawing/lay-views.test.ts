import { planModel } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { framedPlan } from "../../src/drawing/plan/framed-plan.ts";
import { layViews, planTitleTopPx } from "../../src/paper/lay-views.ts";
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

  // The south side is 15.192 m by 8.688 m, the ground floor 11.034 m deep. At 1:100, 50 px a metre, the elevation takes 434 px
  // and 166 px round it; what is left of 868 px, less 83 px round the plan, is 185 px: 11.034 m at 16.67 px a metre, 1:300.
  it("draw the elevation at 1:100 and the ground floor at 1:300 on a sheet of 1440 by 900", () => {
    expect(ground.elevation.transform.pxPerM).toBe(50);
    expect(ground.plan.transform.pxPerM).toBeCloseTo(100 / 6, 2);
  });

  it("dimension no string of the plan into its title", () => {
    const { rect, transform: view } = ground.plan;
    const model = planModel(demoScheme, 0);
    const stringsToPx = planTitleTopPx(rect);
    const { strings } = framedPlan(model, { scheme: demoScheme, view, revisionLetters: [], units: "SI", stringsToPx });
    const levels = strings.lines.filter(({ upright }) => !upright);
    expect(levels.length).toBeGreaterThan(0);
    for (const { atPx } of levels) expect(atPx).toBeLessThanOrEqual(stringsToPx);
    const free = framedPlan(model, { scheme: demoScheme, view, revisionLetters: [], units: "SI" }).strings.lines;
    expect(free.length).toBeGreaterThan(strings.lines.length);
  });

  it("have room for a post that stands out beyond the units", () => {
    // G1 lies 1.219 m to either side of the origin in the demo: nothing stands 3 m south of it.
    const out = { xUm: 6_000_000, yUm: -3_000_000, baseZUm: 0, topZUm: 5_792_000, turnMdeg: 0 };
    const posts = [{ id: "p9", tag: "P9", section: "HSS4x4x1/2", ...out }];
    const { rect, transform } = layViews(field, { ...demoScheme, posts }, "south", 0).plan;
    const yPx = transform.originYPx + 3 * transform.pxPerM;
    expect(yPx).toBeLessThan(planTitleTopPx(rect));
    expect(ground.plan.transform.originYPx + 3 * ground.plan.transform.pxPerM).toBeGreaterThan(yPx);
  });
});
