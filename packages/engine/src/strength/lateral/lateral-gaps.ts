import type { Scheme } from "@cornerway/schema";
import { storeysOf } from "../../geometry/storeys.ts";
import type { TableCondition } from "../../codes/containers/table-conditions.ts";
import type { JudgedWall, WallFace } from "./unit-walls.ts";

export type WallWay = "lengthwise" | "crosswise";

/** One unit without a wall that counts, one way. */
export type LateralGap = {
  readonly unitId: string;
  readonly way: WallWay;
  readonly storey: string;
  /** No unit of its storey has a wall that counts this way either. */
  readonly wholeStorey: boolean;
  /** By wall: the conditions of the table that take it out. */
  readonly walls: readonly { readonly face: WallFace; readonly fails: readonly TableCondition[] }[];
};

const facesOf: Readonly<Record<WallWay, readonly WallFace[]>> = {
  lengthwise: ["left", "right"],
  crosswise: ["front", "door"],
};
const ways: readonly WallWay[] = ["lengthwise", "crosswise"];

/**
 * Every unit that has no counted wall one way. A quarter turn changes which units help each other: the storey is asked by
 * what resists along the same direction of the site.
 */
export function lateralGaps(scheme: Scheme, wallsOf: (unitId: string) => readonly JudgedWall[]): LateralGap[] {
  const turns = new Map(scheme.containers.map(({ id, turnMdeg }) => [id, turnMdeg]));
  return storeysOf(scheme).flatMap(({ name: storey, containerIds }) =>
    containerIds.flatMap((unitId) =>
      ways.flatMap((way): LateralGap[] => {
        const own = wallsOf(unitId).filter(({ face }) => facesOf[way].includes(face));
        if (own.some(({ counts }) => counts)) return [];
        const others = containerIds.flatMap((id) =>
          wallsOf(id).filter(
            ({ face, counts }) => counts && facesOf[asSeenFrom(way, turns, unitId, id)].includes(face),
          ),
        );
        const walls = own.map(({ face, conditions }) => ({
          face,
          fails: conditions.filter(({ holds }) => !holds).map(({ condition }) => condition),
        }));
        return [{ unitId, way, storey, wholeStorey: others.length === 0, walls }];
      }),
    ),
  );
}

/** Lengthwise of one unit is crosswise of one that is turned across it. */
function asSeenFrom(way: WallWay, turns: ReadonlyMap<string, number>, from: string, to: string): WallWay {
  const quarter = Math.round(((turns.get(to) ?? 0) - (turns.get(from) ?? 0)) / QUARTER_MDEG);
  return quarter % 2 === 0 ? way : way === "lengthwise" ? "crosswise" : "lengthwise";
}

const QUARTER_MDEG = 90_000;
