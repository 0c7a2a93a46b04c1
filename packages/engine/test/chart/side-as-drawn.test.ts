import { expect, it } from "vitest";
import { openingChart } from "../../src/opening-chart.ts";
import { sideAsDrawn } from "../../src/chart/chart-side.ts";
import { drawnUnit } from "../strength/drawn-unit.ts";
import { doorRequest } from "./drawn-chart.ts";

it("is the side the chart is drawn on, before anything is solved, but for what bears on it", () => {
  const plain = drawnUnit({ type: "1CC" });
  const step = openingChart(plain, doorRequest).next().value;
  if (!("kind" in step) || step.kind !== "side") throw new Error("a chart begins with its side");
  expect(step.side.bearings).not.toEqual([]);
  expect(sideAsDrawn(plain, doorRequest)).toEqual({ ...step.side, bearings: [] });
  // ISO 668, from memory: 1CC is 6058 mm long and 2591 mm high
  expect(sideAsDrawn(plain, doorRequest)).toMatchObject({ lengthMm: 6058, heightMm: 2591 });
});

it("is nothing where the container does not stand", () => {
  expect(sideAsDrawn(drawnUnit({ type: "1CC" }), { ...doorRequest, containerId: "gone" })).toBeUndefined();
});
