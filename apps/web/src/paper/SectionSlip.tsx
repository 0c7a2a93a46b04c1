import type { SectionLine } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { QuantityForm } from "../twin/QuantityForm.tsx";
import type { QuantityField } from "../twin/quantity-field.ts";
import { firstLine } from "./section-line.ts";

const ends = [
  ["fromXMm", "From, east"],
  ["fromYMm", "From, north"],
  ["toXMm", "To, east"],
  ["toYMm", "To, north"],
] as const;

/** The typed twin of the section's line: its two ends, and the two lines one begins with. */
export function SectionSlip({
  scheme,
  storey,
  line,
  onLine,
}: {
  scheme: Scheme;
  /** The storey the plan is cut at: the lines one begins with run across what it shows. */
  storey: number;
  line: SectionLine;
  onLine: (line: SectionLine | null) => void;
}) {
  const fields = useMemo(
    () => ends.map(([name, label]): QuantityField => ({ name, label, kind: "length", value: line[name] * 1000 })),
    [line],
  );
  const take = (values: Record<string, number>) => {
    const mm = (name: (typeof ends)[number][0]) => (values[name] ?? line[name] * 1000) / 1000;
    const next = { fromXMm: mm("fromXMm"), fromYMm: mm("fromYMm"), toXMm: mm("toXMm"), toYMm: mm("toYMm") };
    if (next.fromXMm !== next.toXMm || next.fromYMm !== next.toYMm) onLine(next);
  };
  return (
    <Slip label="Section A–A">
      <QuantityForm fields={fields} command="Cut along this line" onValues={take} />
      <div className="twin-row">
        <Command quiet onPress={() => onLine(firstLine(scheme, "x", storey))}>
          Across the building
        </Command>
        <Command quiet onPress={() => onLine(firstLine(scheme, "y", storey))}>
          Along the building
        </Command>
        <Command quiet onPress={() => onLine(null)}>
          Put the section away
        </Command>
      </div>
    </Slip>
  );
}
