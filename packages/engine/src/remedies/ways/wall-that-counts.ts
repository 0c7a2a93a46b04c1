import type { Opening, Operation } from "@cornerway/schema";
import { openingFrame } from "../../catalog/sections/frame-tubes.ts";
import type { TableCondition } from "../../codes/containers/table-conditions.ts";
import type { WallFace } from "../../strength/lateral/unit-walls.ts";
import type { Generator, Ladder, RemedyGround, Trial } from "../trial.ts";

/** The doors welded shut all round, so that the door end is a wall. Nothing where an opening is cut in that end: then it is no door. */
export const weldedDoors: Generator = (ground) => {
  const unit = ground.scheme.containers.find(({ id }) => id === ground.mark.elements[0]);
  const misses = wallsOf(ground).find(({ face }) => face === "door")?.fails ?? [];
  if (unit === undefined || unit.doors !== undefined || !misses.includes("end doors welded shut")) return [];
  if (openingsIn(ground, "door").length > 0) return [];
  return [
    [
      {
        change: { kind: "weld doors", unitId: unit.id },
        operations: [{ kind: "container.change", container: { ...unit, doors: "welded shut" } }],
      },
    ],
  ];
};

/** Walls in which nothing but frames is missing: every bare opening of the wall framed with the stated tube. */
export const framedWall: Generator = (ground) =>
  wallsOf(ground).flatMap(({ face, fails }): Ladder[] => {
    const bare = openingsIn(ground, face).filter(({ framed }) => !framed);
    if (bare.length === 0 || fails.some((misses) => misses !== FRAMED)) return [];
    const framed = bare.map((opening): Opening => ({ ...opening, framed: true }));
    const [first] = framed;
    if (first === undefined) return [];
    const { jamb, header } = openingFrame(first);
    const openingIds = framed.map(({ id }) => id);
    const operations = framed.map((opening): Operation => ({ kind: "opening.change", opening }));
    const change = { kind: "frame opening", openingIds, jamb: jamb.name, header: header.name, sill: null } as const;
    return [[{ change, operations }]];
  });

const FRAMED: TableCondition = "openings framed in steel not less than was removed";

/** Openings of a wall closed with sheet again, the widest first, until it is whole; each wall by itself. The door end has doors. */
export const closedOpenings: Generator = (ground) =>
  wallsOf(ground).flatMap(({ face }): Ladder[] => {
    const openings = openingsIn(ground, face).toSorted((a, b) => b.widthUm - a.widthUm || (a.id < b.id ? -1 : 1));
    if (openings.length === 0 || face === "door") return [];
    return [
      openings.map((_, last): Trial => {
        const ids = openings.slice(0, last + 1).map(({ id }) => id);
        return {
          change: { kind: "close openings", openingIds: ids },
          operations: ids.map((id) => ({ kind: "opening.close", id })),
        };
      }),
    ];
  });

/** The walls that do not count, with what they miss. */
const wallsOf = ({ mark: { fact } }: RemedyGround): { readonly face: WallFace; readonly fails: readonly string[] }[] =>
  fact.kind === "no-lateral-wall" ? fact.walls : [];

const openingsIn = ({ scheme, mark }: RemedyGround, face: WallFace): Opening[] =>
  scheme.openings.filter((opening) => opening.containerId === mark.elements[0] && opening.face === face);
