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

describe("sectionModel(scheme, line)", () => {
  const line = (fromXMm: number, fromYMm: number, toXMm: number, toYMm: number) => ({
    fromXMm,
    fromYMm,
    toXMm,
    toYMm,
  });
  const widths = (along: ReturnType<typeof line>) =>
    sectionModel(stack, along).cuts.map(({ placed, u0Mm, u1Mm }) => [placed.id, Math.round(u1Mm - u0Mm)]);

  it("cuts across at 45° over 2438 × √2 = 3448 mm of a unit (hand)", () => {
    expect(widths(line(-1000, -1000, 1000, 1000))).toContainEqual(["g1", 3448]);
  });

  it("looks to the left of the line: what stands on its right is not drawn", () => {
    const south = line(-7000, 5000, 7000, 5000);
    const north = line(7000, 5000, -7000, 5000);
    expect(sectionModel(stack, south).cuts.map(({ placed }) => placed.id)).toEqual(["t1"]);
    expect(sectionModel(stack, south).beyond).toEqual([]);
    expect(
      sectionModel(stack, north)
        .beyond.map(({ placed }) => placed.id)
        .toSorted(),
    ).toEqual(["f1", "g1", "g2"]);
  });

  it("shows an opening where the line passes through it and not beside it", () => {
    const cut = { id: "d1", tag: "D1", containerId: "g1", face: "right" as const, use: "door" as const };
    const size = { offsetUm: 5_000_000, sillUm: 300_000, widthUm: 1_000_000, heightUm: 2_000_000 };
    const scheme: Scheme = { ...stack, openings: [{ ...cut, ...size, framed: false }] };
    // A right-hand wall runs from x = −6096: the opening lies from x = −1096 to −96, from 300 to 2300 mm up.
    const through = sectionModel(scheme, { axis: "x", atMm: -500 }).cuts.find(({ placed }) => placed.id === "g1");
    const beside = sectionModel(scheme, { axis: "x", atMm: 0 }).cuts.find(({ placed }) => placed.id === "g1");
    expect(through?.walls.flatMap(({ openings }) => openings.map(({ z0Mm, z1Mm }) => [z0Mm, z1Mm]))).toEqual([
      [300, 2300],
    ]);
    expect(beside?.walls.flatMap(({ openings }) => openings)).toEqual([]);
    expect(beside?.walls.map(({ face, uMm }) => [face, Math.round(uMm)])).toEqual([
      ["right", -1219],
      ["left", 1219],
    ]);
  });

  it("refuses a line without length", () => {
    expect(() => sectionModel(stack, line(3, 3, 3, 3))).toThrow("two ends that are apart");
  });
});
