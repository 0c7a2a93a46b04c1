import { openingUses } from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { valueAt, withValueAt } from "../part/path.ts";
import { lengthField, plain } from "./common.ts";

const framingField = (path: string, label: string, otherwise: string): PartField => ({
  path: `framing.${path}`,
  label,
  as: "section",
  of: "framing",
  otherwise,
  group: "Framing",
});

export const openingFields: readonly PartField[] = [
  lengthField("offsetUm", "Along"),
  lengthField("sillUm", "Sill"),
  lengthField("widthUm", "Width"),
  lengthField("heightUm", "Height"),
  { path: "use", label: "Use", as: "choice", options: plain(openingUses) },
  { path: "framed", label: "Frame", as: "yes or no", yes: "framed", no: "bare" },
  {
    path: "cut",
    label: "Cut",
    as: "choice",
    options: [
      ["after placing", "after placing"],
      ["after shoring", "after shoring"],
    ],
    otherwise: "in the yard",
  },
  framingField("jamb", "Jambs", "stated set"),
  framingField("header", "Header", "stated set"),
  framingField("sill", "Sill member", "none"),
];

/** One section stated stands for jambs and header both until the other is; a bare opening has no framing. */
export function settleFraming(opening: object): object {
  const jamb = valueAt(opening, "framing.jamb") ?? valueAt(opening, "framing.header");
  const header = valueAt(opening, "framing.header") ?? jamb;
  if (valueAt(opening, "framed") !== true) return withValueAt(opening, "framing", undefined);
  if (jamb === undefined) return withValueAt(opening, "framing", undefined);
  return withValueAt(withValueAt(opening, "framing.jamb", jamb), "framing.header", header);
}
