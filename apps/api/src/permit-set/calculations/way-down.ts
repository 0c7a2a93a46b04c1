import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { narrativeOf } from "../sheets/load-path-narrative.ts";
import { written } from "../written.ts";

/** The load path in words, the highest storey first, and every bearing in a table. */
export function layWayDown(flow: CalculationFlow, source: SetSource, derived: Derived): void {
  const say = written[source.units];
  flow.subject("Load path, storey by storey");
  flow.paragraph(
    `Dead and imposed load by statics, unfactored, in ${say.forceUnit}; the drawings are S4. Each container is a rigid body on its bearings.`,
  );
  for (const [at, storey] of [...derived.storeys.entries()].toReversed()) {
    flow.heading(`${storey.name} level`);
    for (const words of narrativeOf(source, derived, at)) flow.paragraph(words);
  }
  flow.heading("Every bearing");
  flow.table({
    name: "Bearings",
    size: 7.6,
    columns: [
      { heading: "Unit", share: 7 },
      { heading: "Where", share: 16 },
      { heading: "x", share: 9, right: true },
      { heading: "y", share: 9, right: true },
      { heading: "Level", share: 9, right: true },
      { heading: "On", share: 14 },
      { heading: "Joint", share: 15 },
      { heading: `Force, ${say.forceUnit}`, share: 11, right: true },
    ],
    rows: source.assessment.bearings.map((bearing) => [
      derived.tag(bearing.unitId),
      bearing.fitting?.replaceAll("-", " ") ?? "rail crossing",
      say.length(bearing.at.xMm),
      say.length(bearing.at.yMm),
      say.level(bearing.at.zMm),
      bearing.onElementId === undefined ? bearing.on : `${bearing.on} ${derived.tag(bearing.onElementId)}`,
      bearing.joint,
      say.force(bearing.forceKn),
    ]),
  });
}
