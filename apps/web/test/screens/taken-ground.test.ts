import type { Opening } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { takenGround } from "../../src/screens/openings/taken-ground.ts";
import { plainChartScale as scale } from "../support/plain-chart-scale.ts";

const window: Opening = {
  ...{ id: "w1", tag: "W1", containerId: "u1", face: "right", use: "window", framed: true },
  ...{ offsetUm: 4_000_000, widthUm: 2_000_000, sillUm: 900_000, heightUm: 1_200_000 },
};
const side = { others: [window] };
describe("ground taken by an opening that is there", () => {
  it("is every width over its own length, and beside it the widths whose half reaches it", () => {
    const [taken] = takenGround(side, { fromMm: 180, toMm: 2380 }, scale);
    // 3.00 m wide reaches 1.50 m to either side of its centre: centres from 2.50 m to 7.50 m meet the window from 4 to 6 m
    expect(taken?.corners).toEqual([
      { xPx: 4000, yPx: 3000 },
      { xPx: 6000, yPx: 3000 },
      { xPx: 7500, yPx: 0 },
      { xPx: 2500, yPx: 0 },
    ]);
  });

  it("is none for what stays wholly below or above it", () => {
    expect(takenGround(side, { fromMm: 180, toMm: 900 }, scale)).toEqual([]);
    expect(takenGround(side, { fromMm: 2100, toMm: 2400 }, scale)).toEqual([]);
  });
});
