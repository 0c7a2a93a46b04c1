import type { Scheme } from "@cornerway/schema";
import type { Clause } from "../../working/working.ts";
import { containerClause } from "./wall-shear-table.ts";

type BuildingCode = Scheme["site"]["edition"];

/** What decides whether the code's simplified procedure for one unit is open. */
export type SingleUnitFacts = {
  readonly units: number;
  readonly onFoundation: boolean;
  readonly touchesOrSupportsAnother: boolean;
  readonly membersCut: boolean;
  readonly level: boolean;
  readonly floorAtBottom: boolean;
  readonly seismicCategory: "A" | "B" | "C" | "D" | "E" | "F";
};

export type SimplifiedCondition =
  | "one unit, standing alone"
  | "on a foundation"
  | "touches and supports nothing else"
  | "rails, fittings and posts whole"
  | "level, floor at the bottom"
  | "seismic design category A to D";

export type SimplifiedLine = {
  readonly condition: SimplifiedCondition;
  readonly holds: boolean;
  readonly clause: Clause;
};

/** Limits of the simplified procedure, each shown; it is open where all hold. */
export function simplifiedPath(facts: SingleUnitFacts, edition: BuildingCode): readonly SimplifiedLine[] {
  const clause = containerClause(edition, ".8.5.1");
  const line = (condition: SimplifiedCondition, holds: boolean): SimplifiedLine => ({ condition, holds, clause });
  return [
    line("one unit, standing alone", facts.units === 1),
    line("on a foundation", facts.onFoundation),
    line("touches and supports nothing else", !facts.touchesOrSupportsAnother),
    line("rails, fittings and posts whole", !facts.membersCut),
    line("level, floor at the bottom", facts.level && facts.floorAtBottom),
    line("seismic design category A to D", ["A", "B", "C", "D"].includes(facts.seismicCategory)),
  ];
}
