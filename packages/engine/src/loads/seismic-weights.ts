import type { Container, Scheme } from "@cornerway/schema";
import { toM2 } from "../units.ts";
import { openWorking } from "../working/open-working.ts";
import type { Clause, Working } from "../working/working.ts";
import type { BuildingFrame } from "./building-frame.ts";
import { deadWorking } from "./dead-working.ts";
import type { DesignBasis } from "./design-basis.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import type { SiteHazards } from "./site-hazards.ts";
import { areaOf } from "./uncovered.ts";

/**
 * The seismic weight of each unit by its id, N: dead load at its heaviest, partitions, a quarter of storage, what counts
 * of the snow.
 */
export function seismicWeights(
  scheme: Scheme,
  building: BuildingFrame,
  basis: DesignBasis,
  hazards: SiteHazards,
): Map<string, Working> {
  const { balanced } = basis.snow.flatRoof(hazards);
  const roofs = exposedFaces(building).filter(({ side }) => side === "up");
  return new Map(
    scheme.containers.map((container) => {
      const w = openWorking(`Seismic weight of ${container.tag}`, counted);
      w.take("D", deadWorking(scheme, container, "most"));
      const { dimensions } = placedOf(building, container);
      w.let("A_f", toM2(dimensions.lengthMm * dimensions.widthMm), "m²", "floor", "derived");
      w.let("p_f", floorPa(scheme, basis, container.id), "Pa", "partitions and a quarter of storage", "memory");
      w.let("A_r", roofM2(roofs, container.id), "m²", "exposed roof", "derived");
      w.take("p_s", balanced);
      w.let("s", basis.snow.seismicShare(balanced.result.value), "1", "part of the snow that counts", "memory");
      w.compute("W", "D + A_f * p_f + A_r * s * p_s", "N");
      return [container.id, w.giving("W")];
    }),
  );
}

const counted: Clause = { document: "Statics", edition: "", place: "effective seismic weight", certainty: "derived" };

function placedOf(building: BuildingFrame, { id }: Container) {
  const box = building.boxes.find((one) => one.id === id);
  if (box === undefined) throw new RangeError(`container ${id} is not in the building`);
  return box.placed;
}

const roofM2 = (roofs: readonly ExposedFace[], unitId: string): number =>
  toM2(roofs.filter(({ unit }) => unit.id === unitId).reduce((sum, { rect }) => sum + areaOf(rect), 0));

function floorPa({ uses: all }: Scheme, basis: DesignBasis, containerId: string): number {
  const uses = all.filter((use) => use.containerId === containerId && use.surface === "floor");
  const loads = uses.map(({ occupancy }) => basis.gravity.occupancy(occupancy));
  return Math.max(
    0,
    ...loads.map(({ partitionsPa, storage, pressurePa }) => partitionsPa + (storage ? pressurePa / 4 : 0)),
  );
}
