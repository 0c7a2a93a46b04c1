import type { Opening } from "@cornerway/schema";
import { fabricOf } from "../fabric/fabric-of.ts";
import { lateralGaps } from "../strength/lateral/lateral-gaps.ts";
import { wallsByUnit, wallsOf } from "../strength/lateral/wall-parts.ts";
import type { JudgedWall } from "../strength/lateral/unit-walls.ts";
import type { StrengthReason } from "../strength/strength-reason.ts";
import type { TrialGround } from "./trial-ground.ts";

/** Which walls of the building count sideways while the openings of one unit are tried; the others stay as they are. */
export class TriedWalls {
  private readonly ground: TrialGround;
  private readonly others: (unitId: string) => readonly JudgedWall[];

  constructor(ground: TrialGround) {
    const { scheme, analysis, basis } = ground;
    this.ground = ground;
    this.others = wallsByUnit(analysis.structure, scheme.basis.sheetWalls, basis.allowable);
  }

  /** What the unit lacks sideways with these openings; nothing where the engineer has left sheet walls out. */
  reasons(openings: readonly Opening[]): StrengthReason[] {
    const { unit, scheme, basis } = this.ground;
    const { sheetWalls } = scheme.basis;
    if (sheetWalls.rule === "left out") return [];
    const tried = { ...unit, openings };
    const own = wallsOf(tried, fabricOf(tried), sheetWalls, basis.allowable);
    const gaps = lateralGaps(scheme, (unitId) => (unitId === unit.id ? own : this.others(unitId)));
    return gaps.filter(({ unitId }) => unitId === unit.id).map((gap) => ({ kind: "no lateral wall", gap }));
  }
}
