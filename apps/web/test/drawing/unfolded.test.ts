import { faceFrame, placeContainer, pointOnFace } from "@cornerway/engine";
import { faces, type Opening } from "@cornerway/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faceDimensions } from "../../src/drawing/unfolded/unfolded-dimensions.ts";
import { betweenMm, onPaper, siteUnderPaper, unfoldedModel } from "../../src/drawing/unfolded/unfolded-model.ts";
import { schemeOf, unitAt } from "../support/schemes.ts";

const g1 = { ...unitAt("g1", "G1", 1500, -700, 0), turnMdeg: 37_000 };
const window: Opening = {
  ...{ id: "w1", tag: "W1", containerId: "g1", face: "right", use: "window", framed: false },
  ...{ offsetUm: 3_000_000, sillUm: 900_000, widthUm: 1_500_000, heightUm: 1_200_000 },
};
const model = unfoldedModel({ ...schemeOf([g1]), openings: [window] }, g1);
const flat = (face: (typeof faces)[number]) => model.flats.find((each) => each.face === face);

describe("a container folded open", () => {
  // 40 ft high cube by ISO 668: 12,192 × 2,438 × 2,896 mm.
  it("lays its faces out to size: right side in the middle, roof and left above, floor below, ends beside", () => {
    const size = (face: (typeof faces)[number]) => {
      const { u0Mm = 0, u1Mm = 0, z0Mm = 0, z1Mm = 0 } = flat(face)?.outline ?? {};
      return [Math.round(u1Mm - u0Mm), Math.round(z1Mm - z0Mm)];
    };
    expect(["left", "roof", "right", "floor", "front", "door"].map((face) => size(face as "left"))).toEqual([
      ...[
        [12_192, 2896],
        [12_192, 2438],
        [12_192, 2896],
      ],
      ...[
        [12_192, 2438],
        [2438, 2896],
        [2438, 2896],
      ],
    ]);
    expect(flat("roof")?.outline.z0Mm).toBeCloseTo(2896 + betweenMm, 6);
    expect(flat("door")?.outline.u0Mm).toBeCloseTo(12_192 + betweenMm, 6);
  });

  it("every place on every face is found again under the paper, at the same point of the site", () => {
    const placed = placeContainer(g1);
    const any = fc.record({ face: fc.constantFrom(...faces), u: fc.double({ min: 0.01, max: 0.99, noNaN: true }) });
    fc.assert(
      fc.property(any, fc.double({ min: 0.01, max: 0.99, noNaN: true }), ({ face, u }, v) => {
        const { u1, v1 } = placed.dimensions.face(face);
        const found = siteUnderPaper(model, onPaper(placed, face, u * u1, v * v1));
        const site = pointOnFace(faceFrame(placed, face), u * u1, v * v1);
        expect(found?.face).toBe(face);
        for (const axis of ["xMm", "yMm", "zMm"] as const) expect(found?.at[axis]).toBeCloseTo(site[axis], 6);
      }),
    );
  });

  it("dimensions what is cut from the outer faces of the fittings", () => {
    const right = flat("right");
    const strings = right === undefined ? null : faceDimensions(right, null, "SI");
    // 12.192 − 3.000 − 1.500 = 7.692; 2.896 − 0.900 − 1.200 = 0.796.
    expect(strings?.along.segments.map(({ text }) => text)).toEqual(["3.000", "1.500", "7.692"]);
    expect(strings?.up?.segments.map(({ text }) => text)).toEqual(["0.900", "1.200", "0.796"]);
    const left = flat("left");
    expect(left === undefined ? undefined : faceDimensions(left, null, "SI")).toBeNull();
  });
});
