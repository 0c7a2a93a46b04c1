import type { PlacedChange } from "@cornerway/engine";
import { changesSince, deltaSign, type MarkedChanges } from "../changes.ts";
import { pt, type Ink } from "../paper/ink.ts";
import { path, text, type Box } from "../paper/shapes.ts";
import type { View } from "../paper/view.ts";
import type { SetSource } from "../set-source.ts";
import { rectOnPaper } from "./elevation.ts";

/** Air between what changed and its cloud, and the chord of one arc of it, pt. */
const airPt = 5;
const arcPt = 11;

/** Round each change a view shows what the authority asks: a cloud, a delta, the number of the change. */
export const cloudsInk = (source: SetSource, marked: readonly MarkedChanges[], view: View): Ink[] =>
  marked.flatMap((changes) => markedInk(source, changes, view));

function markedInk(source: SetSource, { sign, clouded, places }: MarkedChanges, view: View): Ink[] {
  const isOfThisSet = sign === deltaSign(source);
  const numbers = new Map(
    source.authority.numbered && isOfThisSet
      ? changesSince(source).map(({ number, change }) => [change.id, number])
      : [],
  );
  return [...byPlace(places, view)].flatMap(([, { rect, ids }]) => {
    const around = {
      x: rect.x - airPt,
      y: rect.y - airPt,
      width: rect.width + 2 * airPt,
      height: rect.height + 2 * airPt,
    };
    const own = ids.map((id) => numbers.get(id)).filter((number) => number !== undefined);
    return [
      ...(clouded ? [path(cloudD(around), { pen: "edge" })] : []),
      ...deltaInk(around, sign, own.length === 0 ? "" : `${Math.min(...own)}${own.length > 1 ? "+" : ""}`),
    ];
  });
}

/** One cloud stands for all that changed at one place. */
function byPlace(placed: readonly PlacedChange[], view: View): Map<string, { rect: Box; ids: string[] }> {
  const places = new Map<string, { rect: Box; ids: string[] }>();
  for (const { id, fresh } of placed) {
    const rect = rectOnPaper(view, fresh);
    const key = [rect.x, rect.y, rect.width, rect.height].map(Math.round).join(" ");
    const known = places.get(key);
    if (known === undefined) places.set(key, { rect, ids: [id] });
    else known.ids.push(id);
  }
  return places;
}

/** Arcs round a rectangle, bulging outwards, whole ones along each side. */
function cloudD({ x, y, width, height }: Box): string {
  const corners = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  const arcs = corners.flatMap((from, at) => {
    const to = corners[(at + 1) % corners.length] ?? from;
    const long = Math.abs(to.x - from.x) + Math.abs(to.y - from.y);
    const count = Math.max(1, Math.round(long / arcPt));
    const radius = pt((long / count) * 0.56);
    return Array.from({ length: count }, (_, index) => {
      const share = (index + 1) / count;
      return `A${radius} ${radius} 0 0 1 ${pt(from.x + (to.x - from.x) * share)} ${pt(from.y + (to.y - from.y) * share)}`;
    });
  });
  return `M${pt(x)} ${pt(y)}${arcs.join("")}Z`;
}

/** The triangle with its sign at the upper left of its cloud, where no tag stands, with the number of the change where it has one. */
function deltaInk({ x, y }: Box, sign: string, number: string): Ink[] {
  const at = { x: x - 4, y: y - 4 };
  const half = 7;
  return [
    path(`M${pt(at.x)} ${pt(at.y - half)}L${pt(at.x + half)} ${pt(at.y + half - 1)}H${pt(at.x - half)}Z`, {
      ...{ pen: "edge", fill: "paper" },
    }),
    text(at.x, at.y + 4.6, sign, { size: 7, face: "lettering strong", anchor: "middle" }),
    ...(number === ""
      ? []
      : [text(at.x - half - 2, at.y + 2, number, { size: 7, face: "lettering strong", anchor: "end" })]),
  ];
}
