import type { Container, Scheme } from "@cornerway/schema";
import { openWorking } from "../working/open-working.ts";
import type { Clause, Working } from "../working/working.ts";
import type { DesignBasis } from "./design-basis.ts";
import type { OccupancyLoad } from "./occupancy.ts";

/** Imposed load of one unit's floor, Pa: the heavier of what is drawn and what its occupancy asks, partitions with it. */
export function imposedWorking(scheme: Scheme, basis: DesignBasis, container: Container): Working {
  const asked = heaviestUse(scheme, basis, container.id);
  const w = openWorking(`Imposed load of ${container.tag}`, asked?.clause ?? drawnOnly);
  w.let("L_d", drawnPa(scheme, container.id, "floor"), "Pa", "as drawn", "common practice", "entered in the scheme");
  w.let(
    "L_o",
    asked?.pressurePa ?? 0,
    "Pa",
    asked?.occupancy ?? "no occupancy entered",
    asked?.clause.certainty ?? "derived",
  );
  w.let("L_p", asked?.partitionsPa ?? 0, "Pa", "movable partitions", asked?.clause.certainty ?? "derived");
  w.compute("L", "max(L_d, L_o + L_p)", "Pa");
  return w.giving("L");
}

const drawnOnly: Clause = { document: "Scheme", edition: "", place: "loads as drawn", certainty: "common practice" };

/** Imposed pressure drawn on a floor or roof, Pa. */
export const drawnPa = (scheme: Scheme, containerId: string, surface: "floor" | "roof"): number =>
  scheme.loads
    .filter((load) => load.containerId === containerId && load.surface === surface && load.case === "imposed")
    .reduce((sum, { pressurePa }) => sum + pressurePa, 0);

function heaviestUse({ uses }: Scheme, basis: DesignBasis, containerId: string): OccupancyLoad | undefined {
  const [heaviest] = uses
    .filter((use) => use.containerId === containerId && use.surface === "floor")
    .map(({ occupancy }) => basis.gravity.occupancy(occupancy))
    .toSorted((a, b) => b.pressurePa + b.partitionsPa - a.pressurePa - a.partitionsPa);
  return heaviest;
}
