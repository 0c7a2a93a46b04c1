import { z } from "zod";
import { personText } from "./text.ts";

/** What costs money by the piece, hour or kilogram. */
export const rateNames = [
  "shop hour",
  "site hour",
  "engineering hour",
  "crane hour",
  "steel, kg in place",
  "lock, each",
  "anchor, each",
  "pad, each",
  "pad concrete, m³",
] as const;
export type RateName = (typeof rateNames)[number];

/** How long things take, in hours. */
export const labourNames = [
  "cut, per m",
  "paint repair, per m of cut",
  "weld of 5 mm, per m",
  "set a lock",
  "set an anchor",
  "lift a part, crane",
  "engineering, opening",
  "engineering, post",
  "engineering, beam",
  "engineering, seat or made connection",
  "engineering, tie",
] as const;
export type LabourName = (typeof labourNames)[number];

/** A figure with where it is from; without a source it is for show, and says so wherever it is printed. */
export const CostFigure = z
  .strictObject({ amount: z.number().min(0).max(1_000_000), source: personText(200).nullable() })
  .meta({ id: "CostFigure" });
export type CostFigure = z.infer<typeof CostFigure>;

/** What a project pays for work and steel. Money is in the currency's main unit. */
export const CostBook = z
  .strictObject({
    currency: z.string().regex(/^[A-Z]{3}$/, "three capitals, ISO 4217"),
    rates: z.record(z.enum(rateNames), CostFigure),
    labour: z.record(z.enum(labourNames), CostFigure),
  })
  .meta({ id: "CostBook" });
export type CostBook = z.infer<typeof CostBook>;

/** A book as it was written down: one from before a rate was known does not name it. */
export const KeptCostBook = CostBook.extend({ rates: z.partialRecord(z.enum(rateNames), CostFigure) }).meta({
  id: "KeptCostBook",
});

/** A kept book with every rate there is now; one it does not name is for show. */
export const withEveryRate = ({ rates, ...kept }: z.infer<typeof KeptCostBook>): CostBook => ({
  ...kept,
  rates: { ...demoCostBook.rates, ...rates },
});

const shown = (amount: number): CostFigure => ({ amount, source: null });

/** Figures for show: none has a source. Weld: 0.108 kg of metal a metre at 0.45 kg an hour. */
export const demoCostBook: CostBook = {
  currency: "USD",
  rates: {
    "shop hour": shown(95),
    "site hour": shown(130),
    "engineering hour": shown(150),
    "crane hour": shown(280),
    "steel, kg in place": shown(3.2),
    "lock, each": shown(60),
    "anchor, each": shown(45),
    "pad, each": shown(900),
    "pad concrete, m³": shown(450),
  },
  labour: {
    "cut, per m": shown(0.06),
    "paint repair, per m of cut": shown(0.15),
    "weld of 5 mm, per m": shown(0.24),
    "set a lock": shown(0.1),
    "set an anchor": shown(0.5),
    "lift a part, crane": shown(0.5),
    "engineering, opening": shown(1),
    "engineering, post": shown(2),
    "engineering, beam": shown(3),
    "engineering, seat or made connection": shown(1),
    "engineering, tie": shown(0.5),
  },
};
