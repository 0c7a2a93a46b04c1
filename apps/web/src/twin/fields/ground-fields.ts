import { supportKinds } from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { lengthField, levelErrorField, plain, turnField } from "./common.ts";
import { usUnits } from "./us-units.ts";

export const padFields: readonly PartField[] = [
  lengthField("xUm", "East"),
  lengthField("yUm", "North"),
  lengthField("topZUm", "Top"),
  lengthField("lengthUm", "Length"),
  lengthField("widthUm", "Width"),
  lengthField("depthUm", "Depth"),
  { path: "support", label: "Kind", as: "choice", options: plain(supportKinds), otherwise: "pad" },
  turnField,
  levelErrorField,
  { path: "settlementUm", label: "Settlement", as: "small length", otherwise: "project's" },
  {
    path: "subgradeKnPerM3",
    label: "Ground stiffness",
    as: "number",
    unit: "kN/m³",
    us: usUnits.pci,
    otherwise: "bounds",
  },
];
