import type { PointMm } from "@cornerway/schema";
import type { UnitSolution } from "../analysis/recover-unit.ts";
import type { BuildingModel, PlacedUnit } from "../model/building-model.ts";
import { hypot } from "../numerics/elementary.ts";
import type { SolvedRun } from "../strength/solve-runs.ts";
import { rounded } from "../units.ts";
import { inSite } from "./site-places.ts";

/** A point of a member and how far the run moves it, mm, site axes. */
export type MovedPoint = { readonly at: PointMm; readonly movedMm: PointMm };

/** A member from end to end. */
export type MovedLine = { readonly ownerId: string; readonly points: readonly MovedPoint[] };

/** Posts and rails of a building where a run moves them to, and what moves farthest. */
export type DeflectedShape = {
  readonly lines: readonly MovedLine[];
  readonly largest: { readonly ownerId: string; readonly at: PointMm; readonly mm: number } | null;
};

/** Solved movements of posts and rails, without any factor: a drawing states its own. */
export function deflectedShape(model: BuildingModel, solved: SolvedRun): DeflectedShape {
  const lines = [
    ...model.units.flatMap((unit) => linesOf(unit, solved.inside(unit.id))),
    ...freePosts(model, solved.frame.displacements),
  ];
  return { lines, largest: largestOf(lines) };
}

/** What moves farthest; null where nothing moves. */
export function largestOf(lines: readonly MovedLine[]): DeflectedShape["largest"] {
  let largest: DeflectedShape["largest"] = null;
  for (const { ownerId, points } of lines)
    for (const { at, movedMm } of points) {
      const mm = rounded(hypot(hypot(movedMm.xMm, movedMm.yMm), movedMm.zMm));
      if (mm > (largest?.mm ?? 0)) largest = { ownerId, at, mm };
    }
  return largest;
}

/** By how much movements are enlarged where the largest is drawn so long, and 1 where nothing moves. */
export const deflectionFactor = ({ largest }: Pick<DeflectedShape, "largest">, drawnMm: number): number =>
  largest === null ? 1 : drawnMm / largest.mm;

/** Outer members of a container; equal kinds on one line are one member. */
const DRAWN = [
  "post",
  "addedPost",
  "topRail",
  "bottomRail",
  "frontEndtopRail",
  "frontEndbottomRail",
  "doorEndtopRail",
  "doorEndbottomRail",
];

function linesOf(unit: PlacedUnit, { displacements }: UnitSolution): MovedLine[] {
  const { nodes, beams } = unit.fragment;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const members = new Map<string, Map<string, MovedPoint & { readonly order: number }>>();
  const place = inSite(unit);
  for (const { id, i, j } of beams) {
    const kind = id.slice(0, id.indexOf("#"));
    const [a, b] = [byId.get(i), byId.get(j)];
    if (!DRAWN.includes(kind) || a === undefined || b === undefined) continue;
    const way = a.z !== b.z ? "z" : a.x !== b.x ? "x" : "y";
    const key = [kind, way === "x" ? "" : a.x, way === "y" ? "" : a.y, way === "z" ? "" : a.z].join(" ");
    const points = members.get(key) ?? new Map<string, MovedPoint & { readonly order: number }>();
    members.set(key, points);
    for (const node of [a, b]) {
      const [x = 0, y = 0, z = 0] = displacements[node.id] ?? [];
      points.set(node.id, {
        order: node[way],
        at: place(node),
        movedMm: { xMm: rounded(x), yMm: rounded(y), zMm: rounded(z) },
      });
    }
  }
  return [...members.values()].map((points) => ({
    ownerId: unit.id,
    points: [...points.values()].toSorted((a, b) => a.order - b.order).map(({ at, movedMm }) => ({ at, movedMm })),
  }));
}

function freePosts(
  { between }: BuildingModel,
  displacements: Readonly<Record<string, readonly number[]>>,
): MovedLine[] {
  const byId = new Map(between.nodes.map((node) => [node.id, node]));
  return (
    between.beams
      .map(({ id, i, j }) => ({
        ownerId: id.slice(0, id.indexOf(":")),
        points: [i, j].flatMap((name): MovedPoint[] => {
          const node = byId.get(name);
          const [x = 0, y = 0, z = 0] = displacements[name] ?? [];
          if (node === undefined) return [];
          return [
            {
              at: { xMm: node.x, yMm: node.y, zMm: node.z },
              movedMm: { xMm: rounded(x), yMm: rounded(y), zMm: rounded(z) },
            },
          ];
        }),
      }))
      // arms of ties hang on containers, whose own lines are drawn
      .filter(({ points }) => points.length > 1)
  );
}
