import type { Scheme } from "@cornerway/schema";
import type { Clause } from "../../working/working.ts";
import { containerClause } from "./wall-shear-table.ts";

type BuildingCode = Scheme["site"]["edition"];

/** What is known of a wall that would count by the table. Lengths mm; `unknown` where the scheme does not say. */
export type WallFacts = {
  readonly lengthMm: number;
  readonly openingsMm: number;
  /** Length of each full-height piece of sheet that is to count. */
  readonly piecesMm: readonly number[];
  readonly boundaryOnFourSides: boolean | "unknown";
  readonly openingsFramed: boolean | "unknown";
  /** Holes in the counted pieces: at most one small one in each 8 ft. Vents the container came with do not count. */
  readonly smallHolesWithinLimit: boolean | "unknown";
  /** Sheet wall, or the door end with its doors. */
  readonly kind: "sheet" | "door end";
  readonly doorsWeldedShut: boolean | "unknown";
};

export type TableCondition =
  | "openings at most half the wall"
  | "counted pieces at least 4 ft"
  | "boundary member on all four sides"
  | "openings framed in steel not less than was removed"
  | "one small hole at most in each 8 ft"
  | "end doors welded shut";

/** One line of the truth table. `holds` is false where the scheme does not say: nothing is counted on silence. */
export type ConditionLine = {
  readonly condition: TableCondition;
  readonly holds: boolean;
  readonly stated: boolean;
  readonly clause: Clause;
};

/** 4 ft, the shortest piece that counts, mm. */
export const shortestPieceMm = 1219.2;

/** Every condition under which the table may be used for a wall, each shown. The table holds where all lines hold. */
export function tableConditions(wall: WallFacts, edition: BuildingCode): readonly ConditionLine[] {
  const line = (condition: TableCondition, fact: boolean | "unknown"): ConditionLine => ({
    condition,
    holds: fact === true,
    stated: fact !== "unknown",
    clause: containerClause(edition, ".8.5.3"),
  });
  return [
    line("openings at most half the wall", wall.openingsMm <= wall.lengthMm / 2),
    line(
      "counted pieces at least 4 ft",
      wall.piecesMm.length > 0 && wall.piecesMm.every((piece) => piece >= shortestPieceMm),
    ),
    line("boundary member on all four sides", wall.boundaryOnFourSides),
    line("openings framed in steel not less than was removed", wall.openingsMm === 0 ? true : wall.openingsFramed),
    line("one small hole at most in each 8 ft", wall.smallHolesWithinLimit),
    line("end doors welded shut", wall.kind === "sheet" ? true : wall.doorsWeldedShut),
  ];
}
