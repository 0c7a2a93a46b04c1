import { AngleMdeg, LengthUm } from "@cornerway/schema";
import { z } from "zod";
import { mirrorLines } from "../../tools/laying.ts";
import { lengthField, plain } from "../fields/common.ts";
import type { PartField } from "../part/part-field.ts";

const way = { eastUm: LengthUm, northUm: LengthUm, upUm: LengthUm };

export const MoveBy = z.strictObject(way);
export const moveFields: readonly PartField[] = [
  lengthField("eastUm", "East"),
  lengthField("northUm", "North"),
  lengthField("upUm", "Up"),
];

/** Copies on end to end of one step. */
export const CopySteps = z.strictObject({ ...way, times: z.int().min(1).max(100) });
export type CopySteps = z.infer<typeof CopySteps>;
export const copyFields: readonly PartField[] = [
  ...moveFields,
  { path: "times", label: "How many times", as: "number" },
];

export const MirrorAbout = z.strictObject({ line: z.enum(mirrorLines), atUm: LengthUm, copied: z.boolean() });
export type MirrorAbout = z.infer<typeof MirrorAbout>;
export const mirrorFields: readonly PartField[] = [
  { path: "line", label: "About a line running", as: "choice", options: plain(mirrorLines) },
  lengthField("atUm", "At, east or north"),
  { path: "copied", label: "Draw", as: "yes or no", yes: "a mirrored copy", no: "these themselves" },
];

export const TurnBy = z.strictObject({ byMdeg: AngleMdeg });
export const turnFields: readonly PartField[] = [
  { path: "byMdeg", label: "Anticlockwise by", as: "quantity", quantity: "angle" },
];
