import { findSection } from "../catalog/sections/find-section.ts";
import { frameTube } from "../catalog/sections/frame-tubes.ts";
import { steels } from "../catalog/materials.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Building } from "../geometry/building.ts";
import type { BuiltModel } from "../model/build-model.ts";
import { nodeName } from "../model/building-model.ts";
import { bowingOf, bowParts } from "./bow-parts.ts";
import { memberPart, sureMemberPart, type MemberStretch } from "./member-part.ts";
import type { StrengthPart } from "./strength-part.ts";

/** Posts that stand by themselves, pinned at both ends; a section the catalogue lacks is taken as the frames' tube. */
export function freePostParts({ postById }: Building, { plan }: BuiltModel, basis: CheckBasis): StrengthPart[] {
  return plan.freePosts.flatMap((id) => {
    const post = postById.get(id);
    if (post === undefined) return [];
    const lengthMm = post.headZMm - post.footZMm;
    const section = findSection(post.post.section) ?? frameTube;
    const lengths = { strongMm: lengthMm, weakMm: lengthMm, twistMm: lengthMm };
    const stretch: MemberStretch = {
      ownerId: id,
      place: "by itself",
      member: { element: "added post", section, steel: steels.tube, lengths, unbracedMm: lengthMm, cb: 1 },
      beams: [{ id: nodeName(id, "post"), lengthMm }],
      forces: ({ between }) => between(),
    };
    return [
      memberPart(stretch, basis),
      ...sureMemberPart(stretch, basis),
      ...bowParts(id, bowingOf(stretch), stretch.forces, basis),
    ];
  });
}
