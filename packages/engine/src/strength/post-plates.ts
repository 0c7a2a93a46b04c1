import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube } from "../catalog/sections/frame-tubes.ts";
import { steels } from "../catalog/materials.ts";
import { statedPostPlate } from "../catalog/stated-post-plate.ts";
import type { ISection, Section, TubeSection } from "../catalog/sections/section.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { EndPlate } from "../codes/steel/base-plate.ts";
import type { Building, PlacedPad } from "../geometry/building.ts";
import { postAt, type BearingPlan } from "../model/bearing-plan.ts";
import { forcePart } from "./force-part.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { StrengthPart } from "./strength-part.ts";

/**
 * The base plate of every post that stands on a pad, of the stated detail: its bending, and the concrete under it. The cap plate
 * of every post by itself, the same, pressed evenly by what bears on it: its bending.
 */
export function postPlates(
  bearings: readonly ModelledBearing[],
  building: Building,
  { inWalls }: BearingPlan,
  concreteMpa: number,
  basis: CheckBasis,
): StrengthPart[] {
  const bases = bearings.flatMap((bearing): StrengthPart[] => {
    const { above, below } = bearing.planned;
    const pad = "ground" in below ? building.padById.get(below.ground) : undefined;
    const postId = postAt(above, inWalls);
    const placed = postId === undefined ? undefined : building.postById.get(postId);
    if (pad === undefined || placed === undefined) return [];
    const plate = plateOf(findSection(placed.post.section) ?? frameTube);
    if (plate === undefined) return [];
    const concrete = { supportMm2: similarArea(plate, pad), concreteMpa };
    const named = { ownerId: bearing.ownerId, element: "added post", level: "strength" } as const;
    const pressed = (solved: Parameters<StrengthPart["use"]>[0]): number =>
      Math.max(bearingForce(bearing, solved)[2], 0);
    return [
      forcePart({ ...named, place: `foot of ${placed.post.tag}, stated plate` }, pressed, (forceN) =>
        basis.basePlate("added post", forceN, plate, concrete),
      ),
    ];
  });
  return [...bases, ...bearings.flatMap((bearing) => capPlate(bearing, building, basis))];
}

function capPlate(bearing: ModelledBearing, { postById }: Building, basis: CheckBasis): StrengthPart[] {
  const { below } = bearing.planned;
  const placed = "post" in below ? postById.get(below.post) : undefined;
  const plate = placed && plateOf(findSection(placed.post.section) ?? frameTube);
  if (placed === undefined || plate === undefined) return [];
  const place = `head of ${placed.post.tag} under ${bearing.ownerId}, stated plate`;
  return [
    forcePart(
      { ownerId: placed.id, element: "added post", place, level: "strength" },
      (solved) => Math.max(bearingForce(bearing, solved)[2], 0),
      (forceN) => [basis.capPlate("added post", forceN, plate)],
    ),
  ];
}

function plateOf(column: Section): EndPlate | undefined {
  if (!isColumn(column)) return undefined;
  const acrossMm = column.kind === "I" ? column.flangeWidthMm : column.widthMm;
  return {
    column,
    steel: steels.plate,
    lengthMm: column.depthMm + 2 * statedPostPlate.outstandMm,
    widthMm: acrossMm + 2 * statedPostPlate.outstandMm,
    thicknessMm: statedPostPlate.thicknessMm,
  };
}

const isColumn = (section: Section): section is TubeSection | ISection =>
  section.kind === "tube" || section.kind === "I";

/** The largest area on the pad of the plate's proportions about its middle, mm²; no less than the plate. */
function similarArea({ lengthMm, widthMm }: EndPlate, { pad }: PlacedPad): number {
  const least = Math.min(pad.lengthUm, pad.widthUm) / 1000;
  const times = Math.max(1, least / Math.max(lengthMm, widthMm));
  return times * times * lengthMm * widthMm;
}
