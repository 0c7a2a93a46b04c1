import type { Mark } from "@cornerway/schema";
import { openingsAt } from "../openings-at.ts";
import { overParts } from "../over-parts.ts";
import type { Generator, Ladder, RemedyGround } from "../trial.ts";
import { cutInPlace } from "./cut-in-place.ts";
import { landOnFittings } from "./land-on-fittings.ts";
import { moveOpening } from "./move-opening.ts";
import { narrowOpening } from "./narrow-opening.ts";
import { postsAtOpening } from "./posts-at-opening.ts";
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

/**
 * Openings whose rail or bar of the frame is beyond its strength: further along, narrower, cut once the unit stands where only the
 * lift asks for more, or with posts of their own.
 */
export const openingUnderLoad: Generator = (ground) => openingsOver(ground).flatMap((id) => changed(ground, id));

const openingWays: readonly Generator[] = [moveOpening, narrowOpening, cutInPlace, postsAtOpening];

const changed = (ground: RemedyGround, openingId: string): readonly Ladder[] =>
  openingWays.flatMap((way) => way(about(ground, [openingId])));

/** The same search for a mark on these elements. */
const about = (ground: RemedyGround, elements: readonly string[]): RemedyGround => {
  const mark: Mark = { ...ground.mark, elements: [...elements] };
  return { ...ground, mark };
};

/** Openings of the unit whose stretch of wall, or one of whose jambs, is named by a part that is over. */
function openingsOver({ analysis, mark, scheme }: RemedyGround): string[] {
  const unit = analysis.structure.building.unitById.get(mark.elements[0] ?? "");
  const places = overParts(mark).map(({ place }) => place);
  return unit === undefined ? [] : openingsAt(scheme, unit, places).map(({ id }) => id);
}
