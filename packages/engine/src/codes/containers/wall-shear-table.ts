import type { ContainerType, Scheme } from "@cornerway/schema";
import { openWorking } from "../../working/open-working.ts";
import type { Clause, Working } from "../../working/working.ts";

type BuildingCode = Scheme["site"]["edition"];

/** The section on containers in each edition. Some adoptions number it 3114. */
const sectionOf: Readonly<Record<BuildingCode, string>> = { "IBC 2021": "3115", "IBC 2024": "3115" };

/** A clause of the building code's container section, from memory. */
export const containerClause = (edition: BuildingCode, place: string): Clause => ({
  document: "IBC",
  edition: edition.slice(4),
  place: `${sectionOf[edition]}${place}`,
  certainty: "memory",
});

/** Allowable shear as printed, pounds per foot: side by the type's length, end the same for all. */
const endPlf = 843;
const sidePlf: Readonly<Record<ContainerType, number>> = {
  "1EEE": 75,
  "1EE": 75,
  "1AAA": 84,
  "1AA": 84,
  "1A": 84,
  "1BBB": 112,
  "1BB": 112,
  "1CCC": 168,
  "1CC": 168,
  "1C": 168,
  "1D": 337,
};

/** 1 lb/ft in N/mm. */
const newtonPerMmOfPlf = 0.0145939;

/** The racking force the ISO test applies to an end frame, N. A plate that states less lowers the table in proportion. */
const testedRackingN = 150_000;

export type TableWall = {
  readonly type: ContainerType;
  readonly wall: "side" | "end";
  /** Transverse racking force on the container's plate, N, where it is known. */
  readonly plateRackingN?: number;
};

/** Allowable shear flow of a container's own wall by the code's table, N/mm, allowable-stress level, wind or seismic. */
export function tableWallShear(wall: TableWall, edition: BuildingCode): Working {
  const working = openWorking(
    `Allowable shear of a ${wall.wall} wall by the code's table`,
    containerClause(edition, ".8.5.3"),
  );
  const printed = wall.wall === "side" ? sidePlf[wall.type] : endPlf;
  working.let(
    "v_table",
    printed * newtonPerMmOfPlf,
    "N/mm",
    `${printed} lb/ft, ${wall.type}`,
    "memory",
    "table of the section",
  );
  if (wall.plateRackingN === undefined || wall.plateRackingN >= testedRackingN)
    working.compute("v_a", "v_table", "N/mm");
  else {
    working.let("F_plate", wall.plateRackingN, "N", "racking force on the plate", "published", "safety approval plate");
    working.let("F_ISO", testedRackingN, "N", "racking force of the ISO test", "memory", "ISO 1496-1 test 9");
    working.let("c", 1, "1", "in proportion", "common practice");
    working.compute("v_a", "c*v_table*F_plate/F_ISO", "N/mm");
  }
  working.note("A proof-test value with a factor of five, not a strength of the sheet.");
  if (wall.type === "1D") working.note("A 10 ft unit is not racked in the ISO test; its row is taken as printed.");
  return working.giving("v_a");
}
