import { assess, elevationModel, pathStrokes } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { hatchedPlaces } from "../../src/drawing/marks/hatched-places.ts";
import { forceFigure, strokeRun } from "../../src/drawing/stroke/stroke-run.ts";
import { demoScheme } from "../support/demo-scheme.ts";

const assessment = assess(demoScheme);
const south = elevationModel(demoScheme, "south");
const strokes = pathStrokes(assessment, "south", south.faces, south.posts);
const view = { originXPx: 200, originYPx: 500, pxPerM: 50 };

describe("load strokes of the demo's south elevation", () => {
  it("stand only on faces at the front of their storey", () => {
    const front = new Set(south.faces.filter(({ beyond }) => !beyond).map(({ container }) => container.id));
    const corners = strokes.filter(({ stretch }) => stretch.via === "corner post");
    expect(corners.length).toBeGreaterThan(2);
    expect(corners.filter(({ stretch }) => !front.has(stretch.elementId))).toEqual([]);
    expect(corners.some(({ stretch }) => stretch.elementId === "g2")).toBe(false);
  });

  it("carry the engine's forces, head and foot, unchanged into their widths", () => {
    const post = strokes.find(({ stretch }) => stretch.id === "corner:g1:door-right");
    expect(post).toBeDefined();
    if (post === undefined) return;
    const { widthFromPx, widthToPx } = strokeRun(post, view);
    expect(widthFromPx).toBeCloseTo(Math.min(24, 0.122 * post.stretch.forceTopKn), 9);
    expect(widthToPx).toBeCloseTo(Math.min(24, 0.122 * post.stretch.forceFootKn), 9);
  });

  it("break where the engine says that the path leaves the corners, and nowhere else", () => {
    const corners = strokes.filter(({ stretch }) => stretch.via === "corner post");
    expect(corners.map(({ breaks }) => breaks)).toEqual(corners.map(({ stretch }) => stretch.leavesCorners));
    expect(corners.some(({ breaks }) => breaks)).toBe(true);
  });

  it("write a figure at each foot from which no stroke goes on", () => {
    const feet = strokes.filter(
      ({ stretch, breaks }) => stretch.via === "corner post" && !breaks && stretch.to.zMm === 0,
    );
    expect(feet.length).toBeGreaterThan(1);
    expect(feet.every(({ figureAt }) => figureAt === "foot")).toBe(true);
  });

  it("draw a load that arrives on a rail as a stub of 15 px into what carries it", () => {
    const stub = strokes.find((stroke) => stroke.stub);
    expect(stub?.stretch.via).toBe("seat");
    if (stub === undefined) return;
    const { from, to, widthToPx } = strokeRun(stub, view);
    expect(to.yPx - from.yPx).toBe(15);
    expect(widthToPx).toBeCloseTo(Math.min(24, Math.max(1.1, 0.122 * Math.abs(stub.stretch.forceFootKn))), 9);
  });
});

describe("the figure of a stroke", () => {
  it("is in whole kN, and says when the load pulls upwards", () => {
    expect([
      forceFigure(65.8, "SI"),
      forceFigure(0.2, "SI"),
      forceFigure(-21.287, "SI"),
      forceFigure(-0.3, "SI"),
    ]).toEqual(["66 kN", "0 kN", "21 kN up", "0 kN"]);
  });
});

describe("hatched places", () => {
  const places = hatchedPlaces(assessment.marks, south);

  it("leave what works as built bare", () => {
    expect(assessment.marks.some(({ verdict }) => verdict === "works as built")).toBe(true);
    expect(places.filter(({ verdict }) => verdict === "works as built")).toEqual([]);
  });

  it("cover the whole face of a unit that tips over, with the wide hatch", () => {
    const tips = assessment.marks.find(({ fact }) => fact.kind === "tips-over");
    const face = south.faces.find(({ container }) => container.id === tips?.elements[0]);
    const place = places.find(({ markId }) => markId === tips?.id);
    expect(place?.size).toBe("wide");
    expect([place?.u0Mm, place?.u1Mm, place?.z0Mm, place?.z1Mm]).toEqual([
      face?.u0Mm,
      face?.u1Mm,
      face?.z0Mm,
      face?.z1Mm,
    ]);
  });

  it("put a band under each crossing of a rail that this side shows, within the face and just below the bearing", () => {
    const crossing = assessment.marks.find(
      ({ fact, elements }) => fact.kind === "borne-on-rail" && elements[0] === "f1",
    );
    const bands = places.filter(({ markId }) => markId === crossing?.id);
    expect(bands.length).toBeGreaterThan(0);
    for (const { u0Mm, u1Mm, z0Mm, z1Mm } of bands) {
      expect(z1Mm - z0Mm).toBe(130);
      expect(south.faces.some((face) => u0Mm >= face.u0Mm && u1Mm <= face.u1Mm && z1Mm <= face.z1Mm + 60)).toBe(true);
    }
  });
});
