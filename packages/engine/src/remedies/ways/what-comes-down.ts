import type { Mark } from "@cornerway/schema";
import { overParts } from "../over-parts.ts";
import type { Generator, Ladder, RemedyGround } from "../trial.ts";
import { landOnFittings } from "./land-on-fittings.ts";
import { narrowOpening } from "./narrow-opening.ts";
import { shorterOverhang } from "./shorter-overhang.ts";

/**
 * Parts of a unit beyond their strength under what comes down off its corners, or on whose rails it lies itself: that unit moved to
 * where its corners land, or pushed back.
 */
export const whatComesDown: Generator = (ground) => {
  const { analysis, mark } = ground;
  const { railLoads } = analysis.run;
  const unitId = mark.elements[0] ?? "";
  const above = railLoads.filter((load) => load.unitId === unitId).map(({ fromId }) => fromId);
  const itself = railLoads.some(({ fromId }) => fromId === unitId) ? [unitId] : [];
  const ids = [...new Set([...itself, ...above])].toSorted();
  return ids.flatMap((id) => [landOnFittings, shorterOverhang].flatMap((way) => way(about(ground, [id]))));
};

/** Openings over which a rail or a bar of their frame is beyond its strength, narrowed. */
export const narrowUnderLoad: Generator = (ground) => openingsOver(ground).flatMap((id) => narrowed(ground, id));

const narrowed = (ground: RemedyGround, openingId: string): readonly Ladder[] =>
  narrowOpening(about(ground, [openingId]));

/** The same search for a mark on these elements. */
const about = (ground: RemedyGround, elements: readonly string[]): RemedyGround => {
  const mark: Mark = { ...ground.mark, elements: [...elements] };
  return { ...ground, mark };
};

/** Openings of the unit whose stretch of wall, or one of whose jambs, is named by a part that is over. */
function openingsOver({ analysis, mark, scheme }: RemedyGround): string[] {
  const unit = analysis.structure.building.unitById.get(mark.elements[0] ?? "");
  if (unit === undefined) return [];
  const { lengthMm, widthMm, holeSpacingLengthwiseMm, holeSpacingCrosswiseMm } = unit.dimensions;
  const over = overParts(mark).flatMap(({ place }) => {
    const [, wall, at = ""] = /\b(left|right|front) (?:over|at) ([0-9.]+)/.exec(place) ?? [];
    return wall === undefined ? [] : [{ wall, atMm: Number(at) * 1000 }];
  });
  return scheme.openings
    .filter(({ containerId, face, offsetUm, widthUm }) => {
      if (containerId !== unit.id) return false;
      const toPost = (face === "front" ? widthMm - holeSpacingCrosswiseMm : lengthMm - holeSpacingLengthwiseMm) / 2;
      const [u0, u1] = [offsetUm / 1000 - toPost, (offsetUm + widthUm) / 1000 - toPost];
      return over.some(({ wall, atMm }) => wall === face && atMm > u0 - ROUNDED_MM && atMm < u1 + ROUNDED_MM);
    })
    .map(({ id }) => id);
}

/** Places are told to 10 mm. */
const ROUNDED_MM = 10;
