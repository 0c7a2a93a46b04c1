import type { Scheme } from "@cornerway/schema";
import { emptyScheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { fullestPlane, sectionModel } from "../../src/drawing/section-model.ts";

const unit = (id: string, xMm: number, yMm: number, zMm: number, turnMdeg = 0): Scheme["containers"][number] => ({
  ...{ id, tag: id.toUpperCase(), type: "1AAA", turnMdeg },
  ...{ xUm: xMm * 1000, yUm: yMm * 1000, zUm: zMm * 1000 },
});

const stack: Scheme = {
  ...emptyScheme,
  containers: [unit("f1", 0, 0, 2896), unit("g1", 0, 0, 0), unit("g2", 0, 2488, 0), unit("t1", 20_000, 0, 0, 90_000)],
};

describe("sectionModel(scheme, plane)", () => {
  it("cuts the units the plane passes through, lowest first, across their width of 2438 mm (ISO 668)", () => {
    const { cuts } = sectionModel(stack, { axis: "x", atMm: 100 });
    expect(cuts.map(({ placed, u0Mm, u1Mm, z0Mm }) => [placed.id, u0Mm, u1Mm, z0Mm])).toEqual([
      ["g1", -1219, 1219, 0],
      ["g2", 2488 - 1219, 2488 + 1219, 0],
      ["f1", -1219, 1219, 2896],
    ]);
  });

  it("cuts a turned unit along its length of 12 192 mm (ISO 668)", () => {
    const [cut] = sectionModel(stack, { axis: "x", atMm: 20_000 }).cuts;
    expect(cut?.placed.id).toBe("t1");
    expect((cut?.u1Mm ?? 0) - (cut?.u0Mm ?? 0)).toBeCloseTo(12_192, 6);
  });

  it("cuts nothing beside the building", () => {
    expect(sectionModel(stack, { axis: "x", atMm: 10_000 }).cuts).toEqual([]);
  });
});

describe("fullestPlane(scheme, axis)", () => {
  it("passes through as many units as one plane can", () => {
    expect(fullestPlane(stack, "x")).toEqual({ axis: "x", atMm: 0 });
  });

  it("is nowhere while nothing is drawn", () => {
    expect(fullestPlane(emptyScheme, "x")).toBeUndefined();
  });
});
