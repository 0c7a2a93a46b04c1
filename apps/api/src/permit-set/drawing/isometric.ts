import { isometricSize, type IsoFace, type IsometricModel, type IsoPoint } from "@cornerway/engine";
import { ptPerMm, type Ink } from "../paper/ink.ts";
import { lineD, path, polygonD, type At, type Box } from "../paper/shapes.ts";
import { label } from "./signs.ts";

/** The building from the south-east and above, not to scale, in the middle of a box. */
export function isometricInk(model: IsometricModel, room: Box): Ink[] {
  const { widthMm, heightMm } = isometricSize(model);
  const perMm = Math.min(room.width / Math.max(1, widthMm), room.height / Math.max(1, heightMm), ptPerMm / 40);
  const middle = { x: room.x + room.width / 2, y: room.y + room.height / 2 };
  const at = ({ rightMm, downMm }: IsoPoint): At => ({
    x: middle.x + (rightMm - model.middle.rightMm) * perMm,
    y: middle.y + (downMm - model.middle.downMm) * perMm,
  });
  return [
    ...model.units.flatMap(({ silhouette, faces, container }) => [
      path(polygonD(silhouette.map(at)), { fill: "paper" }),
      ...faces.flatMap((face) => faceInk(face, at, perMm)),
      path(polygonD(silhouette.map(at)), { pen: "profile" }),
      ...roofTag(faces, at, container.tag),
    ]),
  ];
}

function faceInk({ outline, folds, openings, shaded }: IsoFace, at: (p: IsoPoint) => At, perMm: number): Ink[] {
  const d = folds.map(([from, to]) => lineD(at(from), at(to))).join("");
  const crowded = perMm * 278 < 3;
  return [
    path(polygonD(outline.map(at)), { pen: "edge", fill: shaded ? "wash" : "paper" }),
    ...(d === "" ? [] : [path(d, { pen: "hair", tone: crowded ? "ruling" : "pencil" })]),
    ...openings.flatMap(({ outline: cut, mullions }) => [
      path(polygonD(cut.map(at)), { pen: "edge", fill: "paper" }),
      ...(mullions.length === 0 ? [] : [path(mullions.map(([a, b]) => lineD(at(a), at(b))).join(""), { pen: "hair" })]),
    ]),
  ];
}

function roofTag(faces: readonly IsoFace[], at: (p: IsoPoint) => At, tag: string): Ink[] {
  const roof = faces.find(({ face }) => face === "roof");
  if (roof === undefined) return [];
  const corners = roof.outline.map(at);
  const sum = corners.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return label({ x: sum.x / corners.length, y: sum.y / corners.length + 2.6 }, tag, { strong: true });
}
