import { faceFrame, placeContainer, pointOnFace, solidCorners, storeysOf, toLocal, toSite } from "@cornerway/engine";
import { faces, type Container } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { schemeOf } from "../../../../tests/support/scheme-of.ts";

const unit = (turnMdeg: number): Container => ({
  id: "g1",
  tag: "G1",
  type: "1CC",
  xUm: 1_000_000,
  yUm: 2_000_000,
  zUm: 500_000,
  turnMdeg,
});

describe("placeContainer", () => {
  it("sets the eight corners of a 20 ft unit lying east at ±3029, ±1219 about its place", () => {
    const corners = solidCorners(placeContainer(unit(0)));
    expect(corners[0]).toEqual({ xMm: 1000 - 3029, yMm: 2000 - 1219, zMm: 500 });
    expect(corners[6]).toEqual({ xMm: 1000 + 3029, yMm: 2000 + 1219, zMm: 500 + 2591 });
  });

  it("turns by quarters without any rounding: x to y, y to −x", () => {
    const corners = solidCorners(placeContainer(unit(90_000)));
    expect(corners[0]).toEqual({ xMm: 1000 + 1219, yMm: 2000 - 3029, zMm: 500 });
  });

  it("puts the apertures at S/2 = 2926.5 and P/2 = 1129.5 from the centre (ISO 668 Table A.1)", () => {
    const { bottomFittings, topFittings } = placeContainer(unit(0));
    expect(bottomFittings.map(({ name }) => name)).toEqual(["front-right", "front-left", "door-right", "door-left"]);
    expect(bottomFittings[0]?.at).toEqual({ xMm: 1000 - 2926.5, yMm: 2000 - 1129.5, zMm: 500 });
    expect(topFittings[3]?.at).toEqual({ xMm: 1000 + 2926.5, yMm: 2000 + 1129.5, zMm: 3091 });
  });

  it("goes from local to site and back to the same place, at any turn", () => {
    const mm = fc.double({ min: -20_000, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359_999 }), mm, mm, mm, (turn, xMm, yMm, zMm) => {
        const { frame } = placeContainer(unit(turn));
        const back = toLocal(frame, toSite(frame, { xMm, yMm, zMm }));
        expect(back.xMm).toBeCloseTo(xMm, 8);
        expect(back.yMm).toBeCloseTo(yMm, 8);
        expect(back.zMm).toBeCloseTo(zMm, 8);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("faceFrame", () => {
  it("measures every face from its own corner of the solid, with the normal pointing out of it", () => {
    const placed = placeContainer(unit(30_000));
    const middle = toSite(placed.frame, { xMm: 0, yMm: 0, zMm: 2591 / 2 });
    for (const face of faces) {
      const frame = faceFrame(placed, face);
      const { u1, v1 } = placed.dimensions.face(face);
      const centre = pointOnFace(frame, u1 / 2, v1 / 2);
      const outward =
        (centre.xMm - middle.xMm) * frame.normal.xMm +
        (centre.yMm - middle.yMm) * frame.normal.yMm +
        (centre.zMm - middle.zMm) * frame.normal.zMm;
      const half = { left: 1219, right: 1219, front: 3029, door: 3029, roof: 1295.5, floor: 1295.5 }[face];
      expect(outward, face).toBeCloseTo(half, 6);
      // The far corner of the face is a corner of the solid.
      const far = pointOnFace(frame, u1, v1);
      const near = solidCorners(placed).map(
        (at) => Math.abs(at.xMm - far.xMm) + Math.abs(at.yMm - far.yMm) + Math.abs(at.zMm - far.zMm),
      );
      expect(Math.min(...near), face).toBeLessThan(1e-6);
    }
  });
});

describe("storeysOf", () => {
  it("names storeys from the ground and keeps units of different heights side by side on one", () => {
    const storeys = storeysOf(
      schemeOf({
        units: [
          { id: "a", type: "1CC", x: 0, y: 0 },
          { id: "b", type: "1CCC", x: 0, y: 3000 },
          { id: "c", type: "1CC", x: 0, y: 0, z: 2591 },
          { id: "d", type: "1CC", x: 0, y: 3000, z: 2896 },
          { id: "e", type: "1CC", x: 0, y: 0, z: 5182 },
        ],
      }),
    );
    expect(storeys).toEqual([
      { index: 0, name: "Ground", levelMm: 0, containerIds: ["a", "b"] },
      { index: 1, name: "First", levelMm: 2591, containerIds: ["c", "d"] },
      { index: 2, name: "Second", levelMm: 5182, containerIds: ["e"] },
    ]);
  });

  it("has none for an empty scheme", () => {
    expect(storeysOf(schemeOf({ units: [] }))).toEqual([]);
  });
});
