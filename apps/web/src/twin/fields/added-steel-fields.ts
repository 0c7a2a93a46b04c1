import { lockKinds, tieKinds } from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { lengthField, levelErrorField, plain, turnField } from "./common.ts";
import { usUnits } from "./us-units.ts";

const sectionField: PartField = { path: "section", label: "Section", as: "section", of: "any" };

export const postFields: readonly PartField[] = [
  lengthField("xUm", "East"),
  lengthField("yUm", "North"),
  turnField,
  lengthField("baseZUm", "Foot"),
  lengthField("topZUm", "Head"),
  levelErrorField,
  sectionField,
];

export const beamFields: readonly PartField[] = [...endFields("from", "From"), ...endFields("to", "To"), sectionField];

function endFields(end: "from" | "to", group: string): PartField[] {
  return [
    lengthField(`${end}.xUm`, "East", group),
    lengthField(`${end}.yUm`, "North", group),
    lengthField(`${end}.zUm`, "Top", group),
  ];
}

export const seatFields: readonly PartField[] = [
  lengthField("xUm", "East"),
  lengthField("yUm", "North"),
  { path: "packingUm", label: "Packing", as: "small length" },
  { path: "lengthUm", label: "Along", as: "small length" },
  { path: "widthUm", label: "Across", as: "small length" },
  { path: "stiffenerUm", label: "Stiffener", as: "small length", otherwise: "none" },
  levelErrorField,
  { path: "heldDown", label: "Unit above", as: "yes or no", yes: "held down", no: "bears only" },
];

export const tieFields: readonly PartField[] = [
  lengthField("xUm", "East"),
  lengthField("yUm", "North"),
  lengthField("zUm", "Height"),
  { path: "carries", label: "Carries", as: "choice", options: plain(tieKinds) },
  {
    path: "stiffnessNPerMm",
    label: "Stiffness",
    as: "number",
    unit: "N/mm",
    us: usUnits.kipPerInch,
    otherwise: "stated plate",
  },
];

export const lockFields: readonly PartField[] = [
  { path: "kind", label: "Joint", as: "choice", options: plain(lockKinds) },
  {
    path: "tested.tensionN",
    label: "Tension",
    as: "quantity",
    quantity: "force",
    otherwise: "as stated",
    group: "Tested resistance",
  },
  {
    path: "tested.shearN",
    label: "Shear",
    as: "quantity",
    quantity: "force",
    otherwise: "as stated",
    group: "Tested resistance",
  },
  {
    path: "tested.source",
    label: "Where it is written",
    as: "text",
    otherwise: "as the engine states",
    group: "Tested resistance",
  },
];
