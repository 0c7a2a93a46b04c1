import type { PremiumLine } from "@cornerway/schema";

/** Quantities of one element, before hours and money. */
export type TakeOff = Pick<
  PremiumLine,
  "elementId" | "containerId" | "item" | "section" | "quantity" | "unit" | "where"
>;
export type NotKnown = { readonly elementId: string; readonly section: string };
export type TakenOff = { readonly lines: readonly TakeOff[]; readonly notKnown: readonly NotKnown[] };

export type Line = (item: TakeOff["item"], quantity: number, unit: TakeOff["unit"]) => TakeOff;

export const lineOf =
  (elementId: string, containerId: string | null, where: TakeOff["where"]): Line =>
  (item, quantity, unit) => ({ elementId, containerId, item, section: null, quantity, unit, where });

export const steelLine = (line: Line, section: string, massKg: number): TakeOff => ({
  ...line("steel", massKg, "kg"),
  section,
});

export const known = (lines: readonly TakeOff[]): TakenOff => ({ lines, notKnown: [] });
