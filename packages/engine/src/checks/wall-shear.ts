import type { Scheme } from "@cornerway/schema";
import { tableConditions, type ConditionLine, type WallFacts } from "../codes/containers/table-conditions.ts";
import { tableWallShear, type TableWall } from "../codes/containers/wall-shear-table.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { checkOf, type Check } from "./check.ts";

type BuildingCode = Scheme["site"]["edition"];

/** A wall as part of the lateral system. `forceN` is at allowable-stress level; `sheet` its strength in ASD, N/mm. */
export type CountedWall = {
  readonly table: TableWall;
  readonly facts: WallFacts;
  readonly forceN: number;
  readonly sheet: Resistance;
  /** The engineer's own cap in the table's place, N/mm at allowable level, and his reason. */
  readonly raisedCap?: { readonly nPerMm: number; readonly reason: string };
};

/** Either the wall counts and is checked, or it is out, with the conditions that took it out. */
export type WallShearFinding = {
  readonly conditions: readonly ConditionLine[];
  readonly counts: boolean;
  readonly check?: Check;
};

/**
 * Shear of a counted wall over its counted pieces: the sheet by rational analysis, capped at the code's table value or at
 * what the engineer puts in its place, and only where every condition of the table holds.
 */
export function wallShear(wall: CountedWall, edition: BuildingCode): WallShearFinding {
  const conditions = tableConditions(wall.facts, edition);
  if (!conditions.every(({ holds }) => holds)) return { conditions, counts: false };
  return { conditions, counts: true, check: cappedCheck(wall, edition) };
}

function cappedCheck(wall: CountedWall, edition: BuildingCode): Check {
  const element = wall.table.wall === "side" ? "side sheet" : "end sheet";
  const subject = { element, limitState: "wall shear by the code" } as const;
  if (!wall.sheet.ok) return { ok: false, ...subject, why: wall.sheet.why };
  const table = tableWallShear(wall.table, edition);
  const working = openWorking("Wall in shear, allowable stress", table.clause);
  working.let("V", Math.abs(wall.forceN), "N", "force in the wall's plane", "derived", "analysis");
  const counted = wall.facts.piecesMm.reduce((total, piece) => total + piece, 0);
  working.let("L", counted, "mm", "length of the pieces counted", "derived");
  working.take("v_table", table);
  if (wall.raisedCap !== undefined)
    working.let(
      "v_raised",
      wall.raisedCap.nPerMm,
      "N/mm",
      "cap raised by the engineer",
      "derived",
      wall.raisedCap.reason,
    );
  working.take("v_sheet", wall.sheet.working);
  working.compute("v", "V/L", "N/mm");
  if (wall.raisedCap === undefined)
    working.compute("v_a", "min(v_table, v_sheet)", "N/mm", "sheet by rational analysis, capped at the table");
  else working.compute("v_a", "min(v_raised, v_sheet)", "N/mm", "sheet by rational analysis, at the engineer's cap");
  return checkOf(subject, working.against("v", "v_a"));
}
