import type { Scheme } from "@cornerway/schema";
import { corrugatedSheet, folds } from "../../catalog/sections/corrugated-sheet.ts";
import { steels } from "../../catalog/materials.ts";
import type { CheckBasis } from "../../checks/check-basis.ts";
import type { WallShearFinding } from "../../checks/wall-shear.ts";
import type { Structure } from "../../bearing/structure.ts";
import type { Fabric } from "../../fabric/fabric-of.ts";
import type { Unit } from "../../geometry/building.ts";
import type { UnitFragment } from "../../model/building-model.ts";
import type { UnitLines } from "../../model/unit-lines.ts";
import { LastMade } from "../../numerics/last-made.ts";
import { forcePart } from "../force-part.ts";
import { isEarthquake } from "../holds-needed.ts";
import type { ModelledBearing } from "../modelled-bearings.ts";
import { wallStrips, type PlacedStrip } from "../sheet-pieces.ts";
import type { SolvedRun } from "../solve-runs.ts";
import type { StrengthPart } from "../strength-part.ts";
import { stripFlows } from "../strip-flows.ts";
import { unitWalls, type JudgedWall, type UnitWall } from "./unit-walls.ts";
import { wallStatics } from "./wall-statics.ts";

type SheetWalls = Scheme["basis"]["sheetWalls"];

/** The walls of a unit, each with the table's conditions and whether it counts in the lateral system. */
export const wallsOf = (unit: Unit, fabric: Fabric, rule: SheetWalls, basis: CheckBasis): JudgedWall[] =>
  unitWalls(unit, fabric).map((wall) => {
    const { conditions, counts, check } = finding(wall, NEWTON, rule, basis);
    const strengthN = check?.ok === true ? NEWTON / check.utilisation : 0;
    return { ...wall, conditions, counts: counts && rule.rule !== "left out", strengthN };
  });

/** By unit, for whoever asks for the walls of several; those of one structure are asked for again and again. */
export function wallsByUnit(
  structure: Structure,
  rule: SheetWalls,
  basis: CheckBasis,
): (unitId: string) => readonly JudgedWall[] {
  const { building, fabric } = structure;
  const known = judged.get(structure);
  const walls = known?.rule === rule && known.basis === basis ? known.walls : new Map<string, readonly JudgedWall[]>();
  judged.set(structure, { rule, basis, walls });
  return (unitId) => {
    const unit = building.unitById.get(unitId);
    const own = walls.get(unitId) ?? (unit === undefined ? [] : wallsKnown(unit, fabric(unitId), rule, basis));
    walls.set(unitId, own);
    return own;
  };
}

const wallsKnown = (unit: Unit, fabric: Fabric, rule: SheetWalls, basis: CheckBasis): readonly JudgedWall[] =>
  last.take(unit, [fabric, rule, basis], () => wallsOf(unit, fabric, rule, basis));

const last = new LastMade<readonly JudgedWall[]>();

type Judged = {
  readonly rule: SheetWalls;
  readonly basis: CheckBasis;
  readonly walls: Map<string, readonly JudgedWall[]>;
};
const judged = new WeakMap<Structure, Judged>();

const NEWTON = 1;

/**
 * Each counted wall at allowable level, under what level loads add to the gravity loads beside them: the table is of racking,
 * and what gravity does to the sheet is its shear buckling's. In wind it takes what the model's sheet does over its counted
 * pieces; in an earthquake no less than its share where counted walls alone hold the container, as door frames and the sheet of walls that do
 * not count are no part of the permitted system.
 */
export function wallParts(
  unit: Unit,
  walls: readonly JudgedWall[],
  { fragment, lines }: { readonly fragment: UnitFragment; readonly lines: UnitLines },
  own: readonly ModelledBearing[],
  rule: SheetWalls,
  basis: CheckBasis,
): StrengthPart[] {
  const counted = walls.filter(({ counts }) => counts);
  const shareOf = wallStatics(unit, counted, own);
  const strips = wallStrips(fragment, lines);
  return counted.map((wall) => {
    const sheet = strips.get(wall.face)?.filter((strip) => countsIn(wall, strip)) ?? [];
    const shearOf = shearIn(sheet, unit.id);
    const before = new WeakMap<SolvedRun, number>();
    const forceOf = (solved: SolvedRun): number => {
      if (solved.run.gravityAlone === undefined) return 0;
      const alone = solved.gravityAlone();
      const beforeN = alone === undefined ? 0 : (before.get(alone) ?? shearOf(alone));
      if (alone !== undefined) before.set(alone, beforeN);
      const flow = Math.abs(shearOf(solved) - beforeN);
      return isEarthquake(solved) ? Math.max(flow, shareOf(wall.face, solved)) : flow;
    };
    const part = forcePart(named(wall), forceOf, (forceN) => {
      const { check } = finding(wall, forceN, rule, basis);
      return check === undefined ? [] : [check];
    });
    const mostN = sheetStrengthN(wall, basis);
    return { ...part, decide: (solved) => ({ ...part.decide(solved), upper: forceOf(solved) / mostN }) };
  });
}

const named = ({ unitId, face }: UnitWall) =>
  ({
    ownerId: unitId,
    element: face === "front" || face === "door" ? "end sheet" : "side sheet",
    place: face === "door" ? "doors welded shut" : `${face} wall`,
    level: "allowable",
  }) as const;

/** Its own strength without the table's cap, N: the upper bound, which the engineer may raise the cap towards. */
function sheetStrengthN(wall: UnitWall, basis: CheckBasis): number {
  const strength = basis.sheetShear(panelOf(wall));
  return strength.ok ? strength.available * wall.facts.piecesMm.reduce((sum, piece) => sum + piece, 0) : 0;
}

const [sideSheet, endSheet] = [corrugatedSheet(folds.side, 1.6), corrugatedSheet(folds.end, 2)];

const panelOf = ({ face, heightMm }: UnitWall) => ({
  sheet: face === "left" || face === "right" ? sideSheet : endSheet,
  steel: steels.unproved,
  heightMm,
});

function finding(wall: UnitWall, forceN: number, rule: SheetWalls, basis: CheckBasis): WallShearFinding {
  const { table, facts } = wall;
  return basis.wall({
    table,
    facts,
    forceN,
    panel: panelOf(wall),
    ...(rule.rule === "cap raised" && { raisedCap: { nPerMm: rule.capNPerM / 1000, reason: rule.reason } }),
  });
}

const countsIn = ({ pieces }: UnitWall, { from, to }: PlacedStrip): boolean =>
  pieces.some(({ u0, u1 }) => (from + to) / 2 > u0 && (from + to) / 2 < u1);

/** What the sheet of these strips takes in a run, N. */
function shearIn(strips: readonly PlacedStrip[], unitId: string): (solved: SolvedRun) => number {
  const flowsOf = stripFlows(strips);
  return (solved) => {
    const flows = flowsOf(solved.flows(unitId));
    return strips.reduce((sum, { widthMm }, n) => sum + widthMm * (flows[n] ?? 0), 0);
  };
}
