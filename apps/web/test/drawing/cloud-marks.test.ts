import { changesOnElevation, elevationModel } from "@cornerway/engine";
import { compareSchemes, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { cloudMarks, cloudRim, deltaBox } from "../../src/drawing/compare/cloud-marks.ts";
import { groundChange, northChange, siteId } from "../../src/drawing/compare/site-places.ts";
import { sharedArea, type BoxPx } from "../../src/drawing/label/place-labels.ts";
import { elevationLabels } from "../../src/drawing/elevation/elevation-labels.ts";
import { elevationStrings } from "../../src/drawing/elevation/elevation-strings.ts";
import { layViews } from "../../src/paper/lay-views.ts";
import { demoScheme } from "../support/demo-scheme.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

/** Rows of 40 ft units two and a half metres apart, three high, so many in all. */
const rows = (count: number): Scheme =>
  schemeOf(
    Array.from({ length: count }, (_, at) => {
      const [column, level] = [Math.floor(at / 3), at % 3];
      return unitAt(
        `u${String(at).padStart(2, "0")}`,
        `U${at}`,
        (column % 5) * 13_000,
        Math.floor(column / 5) * 2488,
        level * 2896,
      );
    }),
  );

const shifted = (scheme: Scheme, byUm = 600_000): Scheme => ({
  ...scheme,
  containers: scheme.containers.map((unit, at) => (at % 3 === 0 ? { ...unit, xUm: unit.xUm + byUm } : unit)),
  openings: scheme.openings.map((opening) => ({ ...opening, widthUm: opening.widthUm - 100_000 })),
});

function marksOf(scheme: Scheme, byUm?: number) {
  const after = shifted(scheme, byUm);
  const { elements } = compareSchemes(scheme, after);
  const placed = changesOnElevation(elements, scheme, after, "south");
  const { elevation } = layViews({ widthPx: 930, heightPx: 868 }, after, "south", 0);
  const numberOf = new Map(elements.map(({ id }, at) => [id, at + 1]));
  const view = elevation.transform;
  return { placed, after, view, marks: cloudMarks(placed, numberOf, view, []) };
}

describe("cloudMarks(placed, numberOf, view, lettered)", () => {
  it.each([
    ["the demo", demoScheme],
    ["24 containers", rows(24)],
    ["60 containers", rows(60)],
  ])("of %s cloud every change the view shows once, and no delta lies on another", (_name, scheme) => {
    const { placed, marks } = marksOf(scheme);
    expect(placed.length).toBeGreaterThan(4);
    expect(marks.flatMap(({ ids }) => ids).toSorted()).toEqual(placed.map(({ id }) => id).toSorted());
    const boxes = marks.map(({ delta }) => deltaBox(delta));
    const overlaps = boxes.flatMap((box, at) => boxes.slice(at + 1).filter((other) => sharedArea(box, other) > 0));
    expect(overlaps).toEqual([]);
  });

  it("hold what is clouded with air round it", () => {
    const { marks } = marksOf(demoScheme);
    for (const { cloud, wash, gone } of marks) {
      const held = wash ?? gone;
      expect(cloud.xPx).toBeLessThan(held?.xPx ?? 0);
      expect(cloud.widthPx).toBeGreaterThan(held?.widthPx ?? 0);
    }
  });

  it("leave no name of a unit on their rim, which goes round what may be lettered", () => {
    const { marks, view, after } = marksOf(demoScheme, 1_200_000);
    const model = elevationModel(after, "south");
    const strings = elevationStrings(model, view, "SI");
    const names = (inked: readonly BoxPx[]) =>
      elevationLabels(model, view, [], "SI", { strings, inked }).filter(({ kind }) => kind === "unit");
    const on = (rims: readonly BoxPx[], inked: readonly BoxPx[]) =>
      names(inked)
        .filter(({ box }) => rims.some((rim) => sharedArea(rim, box) > 0))
        .map(({ text }) => text);
    const ofClouds = marks.flatMap(cloudRim);
    expect(on(ofClouds, ofClouds)).toEqual([]);
    // A rim that runs upright through the very place of each name.
    const through = names([]).map(({ box }) => ({ ...box, left: box.left + 4, right: box.left + 6 }));
    expect(on(through, [])).toHaveLength(through.length);
    expect(on(through, through)).toEqual([]);
  });

  it("are none where nothing changed", () => {
    const placed = changesOnElevation(compareSchemes(demoScheme, demoScheme).elements, demoScheme, demoScheme, "south");
    expect(cloudMarks(placed, new Map(), { originXPx: 0, originYPx: 0, pxPerM: 50 }, [])).toEqual([]);
  });
});

describe("clouds of the site", () => {
  const site = { before: demoScheme.site, after: { ...demoScheme.site, groundZUm: -300_000, northMdeg: 30_000 } };
  const after = { ...demoScheme, site: site.after };
  const { elevation, plan } = layViews({ widthPx: 930, heightPx: 868 }, after, "south", 0);

  it("stand along the ground where its level changed, and round the north arrow where north was turned", () => {
    const ground = groundChange(site, elevationModel(after, "south"));
    const [strip] = cloudMarks(ground, new Map([[siteId, 4]]), elevation.transform, []);
    expect(strip?.numbers).toEqual([4]);
    expect(strip?.wash?.yPx).toBeCloseTo(elevation.transform.originYPx + 0.3 * elevation.transform.pxPerM, 6);
    const [north] = cloudMarks(northChange(site, after, 0, plan.transform), new Map(), plan.transform, []);
    expect(north?.wash?.widthPx).toBeCloseTo(28, 6);
  });

  it("are none where the site is the same, or only its code edition is another", () => {
    const edition = { before: demoScheme.site, after: { ...demoScheme.site, edition: "IBC 2024" as const } };
    for (const pair of [null, edition]) {
      expect(groundChange(pair, elevationModel(demoScheme, "south"))).toEqual([]);
      expect(northChange(pair, demoScheme, 0, plan.transform)).toEqual([]);
    }
  });
});
