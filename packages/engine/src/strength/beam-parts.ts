import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube } from "../catalog/sections/frame-tubes.ts";
import { steels, type Steel } from "../catalog/materials.ts";
import type { Section } from "../catalog/sections/section.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Building } from "../geometry/building.ts";
import type { PlacedBeam } from "../geometry/placed-beam.ts";
import { beamLines } from "../model/draw-beams.ts";
import type { BuiltModel } from "../model/build-model.ts";
import type { PlannedBearing } from "../model/bearing-plan.ts";
import { bowingOf, bowParts } from "./bow-parts.ts";
import { memberPart, sureMemberPart, type MemberStretch } from "./member-part.ts";
import type { StrengthPart } from "./strength-part.ts";

/**
 * Added beams by themselves, as members: held upright and from rolling where they bear on something, and nowhere between, though
 * what stands on them may hold them.
 */
export function beamParts({ beamById }: Building, { plan }: BuiltModel, basis: CheckBasis): StrengthPart[] {
  return plan.beams.flatMap((id) => {
    const beam = beamById.get(id);
    if (beam === undefined) return [];
    const stretch = stretchOf(beam, plan.bearings);
    return [
      memberPart(stretch, basis),
      ...sureMemberPart(stretch, basis),
      ...bowParts(id, bowingOf(stretch), stretch.forces, basis),
    ];
  });
}

function stretchOf(beam: PlacedBeam, bearings: readonly PlannedBearing[]): MemberStretch {
  const section = sectionOf(beam);
  const lengthMm = longestBetween(beam, bearings);
  const lengths = { strongMm: lengthMm, weakMm: lengthMm, twistMm: lengthMm };
  return {
    ownerId: beam.id,
    place: "by itself",
    member: { element: "added beam", section, steel: steelFor(section), lengths, unbracedMm: lengthMm, cb: 1 },
    beams: beamLines(beam, bearings).map(({ id, fromMm, toMm }) => ({ id, lengthMm: toMm - fromMm })),
    forces: ({ between }) => between(),
  };
}

/** A section the catalogue lacks is taken as the frames' tube. */
export const sectionOf = ({ beam }: PlacedBeam): Section => findSection(beam.section) ?? frameTube;

/** As it is bought: tubes A500 grade C, I shapes A992, channels and angles A36. */
export function steelFor({ kind }: Section): Steel {
  if (kind === "tube") return steels.tube;
  return kind === "I" ? steels.wideFlange : steels.plate;
}

/** The longest of its spans, and of its ends past the last support. */
function longestBetween({ id, lengthMm }: PlacedBeam, bearings: readonly PlannedBearing[]): number {
  const places = bearings
    .flatMap(({ above }) => ("beam" in above && above.beam === id ? [above.uMm] : []))
    .toSorted((a, b) => a - b);
  const all = [0, ...places, lengthMm];
  return Math.max(...all.slice(1).map((u, n) => u - (all[n] ?? 0)));
}
