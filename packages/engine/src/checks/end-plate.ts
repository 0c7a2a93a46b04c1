import { concreteBearing, type ConcreteBearing } from "../codes/steel/bearing.ts";
import { endPlateBending, type EndPlate } from "../codes/steel/base-plate.ts";
import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import { demandAgainst, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";

/** Base plate of a post on concrete, pressed by a force in its middle, N: plate in bending and concrete in bearing. */
export function basePlate(
  element: Extract<CheckedElement, "added post" | "jamb" | "pad" | "seat">,
  compressionN: number,
  plate: EndPlate,
  concrete: Pick<ConcreteBearing, "supportMm2" | "concreteMpa">,
  basis: SteelBasis,
): readonly Check[] {
  const bearing = concreteBearing({ ...concrete, loadedMm2: plate.lengthMm * plate.widthMm }, basis);
  return [
    demandAgainst({ element, limitState: "plate bending" }, compressionN, endPlateBending(plate, basis)),
    demandAgainst({ element, limitState: "bearing on concrete" }, compressionN, bearing),
  ];
}

/** Cap plate of a post, pressed evenly by a force in its middle, N: plate in bending. */
export const capPlate = (
  element: Extract<CheckedElement, "added post">,
  compressionN: number,
  plate: EndPlate,
  basis: SteelBasis,
): Check => demandAgainst({ element, limitState: "plate bending" }, compressionN, endPlateBending(plate, basis));
