import type { Assessment, Container, Opening, PathStretch, Scheme } from "@cornerway/schema";

const mm = (value: number): number => Math.round(value * 1000);

const unit = (id: string, westMm: number, southMm: number, zMm: number, type: Container["type"] = "1AAA"): Container => ({
  id,
  tag: id.toUpperCase(),
  type,
  xUm: mm(westMm + (type === "1AAA" ? 6096 : 3029)),
  yUm: mm(southMm + 1219),
  zUm: mm(zMm),
  turnMdeg: 0,
});

const opening = (id: string, containerId: string, face: Opening["face"], use: Opening["use"], offsetMm: number, sillMm: number, widthMm: number, heightMm: number): Opening => ({
  id,
  tag: id.toUpperCase(),
  containerId,
  face,
  use,
  offsetUm: mm(offsetMm),
  sillUm: mm(sillMm),
  widthUm: mm(widthMm),
  heightUm: mm(heightMm),
  framed: false,
});

const pad = (id: string, xMm: number, yMm: number) => ({
  id,
  tag: id.toUpperCase(),
  xUm: mm(xMm),
  yUm: mm(yMm),
  topZUm: 0,
  lengthUm: 700_000,
  widthUm: 700_000,
  depthUm: 420_000,
  turnMdeg: 0,
});

/** Nine units on three levels: an overhang, a turned unit on top, one wall out between two units. */
export const nineContainers: Scheme = {
  version: 1,
  site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
  containers: [
    unit("f1", 3000, 0, 2896),
    unit("f2", 0, 2438, 2896),
    unit("f3", 0, 4876, 2896),
    unit("f4", 6134, 7314, 2896, "1CCC"),
    unit("g1", 0, 0, 0),
    unit("g2", 0, 2438, 0),
    unit("g3", 0, 4876, 0),
    unit("g4", 6134, 7314, 0, "1CCC"),
    { id: "t1", tag: "T1", type: "1AAA", xUm: mm(7353), yUm: mm(3656), zUm: mm(5792), turnMdeg: 90_000 },
  ],
  openings: [
    opening("d1", "g1", "right", "door", 620, 162, 2260, 2460),
    opening("d2", "g1", "right", "door", 5000, 162, 950, 2140),
    opening("d3", "f1", "right", "door", 2450, 162, 1500, 2290),
    opening("d4", "g1", "right", "open-wall", 9150, 162, 2200, 2460),
    opening("d5", "f2", "right", "door", 700, 162, 1000, 2140),
    opening("p1", "f1", "left", "passage", 2000, 162, 1200, 2200),
    opening("p2", "f2", "left", "open-wall", 200, 200, 11800, 2500),
    opening("p3", "f3", "right", "open-wall", 200, 200, 11800, 2500),
    opening("w1", "g1", "right", "window", 6450, 1050, 1800, 1250),
    opening("w2", "f1", "right", "window", 6000, 950, 2000, 1400),
    opening("w3", "f1", "right", "window", 9950, 950, 1600, 1400),
    opening("w4", "t1", "front", "window", 150, 150, 2138, 2600),
    opening("w5", "f2", "door", "window", 700, 900, 1100, 1200),
    opening("w6", "g3", "door", "window", 700, 900, 1100, 1200),
  ],
  posts: [{ id: "j1", tag: "J1", xUm: mm(3101), yUm: mm(90), baseZUm: 0, topZUm: mm(2896), turnMdeg: 0, section: "HSS 152×152×6.4" }],
  pads: [
    pad("b1", 101, 90),
    pad("b2", 12091, 90),
    pad("b3", 3101, 90),
    pad("b4", 101, 7224),
    pad("b5", 12091, 7224),
    pad("b6", 6235, 9662),
  ],
  loads: [],
};

const post = (id: string, elementId: string, xMm: number, yMm: number, headMm: number, footMm: number, forceTopKn: number, forceFootKn: number, via: PathStretch["via"] = "corner post"): PathStretch => ({
  id,
  elementId,
  via,
  from: { xMm, yMm, zMm: headMm },
  to: { xMm, yMm, zMm: footMm },
  forceTopKn,
  forceFootKn,
  leavesCorners: false,
});

