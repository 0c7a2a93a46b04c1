import type { Scheme } from "@cornerway/schema";
import { areaOf } from "./uncovered.ts";
import type { ActionCase } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { DesignBasis } from "./design-basis.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import { even, roofPatch } from "./face-patch.ts";
import type { LoadingInputs } from "./loading-inputs.ts";

/**
 * Load of people on the roofs: what the scheme draws or the use of a deck asks for, else the code's roof live load for
 * the exposed roof of that unit (one unit is the smallest part that carries it). Roofs under another unit take none.
 */
export function roofLiveCase(
  scheme: Scheme,
  building: BuildingFrame,
  inputs: LoadingInputs,
  basis: DesignBasis,
): ActionCase {
  const roofs = exposedFaces(building).filter(({ side }) => side === "up");
  return {
    id: "Lr everywhere",
    symbol: "Lr",
    loads: roofs.map((roof) => ({
      kind: "on",
      containerId: roof.unit.id,
      surface: "roof",
      patch: roofPatch(building.axes, roof, roof.rect, even(roofPa(scheme, inputs, basis, roof, roofs))),
    })),
  };
}

function roofPa(
  scheme: Scheme,
  inputs: LoadingInputs,
  basis: DesignBasis,
  { unit }: ExposedFace,
  roofs: readonly ExposedFace[],
): number {
  const drawn = scheme.loads
    .filter((load) => load.containerId === unit.id && load.surface === "roof" && load.case === "imposed")
    .reduce((sum, { pressurePa }) => sum + pressurePa, 0);
  const asked = inputs.uses
    .filter((use) => use.containerId === unit.id && use.surface === "roof" && use.occupancy !== "roof")
    .map(({ occupancy }) => basis.gravity.occupancy(occupancy).pressurePa);
  const areaM2 = roofs.filter((roof) => roof.unit === unit).reduce((sum, { rect }) => sum + areaOf(rect), 0) / 1e6;
  return Math.max(drawn, ...asked, basis.gravity.roofLive(areaM2).result.value);
}
