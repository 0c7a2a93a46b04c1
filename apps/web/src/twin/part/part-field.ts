import { feetAndInches, type UnitSystem } from "@cornerway/schema";
import { readLengthUm } from "../../units/length.ts";
import { printQuantity, unitOf } from "../../units/quantity.ts";
import { readQuantity } from "../../units/read-typed.ts";
import type { Quantity } from "../../units/unit-scales.ts";
import { readNumber } from "../../units/read-number.ts";

interface Common {
  /** Where the value lies in the element, dotted: "from.xUm". */
  path: string;
  label: string;
  /** What holds where nothing is stated; only on fields that may be left empty. */
  otherwise?: string;
  /** Fields with the same heading stand together under it. */
  group?: string;
}

/** One property of an element as people state it. */
export type PartField =
  | (Common & { as: "quantity"; quantity: Quantity; perStored?: number })
  /** A length of the thickness of steel: millimetres or inches. */
  | (Common & { as: "small length" })
  | (Common & { as: "number"; unit?: string; us?: { unit: string; each: number } })
  | (Common & { as: "choice"; options: readonly (readonly [value: string, words: string])[] })
  /** A section of the catalogue; `framing`: one a jamb, header or sill is made of. */
  | (Common & { as: "section"; of: "any" | "framing" })
  | (Common & { as: "yes or no"; yes: string; no: string })
  | (Common & { as: "text"; long?: boolean });

export type Read = { ok: true; value: unknown } | { ok: false; why: string };

/** The label over a field, with its unit. */
export function fieldLabel(field: PartField, units: UnitSystem): string {
  const unit = unitOfField(field, units);
  return unit === "" ? field.label : `${field.label}, ${unit}`;
}

export function unitOfField(field: PartField, units: UnitSystem): string {
  if (field.as === "quantity") return unitOf(field.quantity, units);
  if (field.as === "small length") return units === "US" ? "in" : "mm";
  if (field.as !== "number") return "";
  return units === "US" && field.us !== undefined ? field.us.unit : (field.unit ?? "");
}

/** Stored numbers for one of the unit shown. */
const eachOf = (field: Extract<PartField, { as: "number" }>, units: UnitSystem): number =>
  units === "US" ? (field.us?.each ?? 1) : 1;

/** A stored value as its field shows it. */
export function printValue(field: PartField, value: unknown, units: UnitSystem): string {
  if (value === undefined || value === null) return "";
  if (field.as === "quantity" && typeof value === "number")
    return printQuantity(field.quantity, value * (field.perStored ?? 1), units);
  if (field.as === "small length" && typeof value === "number")
    return units === "US" ? feetAndInches(value / 1000).replace("−", "-") : String(value / 1000);
  if (field.as === "number" && typeof value === "number") return trimmed(value / eachOf(field, units));
  if (field.as === "yes or no") return value === true ? field.yes : field.no;
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}

/** At most four decimals, and none that say nothing. */
const trimmed = (value: number): string => String(Math.round(value * 10_000) / 10_000);

/** The same in a sentence, with its unit: "40 mm", "office", "welded shut". */
export function sayValue(field: PartField, value: unknown, units: UnitSystem): string {
  const text = printValue(field, value, units);
  if (text === "") return field.otherwise ?? "not stated";
  if (field.as === "choice") return field.options.find(([known]) => known === text)?.[1] ?? text;
  const unit = units === "US" && /length/.test(lengthKind(field)) ? "" : unitOfField(field, units);
  return unit === "" ? text : unit === "°" ? `${text}°` : `${text} ${unit}`;
}

const lengthKind = (field: PartField): string => (field.as === "quantity" ? field.quantity : field.as);

/** What was typed or chosen, as the element stores it. */
export function readValue(field: PartField, text: string, units: UnitSystem): Read {
  const bare = text.trim();
  if (bare === "" && field.otherwise !== undefined) return { ok: true, value: undefined };
  switch (field.as) {
    case "quantity": {
      const read = readQuantity(field.quantity, text, units);
      return read.ok ? { ok: true, value: Math.round(read.value / (field.perStored ?? 1)) } : read;
    }
    case "small length":
      return readSmall(bare, units);
    case "number": {
      const number = readNumber(bare);
      return number === null
        ? { ok: false, why: "A number, such as 1.5." }
        : { ok: true, value: number * eachOf(field, units) };
    }
    case "yes or no":
      return { ok: true, value: text === field.yes };
    case "choice":
    case "section":
    case "text":
      return bare === "" && field.as === "text" ? { ok: false, why: "Write it in words." } : { ok: true, value: bare };
  }
}

const umPerMm = 1000;
const umPerInch = 25_400;

function readSmall(text: string, units: UnitSystem): Read {
  const bare = readNumber(text);
  if (bare !== null) return { ok: true, value: Math.round(bare * (units === "US" ? umPerInch : umPerMm)) };
  const read = readLengthUm(text, units);
  return read.ok ? read : { ok: false, why: 'A small length, such as 40, 40 mm or 1 1/2".' };
}
