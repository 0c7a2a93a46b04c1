import type { PremiumLine, PremiumQuantities, RateName, Scheme } from "@cornerway/schema";
import { weldLegMm } from "./weld-length.ts";

/** The sums of a take-off, in the units a price is asked in. `plain` holds what the plain stack has as well. */
export function quantities(
  lines: readonly PremiumLine[],
  scheme: Scheme,
  plain: ReadonlySet<string>,
): PremiumQuantities {
  const sumOf = (item: PremiumLine["item"]) =>
    sum(lines.filter((line) => line.item === item).map((line) => line.quantity));
  const hoursAt = (rate: RateName) => sum(lines.filter((line) => line.hoursAt === rate).map(({ hours }) => hours));
  const weldM = sumOf("weld of 5 mm");
  return {
    cutM: sumOf("cut"),
    weldM: weldM === 0 ? [] : [{ legMm: weldLegMm, lengthM: weldM }],
    steelKg: steelBySection(lines),
    connections: connections(scheme, plain),
    pads: sumOf("pad"),
    padConcreteM3: sumOf("pad concrete"),
    craneLifts: sumOf("crane lift"),
    hours: {
      shop: hoursAt("shop hour"),
      site: hoursAt("site hour"),
      crane: hoursAt("crane hour"),
      engineering: hoursAt("engineering hour"),
    },
  };
}

function steelBySection(lines: readonly PremiumLine[]): PremiumQuantities["steelKg"] {
  const steel = lines.filter(({ item }) => item === "steel");
  const sections = [...new Set(steel.map(({ section }) => section ?? ""))].toSorted();
  return sections.map((section) => ({
    section,
    massKg: sum(steel.filter((line) => line.section === section).map(({ quantity }) => quantity)),
  }));
}

const connectionKinds = ["lock", "hold-down", "made connection", "seat", "tie"] as const;

function connections({ locks, seats, ties }: Scheme, plain: ReadonlySet<string>): PremiumQuantities["connections"] {
  const kinds = [
    ...locks.filter(({ id }) => !plain.has(id)).map(({ kind }) => kind),
    ...seats.map(() => "seat" as const),
    ...ties.map(() => "tie" as const),
  ];
  return connectionKinds
    .map((kind) => ({ kind, count: kinds.filter((each) => each === kind).length }))
    .filter(({ count }) => count > 0);
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
