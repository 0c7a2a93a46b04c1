import type { ChartColumn, ChartStretch } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { sharedArea } from "../../src/drawing/label/place-labels.ts";
import { regionNames, type RegionName } from "../../src/screens/openings/region-names.ts";
import { plainChartScale as scale } from "../support/plain-chart-scale.ts";

const stretch = (fromMm: number, toMm: number, verdict: ChartStretch["verdict"]): ChartStretch => ({
  ...{ fromMm, toMm, verdict },
  why: { kind: "within", partId: "u1 jamb right", use: 0.5, run: "1.4D" },
});
/** Columns 20 px apart; `workPx` says up to which width the opening works in each. */
const chartOf = (works: readonly number[]): ChartColumn[] =>
  works.map((toMm, at) => ({
    centreMm: 400 + at * 20,
    mostMm: 2000,
    stretches: [...(toMm === 0 ? [] : [stretch(0, toMm, "works with steel")]), stretch(toMm, 2000, "does not work")],
  }));
const wordsOf = (verdict: string) => verdict;
const namesOf = (works: readonly number[], kept: Parameters<typeof regionNames>[0]["kept"] = []) =>
  regionNames({ columns: chartOf(works), scale: { ...scale, topPx: 900 }, rightPx: 2000, wordsOf, kept });
const boxOf = ({ xPx, yPx }: RegionName) => ({ left: xPx, right: xPx + 130, top: yPx - 10, bottom: yPx + 10 });

describe("names of the regions of a chart", () => {
  it("stand within a region that is wide enough for them", () => {
    const names = namesOf(Array.from({ length: 30 }, () => 400));
    expect(names.map(({ tip }) => tip)).toEqual([null, null]);
    const steel = names.find(({ verdict }) => verdict === "works with steel");
    // 0 to 400 mm wide is 3000 to 2600 px down; the columns reach from 400 to 980 px.
    expect(steel?.yPx).toBe(2800);
    expect(steel?.xPx).toBeGreaterThan(400);
    expect(steel?.xPx).toBeLessThan(980 - 130);
  });

  it("stand beside a region that is too narrow for them with a short leader, on ground where nothing may be cut", () => {
    const works = [...Array.from({ length: 15 }, () => 0), 400, 400, ...Array.from({ length: 15 }, () => 0)];
    const steel = namesOf(works).find(({ verdict }) => verdict === "works with steel");
    expect(steel?.tip).toEqual({ xPx: 700, yPx: 2800 });
    const box = steel === undefined ? null : boxOf(steel);
    // The region reaches from 680 to 740 px across and from 2600 to 3000 px down.
    expect(
      sharedArea(box ?? { left: 0, right: 1, top: 0, bottom: 1 }, { left: 680, right: 740, top: 2600, bottom: 3000 }),
    ).toBe(0);
    expect(Math.min(Math.abs((box?.right ?? 0) - 700), Math.abs((box?.left ?? 0) - 700))).toBeLessThan(190);
    expect(Math.abs((steel?.yPx ?? 0) - 2800)).toBeLessThan(190);
  });

  it("stand over the chart with a leader where there is no such ground near", () => {
    const kept = [{ left: 0, right: 2000, top: 900, bottom: 3000 }];
    const names = namesOf(
      [...Array.from({ length: 15 }, () => 0), 400, 400, ...Array.from({ length: 15 }, () => 0)],
      kept,
    );
    const steel = names.find(({ verdict }) => verdict === "works with steel");
    expect(steel?.tip).toEqual({ xPx: 700, yPx: 2800 });
    expect(steel?.yPx).toBeLessThan(900);
  });

  it("keep off each other and off what is kept clear", () => {
    const kept = [{ left: 0, right: 2000, top: 1500, bottom: 2900 }];
    const names = namesOf(
      Array.from({ length: 30 }, () => 400),
      kept,
    );
    for (const name of names) expect(sharedArea(boxOf(name), kept[0] ?? boxOf(name))).toBe(0);
    const [one, other] = names;
    expect(one === undefined || other === undefined ? 1 : sharedArea(boxOf(one), boxOf(other))).toBe(0);
  });
});
