import { z } from "zod";
import {
  readAngleMdeg,
  readLengthUm,
  readPressurePa,
  writeDegrees,
  writeKpa,
  writeMetres,
} from "../tools/read-quantity.ts";
import type { ReadQuantity } from "../tools/read-quantity.ts";

export type QuantityKind = "length" | "angle" | "pressure";

/** One typed field: its name, its label, and its value in the integers the scheme stores. */
export interface QuantityField {
  name: string;
  label: string;
  kind: QuantityKind;
  value: number;
}

export const unitOf: Record<QuantityKind, string> = { length: "m", angle: "°", pressure: "kPa" };

const readers: Record<QuantityKind, (text: string) => ReadQuantity> = {
  length: readLengthUm,
  angle: readAngleMdeg,
  pressure: readPressurePa,
};

const writers: Record<QuantityKind, (value: number) => string> = {
  length: writeMetres,
  angle: writeDegrees,
  pressure: writeKpa,
};

export const writeQuantity = ({ kind, value }: QuantityField): string => writers[kind](value);

/** Reads what was typed into the fields, by name, into the scheme's integers. */
export const quantitySchema = (fields: readonly QuantityField[]) =>
  z.object(Object.fromEntries(fields.map((field) => [field.name, typed(field.kind)])));

const typed = (kind: QuantityKind) =>
  z.string().transform((text, context) => {
    const read = readers[kind](text);
    if (read.ok) return read.value;
    context.addIssue({ code: "custom", message: read.why });
    return z.NEVER;
  });
