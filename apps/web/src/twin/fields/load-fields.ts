import { loadCases, type FreeLoad } from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { lengthField, plain } from "./common.ts";

const commonFields: readonly PartField[] = [
  { path: "surface", label: "On the", as: "choice", options: plain(["floor", "roof"]) },
  { path: "case", label: "As", as: "choice", options: plain(loadCases) },
  { path: "note", label: "What it is", as: "text" },
];

const force = (path: string, label: string): PartField => ({ path, label, as: "quantity", quantity: "force" });

const shapeFields: Readonly<Record<FreeLoad["shape"], readonly PartField[]>> = {
  point: [
    lengthField("xUm", "From front"),
    lengthField("yUm", "From right"),
    force("downN", "Down"),
    force("alongXN", "To the doors"),
    force("alongYN", "To the left"),
  ],
  line: [
    lengthField("xUm", "From front", "Begins"),
    lengthField("yUm", "From right", "Begins"),
    lengthField("toXUm", "From front", "Ends"),
    lengthField("toYUm", "From right", "Ends"),
    { path: "downNPerM", label: "Down", as: "quantity", quantity: "line load" },
  ],
  area: [
    lengthField("xUm", "From front"),
    lengthField("yUm", "From right"),
    { path: "pressurePa", label: "Down", as: "quantity", quantity: "pressure" },
    lengthField("lengthUm", "Long"),
    lengthField("widthUm", "Wide"),
  ],
};

export const freeLoadFields = (shape: FreeLoad["shape"]): readonly PartField[] => [
  ...shapeFields[shape],
  ...commonFields,
];
