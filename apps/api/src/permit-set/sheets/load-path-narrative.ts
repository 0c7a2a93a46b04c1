import { inRow, type Bearing } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";

/** How the load of one storey comes down, unit by unit, in sentences. */
export function narrativeOf(source: SetSource, derived: Derived, at: number): string[] {
  const { assessment, units } = source;
  const say = written[units];
  const storey = derived.storeys[at];
  if (storey === undefined) return [];
  return storey.containerIds.map((id) => {
    const unit = assessment.units.find((each) => each.id === id);
    const bearings = assessment.bearings.filter(({ unitId }) => unitId === id);
    const own = unit === undefined ? 0 : unit.weightKn + unit.imposedKn;
    const down = bearings.reduce((sum, { forceKn }) => sum + forceKn, 0);
    const from = own < down - tenth ? ` and ${say.force(down - own)} ${say.forceUnit} from above` : "";
    const rest = own > down + tenth ? ` ${say.force(own - down)} ${say.forceUnit} of it has no way down.` : "";
    return `${derived.tag(id)} brings ${say.force(own)} ${say.forceUnit} of its own${from}. It stands ${standsOn(bearings, derived, say.force, say.forceUnit)}.${rest}`;
  });
}

/** Less than is printed, kN. */
const tenth = 0.05;

/** Bearings by what they stand on: on the corners of G1 (50.1, 50.1 kN), on the rail of F2 (12.0 kN). */
function standsOn(bearings: readonly Bearing[], { tag }: Derived, force: (kn: number) => string, unit: string): string {
  if (bearings.length === 0) return "on nothing that is drawn";
  const groups = new Map<string, Bearing[]>();
  for (const bearing of bearings) {
    const key = `${bearing.on}|${bearing.onElementId ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), bearing]);
  }
  return inRow(
    [...groups.values()].map((group) => {
      const [first] = group;
      if (first === undefined) return "";
      const what = first.onElementId === undefined ? "" : ` ${tag(first.onElementId)}`;
      return `${places[first.on]}${what} (${group.map(({ forceKn }) => force(forceKn)).join(", ")} ${unit})`;
    }),
  );
}

const places: Readonly<Record<Bearing["on"], string>> = {
  fitting: "on corner fittings of",
  rail: "on the rail of",
  post: "on post",
  beam: "on beam",
  pad: "on",
  ground: "on the bare ground",
  sheet: "on a sheet, which bears nothing, of",
  air: "over nothing at a corner",
};
