import type { Building } from "../geometry/building.ts";
import { onBeam, type PlacedBeam } from "../geometry/placed-beam.ts";
import type { FreedomName, ModelBeam, ModelNode, ModelSection, Six, Triple } from "./analytical-model.ts";
import type { BearingPlan, BeamPoint, PlannedBearing } from "./bearing-plan.ts";
import { nodeName } from "./building-model.ts";
import { nearestLine } from "./nearest-line.ts";
import type { ModelAssumptions } from "./model-assumptions.ts";
import { postSection } from "./unit-lines-of.ts";

/** The node under a beam by which it bears. */
export const beamNodeUnder = ({ beam, uMm }: BeamPoint): string => nodeName(beam, `under ${tenths(uMm)}`);

/** The node on a beam of the bearing with this index in the plan: several may bear at one place along it. */
export const beamNodeOn = ({ beam }: BeamPoint, index: number): string => nodeName(beam, `on ${index + 1}`);

const tenths = (mm: number): string => (Math.round(mm * 10) / 10 + 0).toFixed(1);

/** The line of one stretch of a beam between two places where something bears, from its start to its end. */
export type BeamLine = { readonly id: string; readonly fromMm: number; readonly toMm: number };

/** The lines a beam is made of in the model. */
export function beamLines({ id, lengthMm }: PlacedBeam, bearings: readonly PlannedBearing[]): BeamLine[] {
  const places = stations(id, lengthMm, bearings);
  return places.slice(1).map((toMm, n) => ({ id: nodeName(id, `line ${n + 1}`), fromMm: places[n] ?? 0, toMm }));
}

/** Both ends, and every place where something bears, each once. */
function stations(id: string, lengthMm: number, bearings: readonly PlannedBearing[]): number[] {
  const bearing = pointsOf(id, bearings).map(({ uMm }) => uMm);
  return [...new Set([0, lengthMm, ...bearing])]
    .toSorted((a, b) => a - b)
    .filter((u, n, all) => n === 0 || u - (all[n - 1] ?? 0) >= LEAST_MM);
}

/** Places nearer to each other are one. */
const LEAST_MM = 1;

const pointsOf = (id: string, bearings: readonly PlannedBearing[]): BeamPoint[] =>
  bearings.flatMap(({ above, below }) =>
    [above, below].flatMap((end) => ("beam" in end && end.beam === id ? [end] : [])),
  );

/**
 * Added beams as the model has them: their lines on the axis of the section, with an arm of post section to wherever
 * something bears on them or they on something. `beyond`: where the other side of a bearing is, mm.
 */
export function drawBeams(
  { beams: ids, bearings }: BearingPlan,
  { beamById }: Pick<Building, "beamById">,
  assumptions: ModelAssumptions,
  beyond: (bearing: PlannedBearing, beam: PlacedBeam) => Triple,
): Drawn {
  const drawn: Drawn = { nodes: [], beams: [], sections: {} };
  for (const id of ids) {
    const beam = beamById.get(id);
    if (beam !== undefined) drawBeam(drawn, beam, bearings, assumptions, beyond);
  }
  return drawn;
}

type Drawn = { nodes: ModelNode[]; beams: ModelBeam[]; sections: Record<string, ModelSection> };

function drawBeam(
  drawn: Drawn,
  beam: PlacedBeam,
  bearings: readonly PlannedBearing[],
  assumptions: ModelAssumptions,
  beyond: (bearing: PlannedBearing, beam: PlacedBeam) => Triple,
): void {
  const { section } = beam.beam;
  drawn.sections[section] = postSection(section, assumptions);
  drawn.sections[ARM] = assumptions.sections.post;
  const places = stations(beam.id, beam.lengthMm, bearings);
  const axis = (uMm: number): string => nodeName(beam.id, tenths(places[nearestLine(places, uMm)] ?? uMm));
  for (const uMm of places) drawn.nodes.push(nodeAt(axis(uMm), axisPlace(beam, uMm)));
  for (const { id, fromMm, toMm } of beamLines(beam, bearings))
    drawn.beams.push({ id, i: axis(fromMm), j: axis(toMm), section });
  bearings.forEach((bearing, index) => {
    const { above, below } = bearing;
    for (const [end, name] of [
      [above, beamNodeUnder],
      [below, beamNodeOn],
    ] as const) {
      if (!("beam" in end) || end.beam !== beam.id) continue;
      const node = name(end, index);
      drawn.nodes.push(nodeAt(node, beyond(bearing, beam)));
      drawn.beams.push({ id: `${node} arm`, i: axis(end.uMm), j: node, section: ARM });
    }
  });
}

const nodeAt = (id: string, [x, y, z]: Triple): ModelNode => ({ id, x, y, z });

const ARM = "beam arm";

function axisPlace(beam: PlacedBeam, uMm: number): Triple {
  const { xMm, yMm, zMm } = onBeam(beam, uMm);
  return [xMm, yMm, zMm - beam.depthMm / 2];
}

/** A place on the underside of a beam. */
export function undersideOf(beam: PlacedBeam, { uMm }: BeamPoint): Triple {
  const { xMm, yMm, zMm } = onBeam(beam, uMm);
  return [xMm, yMm, zMm - beam.depthMm];
}

/** About its own axis a beam is kept from rolling by what it bears on. */
export const rollOf = ({ outline: { ux, uy } }: PlacedBeam): FreedomName => (Math.abs(ux) > Math.abs(uy) ? "rx" : "ry");

/** Stiffness of a bearing under a beam, N/mm and N·mm: the edges of its flange stand off its middle by half its width. */
export function bearingUnder(beam: PlacedBeam, stiffness: number): Six {
  const roll = (stiffness * beam.widthMm * beam.widthMm) / 4;
  return rollOf(beam) === "rx" ? [0, 0, stiffness, roll, 0, 0] : [0, 0, stiffness, 0, roll, 0];
}
