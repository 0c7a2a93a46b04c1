import { containerDimensions } from "@cornerway/engine";
import type { FaceRect } from "@cornerway/engine";
import type { Container, Face, Opening, Scheme } from "@cornerway/schema";
import { nextTag, openingCapital } from "./next-tag.ts";
import { newElementId } from "./new-element-id.ts";

/** A point on a face, mm: u along from the front end or the right side, v up. */
export interface FacePointMm {
  uMm: number;
  vMm: number;
}

const gridMm = 10;
const leastMm = 100;
/** A cut whose foot is this near the floor is a door. */
const doorSillMm = 400;

/**
 * The opening between two points drawn on a face: kept on the face, on the 10 mm grid, drawn to the edges of the sheet
 * when within `reachMm`. Null while it is too small to cut.
 */
export function cutOpening(
  scheme: Scheme,
  unit: Container,
  face: Face,
  from: FacePointMm,
  to: FacePointMm,
  reachMm: number,
): Opening | null {
  const dimensions = containerDimensions(unit.type);
  const outline = dimensions.face(face);
  const sheet = dimensions.sheetZone(face);
  const [left, right] = span(from.uMm, to.uMm, outline.u0, outline.u1, [sheet.u0, sheet.u1], reachMm);
  const [foot, head] = span(from.vMm, to.vMm, outline.v0, outline.v1, [sheet.v0, sheet.v1], reachMm);
  if (right - left < leastMm || head - foot < leastMm) return null;
  const use = useOf(face, foot, sheet);
  return {
    id: newElementId("o"),
    tag: nextTag(scheme, openingCapital[use]),
    containerId: unit.id,
    face,
    use,
    offsetUm: Math.round(left * 1000),
    sillUm: Math.round(foot * 1000),
    widthUm: Math.round((right - left) * 1000),
    heightUm: Math.round((head - foot) * 1000),
    framed: true,
  };
}

function useOf(face: Face, footMm: number, sheet: FaceRect): Opening["use"] {
  if (face === "roof" || face === "floor") return "hatch";
  return footMm <= sheet.v0 + doorSillMm ? "door" : "window";
}

function span(a: number, b: number, least: number, most: number, edges: number[], reachMm: number): [number, number] {
  const place = (value: number) => {
    const edge = edges.find((candidate) => Math.abs(candidate - value) <= reachMm);
    return Math.min(most, Math.max(least, edge ?? Math.round(value / gridMm) * gridMm));
  };
  return [place(Math.min(a, b)), place(Math.max(a, b))];
}
