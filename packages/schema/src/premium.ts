import { z } from "zod";
import { rateNames } from "./cost-book.ts";
import { Verdict } from "./verdict.ts";

/** What one element adds above the same containers stacked plainly. */
export const takeOffItems = [
  "cut",
  "paint repair",
  "weld of 5 mm",
  "steel",
  "lock",
  "anchor",
  "pad",
  "pad concrete",
  "crane lift",
  "engineering",
] as const;

export const PremiumLine = z
  .strictObject({
    elementId: z.string(),
    /** The unit it belongs to; null for what stands by itself. */
    containerId: z.string().nullable(),
    item: z.enum(takeOffItems),
    /** The section, for steel. */
    section: z.string().nullable(),
    quantity: z.number(),
    unit: z.enum(["m", "kg", "m³", "each"]),
    where: z.enum(["shop", "site"]),
    /** Hours of work in it, at the rate named; none in what is paid by the piece or kilogram alone. */
    hours: z.number(),
    hoursAt: z.enum(rateNames).nullable(),
    /** What is paid by the piece or kilogram; null where only hours are paid. */
    piecesAt: z.enum(rateNames).nullable(),
    money: z.number(),
    /** True while a figure it rests on has no source. */
    forShow: z.boolean(),
  })
  .meta({ id: "PremiumLine" });
export type PremiumLine = z.infer<typeof PremiumLine>;

/** The take-off of a whole scheme: metres, kilograms, pieces and hours above the plain stack. */
export const PremiumQuantities = z
  .strictObject({
    cutM: z.number(),
    weldM: z.array(z.strictObject({ legMm: z.number(), lengthM: z.number() })),
    steelKg: z.array(z.strictObject({ section: z.string(), massKg: z.number() })),
    connections: z.array(
      z.strictObject({ kind: z.enum(["lock", "hold-down", "made connection", "seat", "tie"]), count: z.int() }),
    ),
    pads: z.int(),
    /** Of pads beyond the usual size, m³. */
    padConcreteM3: z.number(),
    craneLifts: z.int(),
    hours: z.strictObject({ shop: z.number(), site: z.number(), crane: z.number(), engineering: z.number() }),
  })
  .meta({ id: "PremiumQuantities" });
export type PremiumQuantities = z.infer<typeof PremiumQuantities>;

export const Premium = z
  .strictObject({
    currency: z.string(),
    lines: z.array(PremiumLine),
    quantities: PremiumQuantities,
    /** Of all lines; what stands apart or is not priced is not in it. */
    total: z.number(),
    /** True while any figure of the book has no source. */
    forShow: z.boolean(),
    /** Elements whose steel the catalogue does not know: not in the total. */
    notPriced: z.array(z.string()),
    /** Money by unit; null for what stands by itself. Together the total. */
    units: z.array(z.strictObject({ containerId: z.string().nullable(), money: z.number() })),
    /**
     * Money of what is drawn for each mark. Null where the mark stands apart: what it will need is not known. An element
     * may belong to several marks, so these do not add up.
     */
    marks: z.array(z.strictObject({ markId: z.string(), verdict: Verdict, money: z.number().nullable() })),
  })
  .meta({ id: "Premium" });
export type Premium = z.infer<typeof Premium>;

/** True where the total does not hold all that the scheme will need. */
export const standsApart = ({ notPriced, marks }: Premium): boolean =>
  notPriced.length > 0 || marks.some(({ money }) => money === null);