const seat = (id: string, elementId: string, xMm: number, yMm: number, zMm: number, forceKn: number): PathStretch => ({
  id,
  elementId,
  via: "rail",
  from: { xMm, yMm, zMm },
  to: { xMm: xMm + 3000, yMm, zMm },
  forceTopKn: forceKn,
  forceFootKn: forceKn,
  leavesCorners: true,
});

/** An invented answer, for looking at the drawing without the engine. */
export const nineContainersAssessed: Assessment = {
  engineVersion: "preview",
  verdict: "does not work",
  scope: "load path only, no strength checked",
  units: nineContainers.containers.map(({ id, zUm }) => ({
    id,
    storey: Math.round(zUm / 2_896_000),
    verdict: "works as built",
    weightKn: 38,
    imposedKn: 71,
  })),
  bearings: [],
  path: [
    post("t1-sw", "t1", 6223, 90, 8688, 5792, 12, 66),
    post("t1-se", "t1", 8482, 90, 8688, 5792, 12, 66),
    seat("t1-sw-rail", "f1", 6223, 90, 5792, 66),
    seat("t1-se-rail", "f1", 8482, 90, 5792, 66),
    post("f1-se", "f1", 15091, 90, 5792, 2896, 4, 22),
    post("f1-sw", "f1", 3101, 90, 5792, 2896, 30, 102),
    seat("f1-se-rail", "g1", 12091, 90, 2896, 127),
    post("g1-sw", "g1", 101, 90, 2896, 0, 6, 49),
    post("g1-se", "g1", 12091, 90, 2896, 0, 127, 176),
    post("j1", "j1", 3101, 90, 2896, 0, 102, 102, "added post"),
  ],
  marks: [
    {
      id: "load-over-opening:d3:t1",
      verdict: "does not work",
      certainty: "derived",
      elements: ["d3", "f1", "t1"],
      at: { xMm: 6200, yMm: 0, zMm: 4200 },
      fact: { kind: "load-over-opening", forceKn: 66, railCut: true },
      basis: "statics",
    },
    {
      id: "borne-on-rail:t1:f1",
      verdict: "needs the engineer",
      certainty: "derived",
      elements: ["t1", "f1"],
      at: { xMm: 8482, yMm: 90, zMm: 5792 },
      fact: {
        kind: "borne-on-rail",
        turned: true,
        crossings: [
          { at: { xMm: 6223, yMm: 90, zMm: 5792 }, forceKn: 66, toNearestFittingMm: 3200, gapMm: 18.5 },
          { at: { xMm: 8482, yMm: 90, zMm: 5792 }, forceKn: 66, toNearestFittingMm: 5400, gapMm: 18.5 },
        ],
      },
      basis: "statics",
    },
    {
      id: "overhang:f1:g1",
      verdict: "works with steel",
      certainty: "derived",
      elements: ["f1", "g1"],
      at: { xMm: 12091, yMm: 90, zMm: 2896 },
      fact: { kind: "overhang", lengthMm: 3000, towards: "east", bearingKn: 127, tailReactionKn: 102 },
      basis: "statics",
    },
    {
      id: "post-carries:j1",
      verdict: "works with steel",
      certainty: "derived",
      elements: ["j1", "f1"],
      at: { xMm: 3101, yMm: 90, zMm: 1400 },
      fact: { kind: "post-carries", forceKn: 102, holds: ["f1"] },
      basis: "statics",
    },
    {
      id: "borne-on-fittings:f3:g3",
      verdict: "works as built",
      certainty: "derived",
      elements: ["f3", "g3"],
      at: { xMm: 12091, yMm: 7224, zMm: 2896 },
      fact: { kind: "borne-on-fittings", heaviestPostKn: 98 },
      basis: "statics",
    },
    {
      id: "opening-in-sheet:w2",
      verdict: "not checked",
      certainty: "derived",
      elements: ["w2", "f1"],
      at: { xMm: 10000, yMm: 0, zMm: 4500 },
      fact: { kind: "opening-in-sheet", face: "right", widthMm: 2000, toFrontPostMm: 5840, toDoorPostMm: 4032, cutShare: 0.42, shortestPierMm: 1950, wallRule: "keeps both" },
      basis: "geometry",
    },
  ],
  statics: { loadKn: 1588, reactionKn: 1588, residualKn: 0, reactions: [] },
  questions: 214,
};
