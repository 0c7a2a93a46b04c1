import type { UnitSystem } from "@cornerway/schema";
import { z } from "zod";
import { printQuantity } from "../units/quantity.ts";
import { readQuantity } from "../units/read-typed.ts";
import type { Quantity } from "../units/unit-scales.ts";

/** One typed field: its name, its label, and its value in the integers the scheme stores. */
export interface QuantityField {
  name: string;
  label: string;
  kind: Quantity;
  value: number;
}

export const writeQuantity = ({ kind, value }: QuantityField, units: UnitSystem): string =>
  printQuantity(kind, value, units);

/** Reads what was typed into the fields, by name, into the scheme's integers. */
export const quantitySchema = (fields: readonly QuantityField[], units: UnitSystem) =>
  z.object(Object.fromEntries(fields.map((field) => [field.name, typed(field, units)])));

/** A field nobody touched keeps its value to the last micrometre, however coarsely it is written. */
const typed = (field: QuantityField, units: UnitSystem) =>
  z.string().transform((text, context) => {
    if (text === writeQuantity(field, units)) return field.value;
    const read = readQuantity(field.kind, text, units);
    if (read.ok) return read.value;
    context.addIssue({ code: "custom", message: read.why });
    return z.NEVER;
  });
