import type { Scheme } from "@cornerway/schema";
import { toM2 } from "../units.ts";
import { caseResultant } from "./case-resultant.ts";
import type { BuildingFrame } from "./building-frame.ts";
import { deadCase } from "./dead-cases.ts";
import type { DesignBasis } from "./design-basis.ts";
import { exposedFaces } from "./exposed-faces.ts";
import type { LoadingInputs } from "./loading-inputs.ts";
import type { SiteHazards } from "./site-hazards.ts";
import { areaOf } from "./uncovered.ts";

/**
 * The seismic weight of each unit, N, in the order of the scheme: dead, partitions, a quarter of storage, what counts
 * of the snow.
 */
export function seismicWeights(
  scheme: Scheme,
  building: BuildingFrame,
  inputs: LoadingInputs,
  basis: DesignBasis,
  hazards: SiteHazards,
): Map<string, number> {
  const snowPa = snowThatCounts(basis, hazards);
  const roofs = exposedFaces(building).filter(({ side }) => side === "up");
  const dead = deadCase(scheme, inputs, "most");
  const placed = building.boxes.map((box) => box.placed);
  return new Map(
    building.boxes.map(({ id, placed: unit }) => {
      const own = dead.loads.filter((load) => "containerId" in load && load.containerId === id);
      const carried = [
        ...inputs.plant.filter(({ containerId }) => containerId === id),
        ...inputs.addedSteel.filter(({ containerId }) => containerId === id),
      ];
      const deadN = -caseResultant({ ...dead, loads: own }, placed, { xMm: 0, yMm: 0, zMm: 0 }).zN;
      const floorM2 = toM2(unit.dimensions.lengthMm * unit.dimensions.widthMm);
      const roofM2 = toM2(roofs.filter((roof) => roof.unit.id === id).reduce((sum, { rect }) => sum + areaOf(rect), 0));
      const fixed = carried.reduce((sum, { weightN }) => sum + weightN, deadN);
      return [id, fixed + floorM2 * floorPa(inputs, basis, id) + roofM2 * snowPa];
    }),
  );
}

function snowThatCounts(basis: DesignBasis, hazards: SiteHazards): number {
  const balancedPa = basis.snow.flatRoof(hazards).balanced.result.value;
  return balancedPa * basis.snow.seismicShare(balancedPa);
}

function floorPa(inputs: LoadingInputs, basis: DesignBasis, containerId: string): number {
  const uses = inputs.uses.filter((use) => use.containerId === containerId && use.surface === "floor");
  const loads = uses.map(({ occupancy }) => basis.gravity.occupancy(occupancy));
  return Math.max(
    0,
    ...loads.map(({ partitionsPa, storage, pressurePa }) => partitionsPa + (storage ? pressurePa / 4 : 0)),
  );
}
