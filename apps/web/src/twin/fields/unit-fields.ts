import { memberNames, Occupancy } from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { plain } from "./common.ts";
import { usUnits } from "./us-units.ts";

/** What a unit is apart from where it lies. */
export const unitFields: readonly PartField[] = [
  {
    path: "doors",
    label: "Doors",
    as: "choice",
    options: [["welded shut", "welded shut"]],
    otherwise: "as they come",
  },
  {
    path: "plateTareKg",
    label: "Plate tare",
    as: "quantity",
    quantity: "mass",
    perStored: 1000,
    otherwise: "by type",
  },
];

export const useField: PartField = {
  path: "occupancy",
  label: "Used as",
  as: "choice",
  options: plain(Occupancy.options),
};

export const overrideFields = (ofUnit: boolean): readonly PartField[] => [
  ...(ofUnit
    ? [{ path: "member", label: "Member", as: "choice", options: plain(memberNames) } satisfies PartField]
    : []),
  { path: "section", label: "Section", as: "section", of: "any", otherwise: "as assumed" },
  { path: "yieldMpa", label: "Yield", as: "number", unit: "MPa", us: usUnits.ksi, otherwise: "assumed" },
  { path: "thicknessUm", label: "Thickness", as: "small length", otherwise: "assumed" },
  { path: "source", label: "Certificate, survey or test", as: "text" },
];
